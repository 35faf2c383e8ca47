import { type Circuit, stagesOf } from '../../circuit/circuit.ts';
import type { Address } from '../../rig/address.ts';
import { controls } from '../../rig/controls.ts';
import { clippingStages, type Headroom } from '../../solve/headroom.ts';
import { solve } from '../../solve/solve.ts';
import { type Db, ratioOf, UNITY } from '../../units/level.ts';
import { loudestAt } from '../loudest.ts';
import { paths } from '../paths.ts';
import { type FindingOf, MENDED_MARGIN } from './finding.ts';
import { reachedFrom, type Survey } from './survey.ts';

type Clipping = FindingOf<'over-full-scale' | 'stage-clips'>;
type Hearing = Pick<Survey, 'setup' | 'solution'>;

/**
 * Stages that clip, each cause once: the first ones are told, turned down on a copy of the circuit, and what still
 * clips there is looked at again. What no longer does only passed on what came, and what is mended at the same
 * control needs only more of the same. Sums in the box do not clip; the line of the converter that they leave by does.
 */
export function findClipping(survey: Survey): Clipping[] {
  const {
    setup,
    solution: { circuit },
  } = survey;
  const told: Clipping[] = [];
  const turned = new Map<number, Db>();
  let { solution } = survey;
  let clipping = clippingStages(solution);
  const now = new Map(clipping.map(({ stage, headroom }) => [stage, -headroom as Db]));
  while (clipping.length > 0) {
    const first = firstOf(survey, clipping);
    const found = togetherAs({ setup, solution }, first, now);
    told.push(...found.filter((one) => !told.some(({ mendAt }) => mendAt === one.mendAt)));
    for (const { stage, headroom } of first) {
      turned.set(indexOf(circuit, stage), (headroom - MENDED_MARGIN) as Db);
    }
    solution = solve(turnedDown(circuit, turned));
    clipping = clippingStages(solution).filter(
      ({ stage }) => now.has(stage) && !turned.has(indexOf(circuit, stage)),
    );
  }
  return told;
}

const indexOf = (circuit: Circuit, stage: Address): number => stagesOf(circuit, stage)[0] ?? -1;

/** Those that no other one leads to; in a ring, the first one. */
function firstOf(survey: Survey, clipping: readonly Headroom[]): Headroom[] {
  const stages = clipping.map(({ stage }) => indexOf(survey.solution.circuit, stage));
  const reached = stages.map((stage) => reachedFrom(survey, [stage]));
  const leads = (from: number, to: number) => reached[from]?.has(stages[to] ?? -1) ?? false;
  return clipping.filter((_, one) =>
    stages.every(
      (_stage, other) => other === one || !leads(other, one) || (leads(one, other) && one < other),
    ),
  );
}

/** A circuit in which less comes to some stages, by gains in dB. */
const turnedDown = (circuit: Circuit, gains: ReadonlyMap<number, Db>): Circuit => ({
  ...circuit,
  wires: circuit.wires.map((into, stage) => {
    const gain = gains.get(stage);
    if (gain === undefined) return into;
    return into.map((wire) => ({ ...wire, ratio: wire.ratio * ratioOf(gain) }));
  }),
});

/**
 * Findings of stages that clip: both legs of a place, and places that are alike and mended at one control, in one.
 *
 * @param now by how much each stage is over as the setup stands.
 */
function togetherAs(
  hearing: Hearing,
  clipping: readonly Headroom[],
  now: ReadonlyMap<Address, Db>,
): Clipping[] {
  const overOf = ({ stage }: Headroom) => now.get(stage) ?? UNITY;
  const found = new Map<Address, Clipping>();
  const seen = new Set<Address>();
  // The worst one first: it says how much, and whose peaks they are.
  for (const one of [...clipping].sort((a, b) => overOf(b) - overOf(a))) {
    const { place, clip } = one;
    if (seen.has(place)) continue;
    seen.add(place);
    const loudest = loudestAt(hearing, place);
    const mendAt = mendingOf(hearing, loudest[0] ?? '', place);
    const code = place.startsWith('converter.') ? 'over-full-scale' : 'stage-clips';
    const known = found.get(mendAt);
    if (!known) {
      const told = { places: [place], over: overOf(one), clip, loudest, mendAt };
      found.set(mendAt, { code, severity: 'fault', ...told, follow: loudest[0] });
    } else if (known.code === code && known.clip === clip) {
      found.set(mendAt, { ...known, places: [...known.places, place] });
    }
  }
  return [...found.values()];
}

/**
 * Where one begins to mend a place: the gain that raises the loudest track most on its way there; where none does,
 * the last one that it passes.
 */
function mendingOf({ setup, solution }: Hearing, loudest: string, place: Address): Address {
  const [way] = paths(solution, loudest, place);
  const known = controls(setup.rig);
  const gains = (way?.steps ?? []).filter((step) => known.get(step.place)?.kind === 'gain');
  const [most] = [...gains].sort((one, other) => other.gain - one.gain);
  const mending = most && most.gain > UNITY ? most : gains.at(-1);
  return mending?.place ?? place;
}
