import {
  type Address,
  levelOf,
  outputPlace,
  type Path,
  paths,
  placesOf,
  type Setup,
  type Solution,
} from '../../../simulator/index.ts';
import {
  type LevelScale,
  loopSentence,
  pathRows,
  pathStory,
  pathsSentence,
} from '../../text/index.ts';
import type { Hands, Scene } from './scene.ts';
import { shownAtRest } from './shown-at-rest.tsx';

/**
 * Every way of the followed source to every output, as text: the same that the drawing shows in light. Each way is
 * told in a sentence, with its stages folded under it.
 */
export const PathTable = shownAtRest(Ways);

function Ways({ scene, hands }: { scene: Scene; hands: Hands }) {
  const { setup, solution, follow, followed, scale } = scene;
  const lit = followed.kind === 'way' ? followed.places : undefined;
  const isLit = (way: Path) => lit !== undefined && placesOf(way).join() === [...lit].join();
  const { rig } = setup;
  return (
    <div class="paths">
      {solution.loops.map(({ ring, gain, stable }) => (
        <p key={ring.join(' ')}>
          <span class="loop-key" aria-hidden="true" />{' '}
          {loopSentence(rig, { places: placesAt(solution, ring), gain, stable })}
        </p>
      ))}
      {rig.outputs.map(({ id, label }) => {
        const place = outputPlace(id);
        const ways = paths(solution, follow, place);
        const level = levelOf(solution, follow, place);
        return (
          <section key={id}>
            <p>{pathsSentence(rig, { source: follow, output: place, ways, level }, scale)}</p>
            {ways.length > 0 && (
              <ol>
                {ways.map((path, index) => (
                  <li key={`${path.signal}-${index}-${ways.length}`}>
                    <Way setup={setup} path={path} scale={scale} />
                    <button
                      type="button"
                      class="light-way"
                      aria-pressed={isLit(path)}
                      aria-label={`Light alone: way ${index + 1} to ${label}`}
                      onClick={() => hands.light(isLit(path) ? undefined : new Set(placesOf(path)))}
                    >
                      Light alone
                    </button>
                  </li>
                ))}
              </ol>
            )}
          </section>
        );
      })}
    </div>
  );
}

const placesAt = ({ circuit }: Solution, stages: readonly number[]): Address[] =>
  stages.flatMap((stage) => circuit.stages[stage]?.place ?? []);

function Way({ setup, path, scale }: { setup: Setup; path: Path; scale: LevelScale }) {
  return (
    <details>
      <summary>{pathStory(setup, path, scale)}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Place</th>
            <th scope="col">Level before</th>
            <th scope="col">What it did</th>
            <th scope="col">Level after</th>
          </tr>
        </thead>
        <tbody>
          {pathRows(setup, path, { scale }).map(({ place, name, before, did, level }) => (
            <tr key={place}>
              <th scope="row">{name}</th>
              <td>{before}</td>
              <td>{did}</td>
              <td>{level}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
