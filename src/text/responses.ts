import type { Address, Rig } from '../../simulator/index.ts';
import { frequencyText } from './amounts.ts';
import { sourceName } from './owners.ts';
import { goalName } from './places.ts';
import { sentence } from './sentence.ts';
import { signed } from './signed.ts';

/** How one frequency is raised or lowered. */
export interface ResponsePoint {
  /** In hertz. */
  readonly frequency: number;
  /** In dB. */
  readonly gain: number;
}

/** From where to where a response runs: the frequency that gains most, and the one that loses most. */
export function responseSentence(
  rig: Rig,
  source: string,
  place: Address,
  { most, least }: { readonly most: ResponsePoint; readonly least: ResponsePoint },
): string {
  const pointText = ({ frequency, gain }: ResponsePoint) =>
    `${signed(gain)} dB at ${frequencyText(frequency)}`;
  return sentence(
    `response of ${sourceName(rig, source)}, from the recording to ${goalName(rig, place)}: most ${pointText(most)}, least ${pointText(least)}`,
  );
}
