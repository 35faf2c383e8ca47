import { type Board, withValues } from '../board/board.ts';
import { boardData } from '../board/board-data.ts';
import { movesBetween } from '../board/moves.ts';
import { outputPlace, rackOwner } from '../rig/address.ts';
import { boxChannels, pluginAddress } from '../rig/box-channels.ts';
import { misfitsIn } from '../rig/check-rig.ts';
import type { Rig } from '../rig/schema.ts';
import { firstToClip } from '../solve/headroom.ts';
import { levelOf } from '../solve/levels.ts';
import { simulate } from '../solve/simulate.ts';
import { findings } from '../trace/findings.ts';
import { isWithin, placesOf } from '../trace/path.ts';
import { paths } from '../trace/paths.ts';
import type { Claim } from './check.ts';
import type { Hearing } from './hearing.ts';
import { holds } from './holds.ts';

/** How far a level may lie from that of the solution, in dB: about what a finger on a fader leaves. Ours. */
const BAND_DB = 1;
/** Levels of claims lie in these bounds, in dBu. */
const LOWEST = -119;
const HIGHEST = 59;

/**
 * What could be asked for in a task: every claim, of those that come to mind of each source and each output of the
 * rig, that holds in the solution and does not at the start. Claims about the whole setup stand last.
 *
 * @returns nothing where start and solution sound alike.
 */
export function candidateClaims(rig: Rig, start: Board, solution: Board): Claim[] {
  const [before, after] = [start, solution].map((board): Hearing => {
    const setup = { rig, board };
    return { setup, solution: simulate(setup) };
  });
  if (!before || !after) return [];
  const claims = [
    ...rig.outputs.flatMap(({ id: output }) =>
      rig.box.tracks.flatMap(({ id: source }) => claimsAbout(source, output, before, after)),
    ),
    ...claimsAboutAll(before, after),
  ];
  return claims.filter((claim) => holds(claim, after) && !holds(claim, before));
}

function claimsAbout(source: string, output: string, before: Hearing, after: Hearing): Claim[] {
  const level = levelOf(after.solution, source, outputPlace(output));
  if (level === undefined) return [];
  if (level === -Infinity) return [{ kind: 'absent', source, output }];
  const probe = { move: 'fader', of: source, byDb: -10 } as const;
  const [isOn, wasOn] = [after, before].map((hearing) => devicesOn(source, output, hearing));
  return [
    ...(level > LOWEST && level < HIGHEST
      ? [
          {
            kind: 'reaches' as const,
            source,
            output,
            minDbu: tenths(level - BAND_DB),
            maxDbu: tenths(level + BAND_DB),
          },
        ]
      : []),
    { kind: 'once', source, output },
    { kind: 'steady', source, output, probe, toleranceDb: 0.1 },
    { kind: 'follows', source, output, probe, toleranceDb: 0.1 },
    ...(isOn && isOn.length > 0
      ? [{ kind: 'passes' as const, source, output, through: isOn }]
      : []),
    ...(isOn ?? []).map((through) => ({
      kind: 'dry-and-through' as const,
      source,
      output,
      through,
    })),
    ...(wasOn ?? []).map((past) => ({ kind: 'avoids' as const, source, output, past })),
  ];
}

function claimsAboutAll(before: Hearing, after: Hearing): Claim[] {
  const headroom = firstToClip(after.solution)?.headroom;
  const codes = new Set(findings(before.setup, before.solution).map(({ code }) => code));
  return [
    { kind: 'no-loop' },
    ...(headroom !== undefined && headroom >= 0 ? [{ kind: 'headroom' as const, minDb: 0 }] : []),
    ...[...codes].map((code) => ({ kind: 'no-finding' as const, code })),
  ];
}

/**
 * What treats a source on any of its ways to an output, in the order of the loudest way: devices by their owner, plug-ins
 * by the place at which their sound comes out, since claims name no part of a channel but places.
 */
function devicesOn(source: string, output: string, { setup, solution }: Hearing): string[] {
  const { rig } = setup;
  const plugins = boxChannels(rig).flatMap((channel) =>
    channel.plugins.map((plugin) => pluginAddress(channel, plugin)),
  );
  const devices = rig.rack.map(({ id }) => rackOwner(id));
  const met = paths(solution, source, outputPlace(output)).flatMap((path) => {
    const places = placesOf(path);
    return places.flatMap((place, index) => {
      const next = places[index + 1] ?? '';
      const left = plugins.filter((one) => isWithin(place, one) && !isWithin(next, one));
      return [...devices.filter((one) => isWithin(place, one)), ...left.map(() => place)];
    });
  });
  return [...new Set(met)];
}

/** A level to a tenth. What is added keeps it from being the zero below zero, which no file can hold. */
const tenths = (level: number): number => Math.round(level * 10) / 10 + 0;

/** A likely mistake: one control of the solution that was forgotten and stands as at the start. */
export interface Forgotten {
  readonly address: string;
  readonly board: Board;
}

/** The solution with one control after the other as it stood at the start, wherever the rest lets it stand so. */
export const forgottenMoves = (rig: Rig, start: Board, solution: Board): Forgotten[] =>
  movesBetween(rig, start, solution).flatMap(({ control: { address }, from }) => {
    const board = withValues(rig, solution, { [address]: from });
    return misfitsIn(rig, boardData(board)).length > 0 ? [] : [{ address, board }];
  });
