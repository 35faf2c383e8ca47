import { type Circuit, signalsNamed, stagesOf } from '../circuit/circuit.ts';
import type { Rig } from '../rig/schema.ts';
import { firstToClip, type Headroom, headroomAt } from '../solve/headroom.ts';
import { type Level, levelOf } from '../solve/levels.ts';
import { noiseAt } from '../solve/noise.ts';
import { anyRing } from '../trace/any-ring.ts';
import { countWays } from '../trace/count-ways.ts';
import type { Finding } from '../trace/findings/finding.ts';
import { findings } from '../trace/findings.ts';
import { alwaysPasses, leadsPast, leadsThrough } from '../trace/leads.ts';
import { openWiresOf } from '../trace/open-wires.ts';
import { spread } from '../trace/spread.ts';
import { type Db, SILENCE } from '../units/level.ts';
import type { Claim, ClaimOf } from './check.ts';
import { type Hearing, placeNamed } from './hearing.ts';
import { carryOut } from './probe.ts';

/** Claims about which ways are open: no level decides them. */
export type WiringClaim = ClaimOf<'once' | 'passes' | 'avoids' | 'dry-and-through'>;

export const isWiringClaim = (claim: Claim): claim is WiringClaim =>
  claim.kind === 'once' ||
  claim.kind === 'passes' ||
  claim.kind === 'avoids' ||
  claim.kind === 'dry-and-through';

/**
 * Whether a claim holds. `judge` says besides what was heard, and why.
 *
 * @throws RangeError when the claim names a source or place that the rig does not have.
 */
export function holds(claim: Claim, hearing: Hearing): boolean {
  const { setup, solution } = hearing;
  if (isWiringClaim(claim)) return holdsByWires(claim, setup.rig, solution.circuit);
  if (claim.kind === 'no-loop') return solution.loops.length === 0;
  if (claim.kind === 'headroom') return hasHeadroom(claim, hearing);
  if (claim.kind === 'no-finding') {
    return !findings(setup, solution).some((finding) => isNamedBy(claim, finding));
  }
  const output = placeNamed(setup.rig, claim.output);
  const level = levelOf(solution, claim.source, output);
  if (claim.kind === 'reaches') return isWithinBand(claim, level);
  if (claim.kind === 'absent') return level === -Infinity;
  if (claim.kind === 'above-noise') return isFarAbove(claim, level, noiseAt(solution, output));
  const probing = carryOut(claim.probe, setup, solution);
  if (!probing) return false;
  return movesAsAsked(claim, level, levelOf(probing.after, claim.source, output), probing.byDb);
}

/** Whether a claim fails in a circuit whatever the levels are. Where it does not, levels may yet fail it. */
export function failsByWires(claim: Claim, rig: Rig, circuit: Circuit): boolean {
  if (isWiringClaim(claim)) return !holdsByWires(claim, rig, circuit);
  switch (claim.kind) {
    case 'no-loop':
      return anyRing(openWiresOf(circuit)) !== undefined;
    case 'absent':
    case 'headroom':
    case 'no-finding':
      return false;
    default: {
      const goals = stagesOf(circuit, placeNamed(rig, claim.output));
      const leading = spread(goals, openWiresOf(circuit).backwards);
      return !signalsNamed(circuit, claim.source).some(({ stage }) => leading[stage] === 1);
    }
  }
}

/** Whether a claim about open ways holds in a circuit. */
export function holdsByWires(claim: WiringClaim, rig: Rig, circuit: Circuit): boolean {
  const output = placeNamed(rig, claim.output);
  const starts = signalsNamed(circuit, claim.source).map(({ stage }) => stage);
  switch (claim.kind) {
    case 'once': {
      const goals = stagesOf(circuit, output);
      return starts.every((start) => countWays(circuit, start, goals, 2) === 1);
    }
    case 'passes':
      return starts.every((start) => alwaysPasses(circuit, start, claim.through, output));
    case 'avoids':
      return !starts.some((start) => leadsThrough(circuit, start, claim.past, output));
    case 'dry-and-through':
      return starts.every(
        (start) =>
          leadsThrough(circuit, start, claim.through, output) &&
          leadsPast(circuit, start, claim.through, output),
      );
  }
}

/** How far what was computed may lie beyond the end of a band, in dB: less is rounding. */
const ROUNDING_DB = 1e-6;

/** Whether a level lies in the band that a claim asks for. What is unknown lies in none. */
export const isWithinBand = ({ minDbu, maxDbu }: ClaimOf<'reaches'>, level: Level): boolean =>
  level !== undefined && level >= minDbu - ROUNDING_DB && level <= maxDbu + ROUNDING_DB;

/** Whether a level stands so far above the noise. Silence stands above nothing, and what is unknown does not either. */
export const isFarAbove = (
  { minDb }: ClaimOf<'above-noise'>,
  level: Level,
  noise: Level,
): boolean =>
  level !== undefined &&
  noise !== undefined &&
  level > SILENCE &&
  level - noise >= minDb - ROUNDING_DB;

/** Whether the peaks stay below the clip level. In silence they do; where a loop is unstable, they do nowhere. */
export function hasHeadroom(claim: ClaimOf<'headroom'>, hearing: Hearing): boolean {
  if (hearing.solution.loops.some(({ stable }) => !stable)) return false;
  const least = leastHeadroom(claim, hearing);
  return least === undefined || least.headroom >= claim.minDb - ROUNDING_DB;
}

/** The stage that decides a claim about headroom; nothing where all is silent, or a loop leaves no level. */
export const leastHeadroom = (
  { at }: ClaimOf<'headroom'>,
  { setup, solution }: Hearing,
): Headroom | undefined =>
  at === undefined ? firstToClip(solution) : headroomAt(solution, placeNamed(setup.rig, at));

/** Whether a finding is of the kind that a claim asks about: without a kind, whether it is a fault. */
export const isNamedBy = ({ code }: ClaimOf<'no-finding'>, finding: Finding): boolean =>
  code === undefined ? finding.severity === 'fault' : finding.code === code;

/** Whether a level stood still or went along with a probe. What is silent before and after did neither. */
export function movesAsAsked(
  { kind, toleranceDb }: ClaimOf<'steady' | 'follows'>,
  before: Level,
  after: Level,
  byDb: Db,
): boolean {
  if (before === undefined || after === undefined) return false;
  return Math.abs(after - before - (kind === 'steady' ? 0 : byDb)) <= toleranceDb;
}
