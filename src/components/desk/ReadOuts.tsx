import {
  type Level,
  levelAt,
  levelOf,
  type Output,
  outputPlace,
  part,
} from '../../../simulator/index.ts';
import { levelText, sourceName } from '../../text/index.ts';
import type { Scene } from './scene.ts';

/** The level at every output, of all sources together and of the one that is followed. */
export function ReadOuts({ scene }: { scene: Scene }) {
  const { setup, follow } = scene;
  return (
    <table class="read-outs">
      <caption>Levels at the outputs</caption>
      <thead>
        <tr>
          <th scope="col">Output</th>
          <th scope="col">All together</th>
          <th scope="col">
            <span class="followed-key" aria-hidden="true" /> {sourceName(setup.rig, follow)}
          </th>
        </tr>
      </thead>
      <tbody>
        {setup.rig.outputs.map((output) => (
          <OutputRow key={output.id} output={output} scene={scene} />
        ))}
      </tbody>
    </table>
  );
}

function OutputRow({ output, scene }: { output: Output; scene: Scene }) {
  const { solution, follow, scale } = scene;
  const place = outputPlace(output.id);
  const read = (at: (place: string) => Level) =>
    output.stereo
      ? [
          ['L', at(part(place, 'l'))],
          ['R', at(part(place, 'r'))],
        ]
      : [['', at(place)]];
  const cell = (legs: (string | Level)[][]) =>
    legs.map(([leg, level]) => (
      <span key={leg} class={level === undefined ? 'leg' : 'leg leg-level'}>
        {leg !== '' && <abbr title={leg === 'L' ? 'left' : 'right'}>{leg}</abbr>}{' '}
        {levelText(level as Level, 1, scale)}
      </span>
    ));
  return (
    <tr>
      <th scope="row">{output.label}</th>
      <td>{cell(read((at) => levelAt(solution, at)))}</td>
      <td>{cell(read((at) => levelOf(solution, follow, at)))}</td>
    </tr>
  );
}
