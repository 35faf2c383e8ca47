import { describe, expect, test } from 'vitest';
import { boardOf, type FileBoard, levelOf, outputPlace, simulate } from '../../simulator/index.ts';
import { course } from './the-course.ts';

// What lessons say of a desk in words, where no component puts in what the desk does.

/** The level of a source at an output or a place of a rig, in dBu. */
function levelIn(rigId: string, source: string, at: string, values: FileBoard): number | undefined {
  const rig = course.rigs.get(rigId);
  if (!rig) throw new Error(`Expected a rig ${rigId}.`);
  const place = rig.outputs.some(({ id }) => id === at) ? outputPlace(at) : at;
  return levelOf(simulate({ rig, board: boardOf('it', rig, values) }), source, place);
}

describe('a-send-has-no-return', () => {
  const plateAt = (send: number) =>
    levelIn('net-loft', 'alto', 'rack.plate.in', { 'desk.ch2.aux3': -6, 'desk.ret1.aux3': send });

  test('R1 sent to its own plate at −6 dies away, at −3 howls: both sides of the plate add up', () => {
    expect(plateAt(-6)).toBeLessThan(0);
    expect(plateAt(-3)).toBeUndefined();
  });
});
