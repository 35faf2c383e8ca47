import { assign, createMachine, type SnapshotFrom } from 'xstate';
import type { Address } from '../../rig/address.ts';
import { faultNamed, type Hunt, isProbePlace } from './hunt.ts';
import { type HuntStep, isRight } from './judge-steps.ts';

export interface HuntContext {
  readonly hunt: Hunt;
  /** What was done so far, in order. All else about how it stands follows from it. */
  readonly steps: readonly HuntStep[];
}

export interface HuntInput {
  readonly hunt: Hunt;
}

export type HuntEvent =
  | { readonly type: 'begin' }
  /** Reads the level at a place. One where no meter can be held is passed over. */
  | { readonly type: 'probe.place'; readonly place: Address }
  /** Accuses a fault, by its id. One that the setup cannot have, or that was accused before, is passed over. */
  | { readonly type: 'accuse'; readonly fault: string }
  /** Goes on after a wrong accusation. */
  | { readonly type: 'go-on' }
  | { readonly type: 'give-up' }
  /** Looks back on a hunt that is over. */
  | { readonly type: 'look-back' };

const noting = (context: HuntContext, step: HuntStep): Partial<HuntContext> => ({
  steps: [...context.steps, step],
});

/** Whether a fault is one that the setup can have, and was not accused before. */
const canBeAccused = ({ hunt, steps }: HuntContext, fault: string): boolean =>
  faultNamed(hunt, fault) !== undefined &&
  !steps.some((step) => 'accuse' in step && step.accuse === fault);

/**
 * A hunt from its briefing to its debriefing. A wrong accusation is said and counted, and never ends it. What a
 * reading shows and what a step was worth is not computed here, but derived from the steps.
 */
export const huntMachine = createMachine({
  types: {
    context: {} as HuntContext,
    events: {} as HuntEvent,
    input: {} as HuntInput,
  },
  id: 'hunt',
  context: ({ input }) => ({ hunt: input.hunt, steps: [] }),
  initial: 'briefing',
  states: {
    briefing: { on: { begin: 'hunting' } },
    hunting: {
      initial: 'open',
      states: {
        open: {},
        /** The last accusation was wrong. */
        wrong: { on: { 'go-on': 'open' } },
      },
      on: {
        'probe.place': {
          guard: ({ context, event }) => isProbePlace(context.hunt, event.place),
          target: '.open',
          actions: assign(({ context, event }) => noting(context, { probe: event.place })),
        },
        accuse: [
          {
            guard: ({ context, event }) => isRight(context.hunt, event.fault),
            target: 'found',
            actions: assign(({ context, event }) => noting(context, { accuse: event.fault })),
          },
          {
            guard: ({ context, event }) => canBeAccused(context, event.fault),
            target: '.wrong',
            actions: assign(({ context, event }) => noting(context, { accuse: event.fault })),
          },
        ],
        'give-up': 'debriefing',
      },
    },
    found: { on: { 'look-back': 'debriefing' } },
    debriefing: {},
  },
});

export type HuntSnapshot = SnapshotFrom<typeof huntMachine>;
