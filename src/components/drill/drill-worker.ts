/** Generates and proves a drill away from the page, and puts it into words. */
import { drillOf, type Scenario } from '../../../simulator/index.ts';
import type { DrillAsk } from '../../share/drill-link.ts';
import { drillScenario } from '../../text/index.ts';

/** A drill as it comes back: a task that can be shown at once, and its par. */
export interface MadeDrill {
  readonly scenario: Scenario;
  readonly par: number;
}

/** What a worker answers: the drill that was asked for, or that there is none. */
export interface DrillAnswer {
  readonly ask: DrillAsk;
  readonly made?: MadeDrill;
}

addEventListener('message', ({ data }: MessageEvent<DrillAsk>) => {
  postMessage(answerTo(data));
});

function answerTo(ask: DrillAsk): DrillAnswer {
  try {
    const drill = drillOf(ask.concept, ask.level, ask.seed);
    return { ask, made: { scenario: drillScenario(drill), par: drill.par } };
  } catch (error) {
    // No draft of this seed could be proven.
    if (error instanceof RangeError) return { ask };
    throw error;
  }
}
