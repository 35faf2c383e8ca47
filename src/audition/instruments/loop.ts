import { LOOP_LENGTH } from './piece.ts';

/** Samples once round. What goes on past the end goes on at the beginning, so that there is no seam. */
export type Loop = Float32Array<ArrayBuffer>;

export const emptyLoop = (): Loop => new Float32Array(LOOP_LENGTH);

/** Adds to a frame, counted on past the end, less than once round. */
export function addAt(loop: Loop, frame: number, value: number): void {
  // This is done some ten million times: a remainder takes too long.
  const index = frame < LOOP_LENGTH ? frame : frame - LOOP_LENGTH;
  loop[index] = (loop[index] ?? 0) + value;
}

/** A loop at an RMS of 1, without any direct current. A loop of silence stays as it is. */
export function levelled(loop: Loop): Loop {
  const mean = loop.reduce((sum, sample) => sum + sample, 0) / loop.length;
  const power = loop.reduce((sum, sample) => sum + (sample - mean) ** 2, 0) / loop.length;
  return power === 0 ? loop : loop.map((sample) => (sample - mean) / Math.sqrt(power));
}
