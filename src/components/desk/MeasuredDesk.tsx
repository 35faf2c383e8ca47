import type { WalkThrough } from '../../../simulator/index.ts';
import { laterView } from './later-view.tsx';
import { WalkThroughDesk } from './WalkThroughDesk.tsx';

const Measurements = laterView(
  'The measurements',
  async () => (await import('./Measurements.tsx')).Measurements,
);

/** A walk-through whose desk shows measurements as well. */
export const MeasuredDesk = ({ walkThrough }: { walkThrough: WalkThrough }) => (
  <WalkThroughDesk walkThrough={walkThrough} below={(scene) => <Measurements scene={scene} />} />
);
