import type { Reading } from './reading.ts';

/** What comes into the return goes on: what a cord brings, else what the send passes straight on. */
export function readInsert(
  reading: Reading,
  at: string,
  from: readonly string[],
): readonly string[] {
  reading.chain(from, `${at}.insert.send`, 1);
  const returned = reading.place(`${at}.insert.return`, from.length === 2);
  return reading.chain(returned, `${at}.insert`, 1);
}
