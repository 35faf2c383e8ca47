import { signalsNamed } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { type Level, levelOf } from '../solve/levels.ts';
import { noiseAt } from '../solve/noise.ts';
import { passes } from '../trace/path.ts';
import { paths } from '../trace/paths.ts';
import { stopAfter } from '../trace/stops.ts';
import type { Claim, ClaimOf } from './check.ts';
import { type Hearing, placeNamed } from './hearing.ts';
import { holdsByWires, isFarAbove, isWithinBand, movesAsAsked, type WiringClaim } from './holds.ts';
import { judgeHeadroom, judgeNoFinding, judgeNoLoop } from './judge-setup.ts';
import { carryOut, type Probing } from './probe.ts';
import {
  arrivals,
  changesMost,
  noiseReasons,
  unstableLoops,
  whereTheyPart,
  whyMissed,
  whyNot,
  whyOutOfOrder,
} from './reasons.ts';
import type { Judgement, Reason } from './verdict.ts';

/**
 * Holds a claim against what is heard.
 *
 * @throws RangeError when the claim names a source or place that the rig does not have; reading a task
 *   refuses such claims.
 */
export function judge(claim: Claim, hearing: Hearing): Judgement {
  switch (claim.kind) {
    case 'reaches':
      return judgeReaches(claim, hearing);
    case 'absent':
      return judgeAbsent(claim, hearing);
    case 'once':
      return judgeOnce(claim, hearing);
    case 'steady':
    case 'follows':
      return judgeProbe(claim, hearing);
    case 'passes':
      return judgePasses(claim, hearing);
    case 'avoids':
      return judgeAvoids(claim, hearing);
    case 'dry-and-through':
      return judgeDryAndThrough(claim, hearing);
    case 'above-noise':
      return judgeAboveNoise(claim, hearing);
    case 'no-loop':
      return judgeNoLoop(claim, hearing);
    case 'headroom':
      return judgeHeadroom(claim, hearing);
    case 'no-finding':
      return judgeNoFinding(claim, hearing);
  }
}

/** Whether a claim about open ways holds. */
const stands = (claim: WiringClaim, { setup, solution }: Hearing): boolean =>
  holdsByWires(claim, setup.rig, solution.circuit);

/** The level of a source where a claim listens, the ways it comes by, and why it does not if there are none. */
function listen(claim: { source: string; output: string }, hearing: Hearing) {
  const { solution } = hearing;
  const output = placeNamed(hearing.setup.rig, claim.output);
  const ways = paths(solution, claim.source, output);
  const silent: Reason[] = ways.length === 0 ? [whyNot(solution, claim.source, output)] : [];
  return { output, ways, silent, level: levelOf(solution, claim.source, output) };
}

function judgeReaches(claim: ClaimOf<'reaches'>, hearing: Hearing): Judgement {
  const { ways, silent, level } = listen(claim, hearing);
  const heard = { kind: 'level', level } as const;
  if (level === undefined) {
    return { claim, holds: false, heard, reasons: unstableLoops(hearing.solution) };
  }
  const holds = isWithinBand(claim, level);
  const [loudest] = ways;
  if (!loudest) return { claim, holds, heard, reasons: silent };
  if (holds) return { claim, holds, heard, reasons: arrivals(ways) };
  const isLow = level < claim.minDbu;
  // Ways of one signal add up when it is too loud, and cancel when it is too soft and one is inverted.
  const second = ways.find(
    (way) =>
      way !== loudest &&
      way.signal === loudest.signal &&
      (!isLow || (way.inverted !== loudest.inverted && !way.decorrelated)),
  );
  const doubled = second ? [whereTheyPart(loudest, second)] : [];
  const reasons = [
    ...doubled,
    ...changesMost(loudest, isLow ? 'lowers' : 'raises'),
    ...arrivals(ways),
  ];
  return { claim, holds, heard, reasons };
}

function judgeAboveNoise(claim: ClaimOf<'above-noise'>, hearing: Hearing): Judgement {
  const { solution } = hearing;
  const { output, ways, silent, level } = listen(claim, hearing);
  const noise = noiseAt(solution, output);
  const heard = { kind: 'above-noise', level, noise } as const;
  const holds = isFarAbove(claim, level, noise);
  if (level === undefined) return { claim, holds, heard, reasons: unstableLoops(solution) };
  const [loudest] = ways;
  const lowered = loudest ? changesMost(loudest, 'lowers') : silent;
  return { claim, holds, heard, reasons: [...noiseReasons(solution, output), ...lowered] };
}

function judgeAbsent(claim: ClaimOf<'absent'>, hearing: Hearing): Judgement {
  const { ways, silent, level } = listen(claim, hearing);
  const holds = level === -Infinity;
  const reasons =
    level === undefined ? unstableLoops(hearing.solution) : [...silent, ...arrivals(ways)];
  return { claim, holds, heard: { kind: 'level', level }, reasons };
}

