import { MOST_EVENTS, MOST_INTERACTIONS } from './interaction.ts';

/** What has a record of what was done, beside what came of it. */
interface Recorded {
  readonly items: readonly { readonly interactions: readonly unknown[] }[];
  readonly events: readonly unknown[];
}

/** How much of the record stays, from all to nothing. */
const SHARES = [1, 0.5, 0.25, 0.1, 0.025, 0] as const;

/**
 * Something with as much of its record as its text has room for: of each item the newest interactions, of the log its
 * beginning. Answers and counts always stay.
 *
 * @param most characters that its JSON may have.
 */
export function withRecordThatFits<T extends Recorded>(whole: T, most: number): T {
  for (const share of SHARES) {
    const cut = withShareOfRecord(whole, share);
    if (JSON.stringify(cut).length <= most) return cut;
  }
  return withShareOfRecord(whole, 0);
}

function withShareOfRecord<T extends Recorded>(whole: T, share: number): T {
  const most = Math.floor(MOST_INTERACTIONS * share);
  return {
    ...whole,
    items: whole.items.map((item) => ({
      ...item,
      interactions: most === 0 ? [] : item.interactions.slice(-most),
    })),
    events: whole.events.slice(0, Math.floor(MOST_EVENTS * share)),
  };
}
