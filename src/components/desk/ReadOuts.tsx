import {
  type Level,
  levelAt,
  levelOf,
  type Output,
  outputPlace,
  part,
} from '../../../simulator/index.ts';
import { type LevelScale, levelText, sourceName } from '../../text/index.ts';
import { madeWhenChanged } from './drawn-when-changed.ts';
import type { Scene } from './scene.ts';

/** The level at every output, and at both legs of one that is stereo, of all sources together and of the one followed. */
export function ReadOuts({ scene }: { scene: Scene }) {
  const { setup, follow } = scene;
  return (
    <table class="read-outs">
      <caption>Levels at the outputs</caption>
      <Head followed={sourceName(setup.rig, follow)} />
      <tbody>
        {setup.rig.outputs.map((output) => (
          <OutputRow key={output.id} output={output} scene={scene} />
        ))}
      </tbody>
    </table>
  );
}

const Head = madeWhenChanged(({ followed }: { followed: string }) => (
  <thead>
    <tr>
      <th scope="col">Output</th>
      <th scope="col">All together</th>
      <th scope="col">
        <span class="followed-key" aria-hidden="true" /> {followed}
      </th>
    </tr>
  </thead>
));

function OutputRow({ output, scene }: { output: Output; scene: Scene }) {
  const { solution, follow, scale } = scene;
  const place = outputPlace(output.id);
  const legs: [leg: string, place: string][] = [['', place]];
  if (output.stereo) legs.push(['L', part(place, 'l')], ['R', part(place, 'r')]);
  const cell = (at: (place: string) => Level) =>
    legs.map(([leg, where]) => <Leg key={leg} leg={leg} level={at(where)} scale={scale} />);
  return (
    <tr>
      <th scope="row">{output.label}</th>
      <td>{cell((where) => levelAt(solution, where))}</td>
      <td>{cell((where) => levelOf(solution, follow, where))}</td>
    </tr>
  );
}

interface LegProps {
  leg: string;
  level: Level;
  scale: LevelScale;
}

/** The level at one leg of an output. */
const Leg = madeWhenChanged(({ leg, level, scale }: LegProps) => (
  <span class={level === undefined ? 'leg' : 'leg leg-level'}>
    {leg !== '' && <abbr title={leg === 'L' ? 'left' : 'right'}>{leg}</abbr>}{' '}
    {levelText(level, 1, scale)}
  </span>
));
