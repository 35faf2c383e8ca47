import {
  controls,
  InputError,
  jacks,
  levelOf,
  outputPlace,
  parseSetup,
  simulate,
} from '../../simulator/index.ts';
import { levelFigure } from '../text/index.ts';
import text from './example-setup.yaml?raw';

const FILE = 'example-setup.yaml';

/** What the example on the page says, and what the simulator makes of it. Reading it checks it. */
export function setupExample() {
  const setup = parseSetup(FILE, text);
  const { rig } = setup;
  const solution = simulate(setup);
  return {
    file: FILE,
    text,
    controls: [...controls(rig).values()],
    outputJacks: jacks(rig).outputs,
    outputs: rig.outputs.map(({ label }) => label),
    /** Levels in dBu at the outputs, by source. */
    levels: rig.box.tracks.map(({ id, label }) => ({
      source: label,
      at: rig.outputs.map((output) => levelFigure(levelOf(solution, id, outputPlace(output.id)))),
    })),
    refusal: refusalOf(text.replace('desk.ch2.fader: -.inf', 'desk.ch2.fadr: -.inf')),
  };
}

/** What is said about a text that cannot be used. @throws Error when it can. */
function refusalOf(spoilt: string): string {
  try {
    parseSetup(FILE, spoilt);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error('Expected the spoilt example to be refused.');
}
