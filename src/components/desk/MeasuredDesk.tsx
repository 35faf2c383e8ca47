import type { WalkThrough } from '../../../simulator/index.ts';
import { Measurements } from './later-measurements.ts';
import { WalkThroughDesk } from './WalkThroughDesk.tsx';

/** A walk-through whose desk shows measurements as well. */
export const MeasuredDesk = ({ walkThrough }: { walkThrough: WalkThrough }) => (
  <WalkThroughDesk walkThrough={walkThrough} below={(scene) => <Measurements scene={scene} />} />
);