function judgeOnce(claim: ClaimOf<'once'>, hearing: Hearing): Judgement {
  const { ways, silent } = listen(claim, hearing);
  const straight = ways.filter(({ decorrelated }) => !decorrelated);
  const bySignal = signalsNamed(hearing.solution.circuit, claim.source).map(({ id }) => ({
    signal: id,
    ways: straight.filter(({ signal }) => signal === id),
  }));
  const doubled = bySignal.flatMap(({ ways: [one, other] }) =>
    one && other ? [whereTheyPart(one, other)] : [],
  );
  return {
    claim,
    holds: stands(claim, hearing),
    heard: {
      kind: 'arrivals',
      counts: bySignal.map(({ signal, ways: list }) => ({ signal, count: list.length })),
    },
    reasons: [...silent, ...doubled, ...arrivals(straight)],
  };
}

function judgeProbe(claim: ClaimOf<'steady' | 'follows'>, hearing: Hearing): Judgement {
  const { output, ways, silent, level: before } = listen(claim, hearing);
  const probing = carryOut(claim.probe, hearing.setup, hearing.solution);
  if (!probing) {
    const control = 'control' in claim.probe ? claim.probe.control : undefined;
    const source = 'of' in claim.probe ? claim.probe.of : claim.source;
    const reasons: Reason[] = [{ code: 'no-probe', source, control }];
    return { claim, holds: false, heard: { kind: 'no-probe' }, reasons };
  }
  const after = levelOf(probing.after, claim.source, output);
  const heard = { kind: 'move', before, after, probeDb: probing.byDb } as const;
  if (before === undefined || after === undefined) {
    return { claim, holds: false, heard, reasons: unstableLoops(hearing.solution) };
  }
  if (silent.length > 0) return { claim, holds: false, heard, reasons: silent };
  const holds = movesAsAsked(claim, before, after, probing.byDb);
  return { claim, holds, heard, reasons: probeReasons(ways, probing, claim, hearing) };
}

/** Which ways pass the moved control, and where the others leave. The ones that decide come first. */
function probeReasons(
  ways: ReturnType<typeof paths>,
  { moved }: Probing,
  claim: ClaimOf<'steady' | 'follows'>,
  { solution }: Hearing,
): Reason[] {
  const passing: Reason[] = [];
  const missing: Reason[] = [];
  for (const path of ways) {
    const control = moved.find((address) => passes(path, address));
    if (control) passing.push({ code: 'passes-probe', path, control });
    else {
      const [first = ''] = moved;
      missing.push(whyMissed(path, first, paths(solution, path.signal, first)));
    }
  }
  return claim.kind === 'steady' ? [...passing, ...missing] : [...missing, ...passing];
}

function judgePasses(claim: ClaimOf<'passes'>, hearing: Hearing): Judgement {
  const { ways, silent } = listen(claim, hearing);
  const astray = ways.flatMap((path) => whyOutOfOrder(path, claim.through) ?? []);
  return {
    claim,
    holds: stands(claim, hearing),
    heard: { kind: 'ways', all: ways.length, through: ways.length - astray.length },
    reasons: [...silent, ...(astray.length > 0 ? astray : arrivals(ways))],
  };
}

function judgeAvoids(claim: ClaimOf<'avoids'>, hearing: Hearing): Judgement {
  const { ways } = listen(claim, hearing);
  const through = ways.filter((path) => passes(path, claim.past));
  return {
    claim,
    holds: stands(claim, hearing),
    heard: { kind: 'ways', all: ways.length, through: through.length },
    reasons:
      through.length > 0
        ? through.map((path): Reason => ({ code: 'passes', path, stop: claim.past }))
        : arrivals(ways),
  };
}

function judgeDryAndThrough(claim: ClaimOf<'dry-and-through'>, hearing: Hearing): Judgement {
  const { output, ways, silent } = listen(claim, hearing);
  const through = ways.filter((path) => passes(path, claim.through));
  const dry = ways.filter((path) => !through.includes(path));
  const reasons: Reason[] = [...silent];
  if (ways.length > 0 && through.length === 0) {
    reasons.push(...dry.map((path): Reason => ({ code: 'misses', path, stop: claim.through })));
    reasons.push(...whyDeviceIsSilent(claim, output, hearing));
  } else if (dry.length === 0) {
    reasons.push(...through.map((path): Reason => ({ code: 'passes', path, stop: claim.through })));
  } else {
    reasons.push(...arrivals(ways));
  }
  return {
    claim,
    holds: stands(claim, hearing),
    heard: { kind: 'ways', all: ways.length, through: through.length },
    reasons,
  };
}

/**
 * Where a source stops before a device, or else where what leaves the device stops before the output. Nothing
 * for what has no output place of its own, as a strip.
 */
function whyDeviceIsSilent(
  claim: ClaimOf<'dry-and-through'>,
  output: Address,
  { solution }: Hearing,
): Reason[] {
  const input = `${claim.through}.in`;
  const leaving = `${claim.through}.out`;
  const { stagesAt } = solution.circuit;
  // A strip comes back by more than one place; only a device has an output of its own.
  if (!stagesAt.has(input) || !stagesAt.has(leaving)) return [];
  const arrived: Level = levelOf(solution, claim.source, input);
  if (arrived === -Infinity) return [whyNot(solution, claim.source, input)];
  return [
    {
      code: 'stops',
      source: claim.source,
      after: leaving,
      output,
      stop: stopAfter(solution, leaving, output),
    },
  ];
}
