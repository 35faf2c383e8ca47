import { levelOf, outputPlace, type Path, paths, type Setup } from '../../../simulator/index.ts';
import { type LevelScale, pathRows, pathStory, pathsSentence } from '../../text/index.ts';
import type { Scene } from './scene.ts';

/**
 * Every way of the followed source to every output, as text: the same that the drawing shows in light. Each way is
 * told in a sentence, with its stages folded under it.
 */
export function PathTable({ scene }: { scene: Scene }) {
  const { setup, solution, follow, scale } = scene;
  const { rig } = setup;
  return (
    <div class="paths">
      {rig.outputs.map(({ id }) => {
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
