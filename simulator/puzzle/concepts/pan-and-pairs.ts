import type { Claim } from '../../grade/check.ts';
import { type AroundClaim, type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { roomOf, type StereoPlayer, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** Both sides of a pair reach their own side of the mix; what stands in the middle stands in the middle. */
export function panAndPairs(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const pairs: readonly StereoPlayer[] = level < 3 ? ['piano'] : ['piano', 'room'];
  const players = seated(stream, size.players - 2);
  const rig = roomOf({ players, pairs, moreOutputs: 1 });
  const sketch = new Sketch(rig);
  const centre = stream.pick(players);
  const ownStrip = `desk.ch${players.indexOf(centre) + 1}`;
  const faultsBySubject: (() => boolean)[][] = [];
  pairs.forEach((pair, index) => {
    const first = players.length + 2 * index + 1;
    const [left, right] = [`desk.ch${first}`, `desk.ch${first + 1}`];
    sketch.ask({ code: 'pair', sources: [pair], at: 'out.capture' }, ...sides(pair));
    faultsBySubject.push([
      () => sketch.spoil('pan-centre', pair, `${right}.pan`, { [`${right}.pan`]: 0 }),
      () => sketch.spoil('pan-centre', pair, `${left}.pan`, { [`${left}.pan`]: 0 }),
      () =>
        sketch.spoil('pans-swapped', pair, `${left}.pan`, {
          [`${left}.pan`]: 1,
          [`${right}.pan`]: -1,
        }),
      () =>
        sketch.spoil('pair-on-one', pair, `box.${pair}.to`, { [`box.${pair}.to`]: `out${first}` }),
      () =>
        sketch.spoil('pair-shifted', pair, `box.${pair}.to`, {
          [`box.${pair}.to`]: `out${first + 1}-${first + 2}`,
        }),
    ]);
  });
  if (level > 1) {
    sketch.ask(
      { code: 'centre', sources: [centre], at: 'out.capture' },
      { kind: 'around', source: centre, output: 'out.capture.l', by: 1 },
      { kind: 'around', source: centre, output: 'out.capture.r', by: 1 },
    );
    const side = stream.pick([-1, 1]);
    faultsBySubject.push([
      () => sketch.spoil('pan-aside', centre, `${ownStrip}.pan`, { [`${ownStrip}.pan`]: side }),
      () =>
        sketch.spoil('output-pair', centre, `box.${centre}.to`, {
          [`box.${centre}.to`]: `out${players.indexOf(centre) + 1}-${players.indexOf(centre) + 2}`,
        }),
    ]);
  }
  // Two things that are wrong with one of them are often mended by one move.
  const faults = faultsBySubject.map((ofSubject) => stream.pick(ofSubject));
  pickFaults(stream, size.faults, faults);
  return sketch.draft(pairs[0] ?? centre, [
    'desk.*.pan',
    'box.*.to',
    ...(level > 1 ? ['box.*.pan'] : []),
    ...(level > 2 ? ['desk.*.mute'] : []),
  ]);
}

function sides(pair: StereoPlayer): readonly (Claim | AroundClaim)[] {
  return (['l', 'r'] as const).flatMap((side) => {
    const [own, other] = side === 'l' ? ['l', 'r'] : ['r', 'l'];
    return [
      { kind: 'around', source: `${pair}.${side}`, output: `out.capture.${own}`, by: 1.5 },
      { kind: 'absent', source: `${pair}.${side}`, output: `out.capture.${other}` },
    ] as const;
  });
}
