import { describe, expect, test } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { getShortestPaths } from 'xstate/graph';
import { faultId } from '../../../../simulator/puzzle/hunt/fault.ts';
import { hunt } from '../../../../simulator/puzzle/hunt/hunt.ts';
import {
  type HuntEvent,
  type HuntSnapshot,
  huntMachine,
} from '../../../../simulator/puzzle/hunt/hunt-machine.ts';
import { netLoft } from './net-loft-room.ts';

const one = hunt(netLoft(), 1, 'loft');
const right = faultId(one.fault);
const wrong = faultId(one.faults.find((fault) => faultId(fault) !== right) ?? one.fault);
const place = one.places[5] ?? '';

const EVENTS = {
  begin: { type: 'begin' },
  probe: { type: 'probe.place', place },
  'probe nowhere': { type: 'probe.place', place: 'desk.ch99.fader' },
  'accuse rightly': { type: 'accuse', fault: right },
  'accuse wrongly': { type: 'accuse', fault: wrong },
  'accuse nothing': { type: 'accuse', fault: 'dead desk.ch99.fader' },
  'go on': { type: 'go-on' },
  'give up': { type: 'give-up' },
  'look back': { type: 'look-back' },
} as const satisfies Record<string, HuntEvent>;
type EventName = keyof typeof EVENTS;

const stateOf = ({ value }: HuntSnapshot): string =>
  typeof value === 'string' ? value : Object.values(value).join();

function reach(...names: readonly EventName[]): HuntSnapshot {
  let [snapshot] = initialTransition(huntMachine, { hunt: one });
  for (const name of names) [snapshot] = transition(huntMachine, snapshot, EVENTS[name]);
  return snapshot;
}

/** How each state is reached, and where each event leads from there; what is not named changes nothing. */
const TABLE: Readonly<
  Record<
    string,
    { readonly by: readonly EventName[]; readonly to: Partial<Record<EventName, string>> }
  >
> = {
  briefing: { by: [], to: { begin: 'open' } },
  open: {
    by: ['begin'],
    to: {
      probe: 'open',
      'accuse rightly': 'found',
      'accuse wrongly': 'wrong',
      'give up': 'debriefing',
    },
  },
  wrong: {
    by: ['begin', 'accuse wrongly'],
    to: { probe: 'open', 'accuse rightly': 'found', 'go on': 'open', 'give up': 'debriefing' },
  },
  found: { by: ['begin', 'accuse rightly'], to: { 'look back': 'debriefing' } },
  debriefing: { by: ['begin', 'give up'], to: {} },
};
const NAMES = Object.keys(EVENTS) as EventName[];
const CASES = Object.entries(TABLE).flatMap(([state, { by, to }]) =>
  NAMES.map((event) => ({ state, event, by, to: to[event] ?? state })),
);

describe('huntMachine', () => {
  test.each(CASES)('$state × $event → $to', ({ state, event, by, to }) => {
    expect(stateOf(reach(...by))).toBe(state);
    expect(stateOf(reach(...by, event))).toBe(to);
  });

  test('each state can be reached, in so few events', () => {
    const paths = getShortestPaths(huntMachine, {
      input: { hunt: one },
      events: Object.values(EVENTS),
      serializeState: (snapshot) => JSON.stringify(snapshot.value),
    });
    const lengths = Object.fromEntries(
      paths.map(({ state, steps }) => [stateOf(state as HuntSnapshot), steps.length - 1]),
    );
    expect(lengths).toEqual({ briefing: 0, open: 1, wrong: 2, found: 2, debriefing: 2 });
  });

  test('steps are noted in order, each accusation once, and nothing that cannot be', () => {
    const { context } = reach(
      'probe',
      'begin',
      'probe',
      'probe nowhere',
      'accuse wrongly',
      'accuse wrongly',
      'accuse nothing',
      'probe',
      'accuse rightly',
      'probe',
    );
    expect(context.steps).toEqual([
      { probe: place },
      { accuse: wrong },
      { probe: place },
      { accuse: right },
    ]);
  });
});
