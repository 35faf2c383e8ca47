/** A seed that nobody had before, as far as chance goes. */
export function newSeed(): string {
  const [number = 0] = crypto.getRandomValues(new Uint32Array(1));
  return number.toString(36);
}
