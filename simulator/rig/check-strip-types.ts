import type { Contradiction } from './contradiction.ts';
import type { Rig, StripStage, StripType } from './schema.ts';

/** Strips of no known type, and types whose stages or taps contradict one another. */
export function stripTypeContradictions({ desk: { stripTypes, strips } }: Rig): Contradiction[] {
  const ids = stripTypes.map(({ id }) => id);
  return [
    ...strips.flatMap(({ type }, index): Contradiction[] =>
      ids.includes(type)
        ? []
        : [
            {
              at: ['desk', 'strips', index, 'type'],
              expected: 'a strip type of this desk',
              found: `"${type}"`,
              hint: `It has ${ids.join(', ')}.`,
            },
          ],
    ),
    ...stripTypes.flatMap((type, index) =>
      [...stageContradictions(type), ...tapContradictions(type)].map((one) => ({
        ...one,
        at: ['desk', 'stripTypes', index, ...one.at],
      })),
    ),
  ];
}

function stageContradictions({ stages, stereo }: StripType): Contradiction[] {
  const found: Contradiction[] = [];
  const at = ['stages'];
  const order = stages.join(', ');
  const twice = stages.find((stage, index) => stages.indexOf(stage) !== index);
  if (twice) {
    found.push({
      at,
      expected: 'each stage once',
      found: `${twice} twice`,
      hint: `Take one ${twice} out.`,
    });
  }
  if (!stages.includes('pan')) {
    found.push({
      at,
      expected: 'a pan stage',
      found: order,
      hint: 'Add pan where the strip has it.',
    });
  }
  // Behind the pan of a mono strip there are two legs, and its insert has jacks for one.
  if (!stereo && stages.includes('pan') && stages.indexOf('insert') > stages.indexOf('pan')) {
    found.push({
      at,
      expected: 'the insert before the pan',
      found: order,
      hint: 'Move the insert before the pan, or make the strip stereo.',
    });
  }
  return found;
}

/** Taps on no stage of the strip, or on the wrong side of its fader. The fader itself is the first stage after it. */
function tapContradictions({ stages, taps }: StripType): Contradiction[] {
  const fader = stages.indexOf('fader');
  const sides = {
    pre: { name: 'before', stages: stages.slice(0, Math.max(0, fader)) },
    post: { name: 'after', stages: stages.slice(fader) },
  };
  return (['pre', 'post'] as const).flatMap((tap): Contradiction[] => {
    const at = ['taps', tap];
    const found = taps[tap];
    if (!stages.includes(found)) {
      return [{ at, expected: 'a stage of the strip', found, hint: listHint(stages) }];
    }
    const side = sides[tap];
    if (fader < 0 || side.stages.includes(found)) return [];
    return [{ at, expected: `a stage ${side.name} the fader`, found, hint: listHint(side.stages) }];
  });
}

const listHint = (stages: readonly StripStage[]): string =>
  stages.length > 0
    ? `Name one of ${stages.join(', ')}.`
    : 'Put a stage before the fader, such as trim.';
