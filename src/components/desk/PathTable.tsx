import { levelOf, outputPlace, paths } from '../../../simulator/index.ts';
import { pathLine, pathRows, pathsSentence } from '../../text/index.ts';
import type { Scene } from './scene.ts';

/** Every way of the followed source to every output, as text: the same that the drawing shows in light. */
export function PathTable({ scene }: { scene: Scene }) {
  const { setup, solution, follow } = scene;
  const { rig } = setup;
  return (
    <div class="paths">
      {rig.outputs.map(({ id }) => {
        const place = outputPlace(id);
        const ways = paths(solution, follow, place);
        const level = levelOf(solution, follow, place);
        return (
          <section key={id}>
            <p>{pathsSentence(setup.rig, { source: follow, output: place, ways, level })}</p>
            {ways.map((path, index) => (
              <details key={`${path.signal}-${index}-${ways.length}`}>
                <summary>{pathLine(rig, path)}</summary>
                <table>
                  <thead>
                    <tr>
                      <th scope="col">Place</th>
                      <th scope="col">What it did</th>
                      <th scope="col">Level after it</th>
                    </tr>
                  </thead>
                  <tbody>
                    {pathRows(setup, path).map((row) => (
                      <tr key={row.place}>
                        <th scope="row">{row.name}</th>
                        <td>{row.did}</td>
                        <td>{row.level}</td>
                      </tr>
                    ))}
                  </tbody>
                </table>
              </details>
            ))}
          </section>
        );
      })}
    </div>
  );
}
