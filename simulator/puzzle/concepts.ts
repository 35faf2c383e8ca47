import { bayNormals } from './concepts/bay-normals.ts';
import { gainStaging } from './concepts/gain-staging.ts';
import { insertOrSend } from './concepts/insert-or-send.ts';
import { oneOutputEach } from './concepts/one-output-each.ts';
import { orderAcross } from './concepts/order-across.ts';
import { panAndPairs } from './concepts/pan-and-pairs.ts';
import { polarityAndLatency } from './concepts/polarity-and-latency.ts';
import { preOrPost } from './concepts/pre-or-post.ts';
import { returnsAndLoops } from './concepts/returns-and-loops.ts';
import { sharedOutputs } from './concepts/shared-outputs.ts';
import { soloAndMute } from './concepts/solo-and-mute.ts';
import { subgroups } from './concepts/subgroups.ts';
import type { Draft } from './draft.ts';
import type { DrillConcept, DrillLevel } from './drill-name.ts';
import type { RandomStream } from './random-stream.ts';

/** Draws a room, what is asked for in it, and what stands wrong. It may be too easy or too hard: that is proven later. */
export const DRAW: Readonly<
  Record<DrillConcept, (stream: RandomStream, level: DrillLevel) => Draft>
> = {
  'insert-or-send': insertOrSend,
  'pre-or-post': preOrPost,
  'one-output-each': oneOutputEach,
  'shared-outputs': sharedOutputs,
  'order-across': orderAcross,
  'returns-and-loops': returnsAndLoops,
  subgroups,
  'pan-and-pairs': panAndPairs,
  'gain-staging': gainStaging,
  'bay-normals': bayNormals,
  'polarity-and-latency': polarityAndLatency,
  'solo-and-mute': soloAndMute,
};
