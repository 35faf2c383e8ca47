import { signalsNamed } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import type { Solution } from '../solve/solution.ts';
import { alwaysPasses } from '../trace/leads.ts';
import { isWithin, placesOf } from '../trace/path.ts';
import { paths } from '../trace/paths.ts';

/**
 * The order in which every open way of a source to an output meets these stops.
 *
 * @param stops places or owners, in any order.
 * @returns nothing where there is no one order: nothing arrives, some way misses a stop, ways differ, or a way
 *   meets one stop both before and after another, as it does a strip and what is in its insert.
 */
export function orderMet(
  solution: Solution,
  source: string,
  output: Address,
  stops: readonly Address[],
): Address[] | undefined {
  const { circuit } = solution;
  const [way] = paths(solution, source, output);
  if (!way) return undefined;
  const places = placesOf(way);
  const firstMet = (stop: Address) => places.findIndex((place) => isWithin(place, stop));
  const met = stops.toSorted((one, other) => firstMet(one) - firstMet(other));
  const signals = signalsNamed(circuit, source);
  const isMetBy = (order: readonly Address[]) =>
    signals.map(({ stage }) => alwaysPasses(circuit, stage, order, output));
  if (!isMetBy(met).every(Boolean)) return undefined;
  // One order it is only if no two neighbours can be met the other way round as well.
  const isLoose = met.slice(1).some((later, index) => {
    const earlier = met[index];
    return earlier !== undefined && isMetBy([later, earlier]).some(Boolean);
  });
  return isLoose ? undefined : met;
}
