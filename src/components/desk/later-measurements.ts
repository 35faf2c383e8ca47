import { laterView } from './later-view.tsx';

/** Meters, measurements and plots, for below a desk. */
export const Measurements = laterView(
  'The measurements',
  async () => (await import('./Measurements.tsx')).Measurements,
);
