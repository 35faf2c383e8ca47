import { digestOf } from '../course/digest.ts';
import { canonicalText } from './canonical-text.ts';
import type { HandIn } from './hand-in.ts';

/** With fewer events than this, two people can well have done the same. */
const FEWEST_EVENTS = 8;

/** Names what the log of a hand-in says was done, and when; nothing when that is too little to say anything by. */
export const logDigestOf = ({ events }: HandIn): string | undefined =>
  events.length < FEWEST_EVENTS ? undefined : digestOf(canonicalText(events));
