import { isOn, numberAt } from '../../board/board.ts';
import { type Address, BOX_MAIN, ownerOf, part } from '../../rig/address.ts';
import { controls } from '../../rig/controls.ts';
import type { Db } from '../../units/level.ts';
import type { Finding } from './finding.ts';
import { carries, feedersOf, idOf, loudestAt, type Survey, trackOf } from './survey.ts';

const CONVERTER = 'converter.';
const BOX_FADER = /^box\.[^.]+\.fader$/;
const MAIN_FEED = /^box\.[^.]+\.main$/;

/** Main feeds that are on while the box's main mix leaves by a line that something else uses too. */
export function findStrayFeeds(survey: Survey): Finding[] {
  const { setup, solution } = survey;
  if (!carries(survey, part(BOX_MAIN, 'fader'))) return [];
  const shared = solution.circuit.stages.flatMap((stage, index) => {
    if (!stage.id.startsWith(CONVERTER)) return [];
    const owners = feedersOf(survey, index);
    const sharers = owners.filter((owner) => owner !== BOX_MAIN);
    return owners.includes(BOX_MAIN) && sharers.length > 0
      ? [{ line: idOf(survey, index), sharers }]
      : [];
  });
  const feeds = [...controls(setup.rig).values()].flatMap(({ kind, address }) =>
    kind === 'switch' && MAIN_FEED.test(address) && isOn(setup, address) && carries(survey, address)
      ? [address]
      : [],
  );
  const [first] = feeds;
  if (first === undefined || shared.length === 0) return [];
  return [
    {
      code: 'stray-feed',
      severity: 'fault',
      feeds,
      lines: shared.map(({ line }) => line),
      sharers: [...new Set(shared.flatMap(({ sharers }) => sharers))],
      mendAt: first,
      follow: trackOf(survey, ownerOf(first)) ?? loudestAt(survey, first),
    },
  ];
}

/** Faders of the box away from unity: whoever sets the desk up again has to know them too. */
export function findBoxFaders(survey: Survey): Finding[] {
  const { setup } = survey;
  const faders = [...controls(setup.rig).values()].flatMap(
    ({ kind, address }): { address: Address; gain: Db }[] => {
      if (kind !== 'gain' || !BOX_FADER.test(address)) return [];
      const gain = numberAt(setup, address) as Db;
      return gain === 0 ? [] : [{ address, gain }];
    },
  );
  const [first] = faders;
  if (!first) return [];
  const follow = trackOf(survey, ownerOf(first.address)) ?? loudestAt(survey, first.address);
  return [{ code: 'box-fader', severity: 'note', faders, mendAt: first.address, follow }];
}
