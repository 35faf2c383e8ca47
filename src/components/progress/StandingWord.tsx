import type { Standing } from '../../progress/knowledge.ts';
import { STANDING_WORDS } from '../../text/index.ts';

/** How it stands with something, as a word with a mark of its own. */
export const StandingWord = ({ standing }: { standing: Standing }) => (
  <span class={`standing standing-${standing}`}>{STANDING_WORDS[standing]}</span>
);
