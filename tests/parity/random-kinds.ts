import type { DeviceKind } from './setup-file.ts';

/** What a random setup may hold. */
export interface Kinds {
  readonly strips: readonly [fewest: number, most: number];
  /** What devices of the rack and plug-ins may be. */
  readonly devices: readonly DeviceKind[];
  /** Whether buses may lead back into what feeds them. */
  readonly loops: boolean;
  /** Times that a delay may stand at, in ms. */
  readonly delays?: readonly string[];
  /** Whether a delay may feed itself. */
  readonly feedback?: boolean;
  /** Whether plug-ins and converter take time. */
  readonly latency?: boolean;
}

/** Kin with ids and labels: `ch1`, `ch2` and so on. */
export const kin = (count: number, id: string) =>
  Array.from({ length: count }, (_, index) => ({
    id: `${id}${index + 1}`,
    label: `${id} ${index + 1}`,
  }));
