import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import { fromDraft, huntDraftSchema, toDraft } from '../../../../simulator/puzzle/hunt/draft.ts';
import { faultId } from '../../../../simulator/puzzle/hunt/fault.ts';
import { hunt } from '../../../../simulator/puzzle/hunt/hunt.ts';
import { type HuntEvent, huntMachine } from '../../../../simulator/puzzle/hunt/hunt-machine.ts';
import { netLoft } from './net-loft-room.ts';

const one = hunt(netLoft(), 2, 'k7x2');
const events: fc.Arbitrary<HuntEvent> = fc.oneof(
  fc.constantFrom<HuntEvent>({ type: 'go-on' }, { type: 'give-up' }, { type: 'look-back' }),
  fc.constantFrom(...one.places).map((place): HuntEvent => ({ type: 'probe.place', place })),
  fc
    .constantFrom(...one.faults.slice(0, 20), one.fault)
    .map((fault): HuntEvent => ({ type: 'accuse', fault: faultId(fault) })),
);

describe('toDraft() and fromDraft()', () => {
  test('a hunt goes on where it was left, through text and back', () => {
    fc.assert(
      fc.property(fc.array(events, { maxLength: 12 }), (made) => {
        const actor = createActor(huntMachine, { input: { hunt: one } }).start();
        actor.send({ type: 'begin' });
        for (const event of made) actor.send(event);
        const before = actor.getSnapshot();
        const draft = huntDraftSchema.parse(JSON.parse(JSON.stringify(toDraft(before))));
        const again = fromDraft(one, draft);
        expect(again.context.steps).toEqual(before.context.steps);
        // A wrong accusation that was read is not read out again.
        const isOpen = before.matches('hunting');
        expect(again.matches('hunting')).toBe(isOpen);
        if (!isOpen) expect(again.value).toEqual(before.value);
      }),
      { numRuns: 50 },
    );
  });

  test('steps of another hunt are passed over, and cannot decide it', () => {
    const draft = huntDraftSchema.parse({
      version: 1,
      level: 2,
      seed: 'k7x2',
      steps: [{ probe: 'desk.ch99.in' }, { accuse: 'nothing at all' }, { probe: one.places[0] }],
      isBegun: true,
      isOver: false,
    });
    const snapshot = fromDraft(one, draft);
    expect(snapshot.context.steps).toEqual([{ probe: one.places[0] }]);
    expect(snapshot.matches('hunting')).toBe(true);
  });

  test.each([
    ['another version', { version: 2 }],
    ['a level that there is not', { level: 6 }],
    ['a seed with a path in it', { seed: '../x' }],
    ['too many steps', { steps: Array.from({ length: 501 }, () => ({ probe: 'a.b' })) }],
    ['a step that is neither', { steps: [{ probe: 'a.b', accuse: 'c' }] }],
    ['more than there is', { score: 1 }],
  ])('%s is refused', (_, change) => {
    const draft = {
      version: 1,
      level: 1,
      seed: 'a',
      steps: [],
      isBegun: true,
      isOver: false,
      ...change,
    };
    expect(huntDraftSchema.safeParse(draft).success).toBe(false);
  });
});
