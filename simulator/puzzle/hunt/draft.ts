import { initialTransition, transition } from 'xstate';
import * as z from 'zod/mini';
import { SEED } from '../seed.ts';
import type { Hunt } from './hunt.ts';
import { type HuntEvent, type HuntSnapshot, huntMachine } from './hunt-machine.ts';
import { HUNT_LEVELS } from './level.ts';

/** The most steps of a hunt that are kept. */
export const MOST_STEPS = 500;

const address = z.string().check(z.minLength(1), z.maxLength(200));

/** A hunt that was begun, as it is kept: which one, and what was done. All else is computed again from it. */
export const huntDraftSchema = z.strictObject({
  /** 1; a later one that is shaped otherwise has another number. */
  version: z.literal(1),
  level: z.int().check(z.minimum(1), z.maximum(HUNT_LEVELS.length)),
  seed: z.string().check(z.regex(SEED)),
  steps: z
    .array(z.union([z.strictObject({ probe: address }), z.strictObject({ accuse: address })]))
    .check(z.maxLength(MOST_STEPS)),
  /** Whether the meter was taken up. */
  isBegun: z.boolean(),
  /** Whether it was given up, or looked back on after it was found. */
  isOver: z.boolean(),
});
export type HuntDraft = z.output<typeof huntDraftSchema>;

/** A hunt as it is kept. */
export const toDraft = ({ context: { hunt, steps }, value }: HuntSnapshot): HuntDraft => ({
  version: 1,
  level: hunt.level,
  seed: hunt.seed,
  steps: steps.slice(0, MOST_STEPS),
  isBegun: value !== 'briefing',
  isOver: value === 'debriefing',
});

/**
 * A hunt as it stood when it was kept: all steps are made again. What is no step of this hunt is passed over, so that a
 * draft from elsewhere can neither break it nor decide it.
 */
export function fromDraft(hunt: Hunt, draft: HuntDraft): HuntSnapshot {
  let [snapshot] = initialTransition(huntMachine, { hunt });
  for (const event of eventsOf(draft)) [snapshot] = transition(huntMachine, snapshot, event);
  return snapshot;
}

function eventsOf({ steps, isBegun, isOver }: HuntDraft): readonly HuntEvent[] {
  if (!isBegun) return [];
  const done = steps.map(
    (step): HuntEvent =>
      'probe' in step
        ? { type: 'probe.place', place: step.probe }
        : { type: 'accuse', fault: step.accuse },
  );
  const over: readonly HuntEvent[] = isOver ? [{ type: 'give-up' }, { type: 'look-back' }] : [];
  return [{ type: 'begin' }, ...done, ...over];
}
