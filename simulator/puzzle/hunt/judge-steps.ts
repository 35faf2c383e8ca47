import type { Address } from '../../rig/address.ts';
import { complaintAt, complaintId } from './complaint.ts';
import { faultId, type HuntFault, solutionWith } from './fault.ts';
import type { Hunt } from './hunt.ts';
import { lookAlike, type Reading, readingAt } from './reading.ts';
import { type Fitting, partsOf } from './strategy.ts';

/** One thing that a hunter did: read at a place, or accused a fault by its id. */
export type HuntStep = { readonly probe: Address } | { readonly accuse: string };

/** What a meter showed, and what it would have shown if all was as written down. */
export interface ProbeReading {
  readonly place: Address;
  readonly found: Reading;
  readonly meant: Reading;
}

/**
 * What a probe was worth, by what was known before it:
 *
 * - `sound`: no other place would have left fewer probes to make in the worst case.
 * - `premature`: it could tell something, but another place would have told more: it asks about few of those who
 *   fit before the many are parted, so that more probes may follow.
 * - `redundant`: all suspects that still fitted would have read alike there; what it shows was known.
 * - `outside`: no suspect of this complaint changes anything there. It was never worth a look.
 */
export type Worth = 'sound' | 'premature' | 'redundant' | 'outside';

/** What a step did to the suspects. */
export type JudgedStep = JudgedProbe | JudgedAccusation;

export interface JudgedProbe {
  readonly kind: 'probe';
  readonly reading: ProbeReading;
  readonly before: Fitting;
  readonly after: Fitting;
  readonly worth: Worth;
  /** Where the meter would best have been held, and how many suspects at most would have been left. */
  readonly better: { readonly place: Address; readonly left: number } | undefined;
}

export interface JudgedAccusation {
  readonly kind: 'accusation';
  readonly fault: HuntFault;
  readonly isRight: boolean;
  readonly before: Fitting;
  readonly after: Fitting;
}

/** What a meter shows at a place in a hunt. @throws RangeError when none can be held there. */
export function readPlace(hunt: Hunt, place: Address): ProbeReading {
  const index = placeIndex(hunt, place);
  return {
    place,
    found: hunt.readings[index]?.[hunt.hidden] ?? [],
    meant: hunt.meant[index] ?? [],
  };
}

/** Whether an accused fault is the hidden one, or one that no reading tells from it. */
export const isRight = ({ suspects, hidden }: Hunt, id: string): boolean =>
  suspects[hidden]?.faults.some((fault) => faultId(fault) === id) ?? false;

/** The suspects that fit before anything was read. */
export const allSuspects = ({ suspects }: Hunt): Fitting => suspects.map((_, index) => index);

/** Each step with the suspects before and after it. @throws RangeError for a step that the hunt does not have. */
export function judgeSteps(hunt: Hunt, steps: readonly HuntStep[]): readonly JudgedStep[] {
  let fitting = allSuspects(hunt);
  return steps.map((step) => {
    const judged =
      'probe' in step
        ? judgeProbe(hunt, step.probe, fitting)
        : judgeAccusation(hunt, step.accuse, fitting);
    fitting = judged.after;
    return judged;
  });
}

function judgeProbe(hunt: Hunt, place: Address, before: Fitting): JudgedProbe {
  const index = placeIndex(hunt, place);
  const test = hunt.tests[index] ?? [];
  const parts = partsOf(before, test);
  const after = before.filter((suspect) => test[suspect] === test[hunt.hidden]);
  const best = hunt.strategy.bestFor(before);
  const reading = readPlace(hunt, place);
  if (parts.length < 2) {
    const worth = hunt.isOutside[index] ? 'outside' : 'redundant';
    return { kind: 'probe', reading, before, after, worth, better: betterAt(hunt, before) };
  }
  const isSound = best !== undefined && hunt.strategy.worstAfter(index, before) <= best.worst;
  if (isSound) return { kind: 'probe', reading, before, after, worth: 'sound', better: undefined };
  const better = betterAt(hunt, before);
  return { kind: 'probe', reading, before, after, worth: 'premature', better };
}

function betterAt(hunt: Hunt, before: Fitting): JudgedProbe['better'] {
  const best = hunt.strategy.bestFor(before);
  const place = best && hunt.places[best.test];
  if (!place) return undefined;
  const parts = partsOf(before, hunt.tests[best.test] ?? []);
  return { place, left: Math.max(...parts.map((part) => part.length)) };
}

function judgeAccusation(hunt: Hunt, id: string, before: Fitting): JudgedAccusation {
  const fault = hunt.faults.find((one) => faultId(one) === id);
  if (!fault) throw new RangeError(`Expected a fault of the hunt, but got ${id}.`);
  const right = isRight(hunt, id);
  const cleared = (suspect: number) =>
    hunt.suspects[suspect]?.faults.some((one) => faultId(one) === id) ?? false;
  const after = before.filter((suspect) => (right ? suspect === hunt.hidden : !cleared(suspect)));
  return { kind: 'accusation', fault, isRight: right, before, after };
}

/** Why an accused fault is not it. */
export type Contradiction =
  /** It would have made another complaint. */
  | { readonly code: 'other-complaint' }
  /** A reading would have been another one. */
  | { readonly code: 'other-reading'; readonly reading: ProbeReading; readonly would: Reading }
  /** It fitted all that was known. */
  | { readonly code: 'it-fitted' };

/** Holds an accused fault that is not it against the complaint and all that was read before. */
export function contradictionOf(
  { setup, meantSolution, complaint, source }: Hunt,
  fault: HuntFault,
  readings: readonly ProbeReading[],
): Contradiction {
  const solution = solutionWith(setup, meantSolution, fault);
  const own = complaintAt(setup.rig, complaint.output, meantSolution, solution);
  for (const reading of readings) {
    const would = readingAt(solution, source, reading.place);
    if (!lookAlike(would, reading.found)) return { code: 'other-reading', reading, would };
  }
  const isSame = own !== undefined && complaintId(own) === complaintId(complaint);
  return { code: isSame ? 'it-fitted' : 'other-complaint' };
}

function placeIndex({ places }: Hunt, place: Address): number {
  const index = places.indexOf(place);
  if (index < 0) throw new RangeError(`Expected a place to read at, but got ${place}.`);
  return index;
}
