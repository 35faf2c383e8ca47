import type { Address } from '../../rig/address.ts';
import { controls } from '../../rig/controls.ts';
import { jacks } from '../../rig/jacks.ts';
import { levelAt } from '../../solve/levels.ts';
import { paths } from '../paths.ts';
import { type Finding, LOW_LEVEL } from './finding.ts';
import { isLed, loudestAt, type Survey } from './survey.ts';

/**
 * Inputs that something comes to, but below {@link LOW_LEVEL}; both sides of a stereo input together. Of
 * several on one way only the first is told, since the others follow from it.
 */
export function findLowLevels(survey: Survey): Finding[] {
  const { circuit } = survey.solution;
  const inputs = new Set(jacks(survey.setup.rig).inputs);
  const places = new Set(
    circuit.stages.flatMap(({ id, place }) => (inputs.has(id) ? [place] : [])),
  );
  const low = [...places].flatMap((place) => {
    const level = levelAt(survey.solution, place);
    return level !== undefined && level !== -Infinity && level < LOW_LEVEL
      ? [{ place, level }]
      : [];
  });
  return low
    .filter(
      ({ place }) =>
        !low.some(
          (other) =>
            other.place !== place &&
            isLed(survey, other.place, place) &&
            !isLed(survey, place, other.place),
        ),
    )
    .map(({ place, level }): Finding => {
      const follow = loudestAt(survey, place);
      const mendAt = lowersMost(survey, follow, place) ?? place;
      return { code: 'low-level', severity: 'fault', place, level, mendAt, follow };
    });
}

/** The control that turns the loudest source down most on its way to a place. */
function lowersMost(
  { setup, solution }: Survey,
  source: string | undefined,
  place: Address,
): Address | undefined {
  if (source === undefined) return undefined;
  const known = controls(setup.rig);
  const [loudest] = paths(solution, source, place);
  const lowering = (loudest?.steps ?? []).filter(
    (step) => step.gain < 0 && known.get(step.place)?.kind === 'gain',
  );
  return lowering.sort((one, other) => one.gain - other.gain)[0]?.place;
}
