import type { Refusal, Rig } from '../../../simulator/index.ts';
import { refusalSentence } from '../../text/index.ts';

export interface RefusalProps {
  readonly rig: Rig;
  readonly refusal: Refusal | undefined;
}

/** Why the last edit was refused; nothing after one that was not. */
export const RefusalWord = ({ rig, refusal }: RefusalProps) => (
  <p class="refusal" role="alert">
    {refusal && refusalSentence(rig, refusal)}
  </p>
);
