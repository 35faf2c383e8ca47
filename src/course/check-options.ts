import type { OptionResult } from '../../simulator/index.ts';
import { signed } from '../text/index.ts';
import type { Remark } from './remark.ts';

/** An option that is longer than all others by this factor draws the eye, whether it is right or wrong. */
const MOST_LONGER = 1.6;

type Results = readonly OptionResult[];

/** That there is exactly one right option. @param expected what should be so, in words. */
export function keyRemarks(results: Results, expected: string): Remark[] {
  const keys = results.filter(({ holds }) => holds).map(({ id }) => id);
  if (keys.length === 1) return [];
  return [{ what: `${expected}, but found ${keys.length === 0 ? 'none' : keys.join(', ')}` }];
}

/** Numbers that are not computed, or nearer to one another than this. */
export function nearnessRemarks(results: Results, leastApartDb: number): Remark[] {
  const hasNumber = ({ value }: OptionResult) => value !== undefined && !Number.isNaN(value);
  const uncomputed = results
    .filter((result) => !hasNumber(result))
    .map(({ id }) => ({ what: `the option ${id} has no number` }));
  const known = results.filter(hasNumber);
  const near = known.flatMap((one, index) =>
    known.slice(index + 1).flatMap((other): Remark[] => {
      const [a, b] = [Number(one.value), Number(other.value)];
      if (a !== b && Math.abs(a - b) >= leastApartDb) return [];
      const numbers = `${signed(a, 2)} and ${signed(b, 2)} dB`;
      return [
        {
          what: `the options ${one.id} and ${other.id} are less than ${leastApartDb} dB apart: ${numbers}`,
        },
      ];
    }),
  );
  return [...uncomputed, ...near];
}

/** That the number to be said is one, and that some mistaken idea of it is answered. */
export function predictionRemarks(results: Results): Remark[] {
  const silent = results
    .filter(({ holds, value }) => holds && value === -Infinity)
    .map(({ id }) => ({ what: `the number to be said is silence, at the option ${id}` }));
  if (results.some(({ holds }) => !holds)) return silent;
  const what = 'no mistaken idea is answered: it has no option with asIf';
  return [...silent, { isWarning: true, what }];
}

/** An option whose length draws the eye. */
export function lengthRemarks(
  options: readonly { readonly id: string; readonly text: string }[],
  results: Results,
): Remark[] {
  const [longest, next] = options.toSorted((one, other) => other.text.length - one.text.length);
  if (!longest || !next || longest.text.length <= MOST_LONGER * next.text.length) return [];
  const isKey = results.some(({ id, holds }) => id === longest.id && holds);
  const effect = isKey ? 'it gives itself away' : 'it looks like the key';
  const lengths = `${longest.text.length} letters, the next longest option ${next.text.length}`;
  return [
    {
      isWarning: true,
      what: `the ${isKey ? 'key' : 'option'} ${longest.id} has ${lengths}: ${effect}`,
    },
  ];
}

/** That some outputs are reached and some are not, and that it is plain which. */
export function outputRemarks(results: Results): Remark[] {
  const one = (what: string) => [{ what }];
  const plain = results.flatMap(({ id, judgement }) => {
    if (judgement?.heard.kind !== 'level') return [];
    if (judgement.heard.level === undefined) return one(`an unstable loop reaches ${id}`);
    const isCancelled = judgement.holds && judgement.reasons.some(({ code }) => code === 'arrives');
    return isCancelled ? one(`ways lead to ${id}, and cancel there`) : [];
  });
  if (results.every(({ holds }) => holds)) return [...plain, ...one('every output is reached')];
  if (results.every(({ holds }) => !holds)) return [...plain, ...one('no output is reached')];
  return plain;
}

/** That every way meets the stops in one order, and that it is not the one they are first shown in. */
export function orderRemarks(results: Results): Remark[] {
  if (results.some(({ holds }) => !holds)) {
    return [{ what: 'expected every way to meet all stops in one order, but found another' }];
  }
  if (results.some(({ position }, index) => position !== index)) return [];
  return [{ what: 'its stops stand in the right order already' }];
}
