/**
 * Evenly spread numbers from −1 to 1 that look random and are the same for the same seed.
 * Source: Marsaglia, *Xorshift RNGs*, Journal of Statistical Software 8(14), 2003; shifts 13, 17, 5.
 */
export function seededNoise(seed: string): () => number {
  let state = 0x9e3779b9;
  for (const letter of seed) state = Math.imul(state ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  // A state of 0 would stay there.
  state ||= 1;
  const next = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state / 2 ** 31;
  };
  // Seeds that differ in one letter begin alike.
  for (let turn = 0; turn < 16; turn += 1) next();
  return next;
}
