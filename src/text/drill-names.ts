import type { DrillConcept } from '../../simulator/index.ts';

/** What each concept of drills is called. */
export const DRILL_NAMES: Readonly<Record<DrillConcept, string>> = {
  'insert-or-send': 'Insert or send',
  'pre-or-post': 'Before or after the fader',
  'one-output-each': 'One output each',
  'shared-outputs': 'Shared outputs and stray feeds',
  'order-across': 'Order across box and desk',
  'returns-and-loops': 'Returns and loops',
  subgroups: 'Subgroups, in series and in parallel',
  'pan-and-pairs': 'Pan and pairs',
  'gain-staging': 'Gain staging',
  'bay-normals': 'Normals of the bay',
  'polarity-and-latency': 'Polarity and latency',
  'solo-and-mute': 'Solo and mute',
};
