import { useEffect, useMemo, useState } from 'preact/hooks';
import { movesBetween, type Setup, simulate } from '../../../simulator/index.ts';
import { controlSpots } from '../../drawing/control-spots.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { differenceLines, levelDifferences, sourceName } from '../../text/index.ts';
import type { Hands, Scene } from './scene.ts';

/** A setup to hold the present one against. */
export interface Against {
  /** `before the last move` */
  readonly name: string;
  readonly setup: Setup;
}

interface Props {
  scene: Scene;
  hands: Hands;
  drawing: Drawing;
  /** What it can be held against; some of it may be there only later. */
  against: readonly Against[];
}

/**
 * What differs between the desk as it stands and another setup of it: the controls in words, the levels in
 * figures, and both marked in the drawing, which can be turned over to the other setup and back.
 */
export function DifferencePanel({ scene, hands, drawing, against }: Props) {
  const { setup, solution, follow, scale } = scene;
  const [name, setName] = useState<string>();
  const [isOver, setOver] = useState(false);
  const other = against.find((one) => one.name === name) ?? against[0];
  const there = other?.setup;
  const before = useMemo(() => there && { setup: there, solution: simulate(there) }, [there]);
  const now = { setup, solution };
  const marks = useMemo(() => {
    if (!there) return [];
    const spots = controlSpots(drawing);
    return movesBetween(setup.rig, there.board, setup.board).flatMap(
      ({ control }) => spots.get(control.address) ?? [],
    );
  }, [drawing, setup, there]);
  useEffect(() => {
    hands.compare({ marks, instead: isOver ? there : undefined });
  }, [hands, marks, isOver, there]);
  useEffect(() => () => hands.compare(undefined), [hands]);

  if (!other || !before) return <p>Nothing was moved yet.</p>;
  const lines = differenceLines(before, now);
  return (
    <div class="differences">
      <div class="difference-bar">
        <label for={`${scene.id}-against`}>Against</label>
        <select
          id={`${scene.id}-against`}
          value={other.name}
          onChange={({ currentTarget }) => setName(currentTarget.value)}
        >
          {against.map((one) => (
            <option key={one.name}>{one.name}</option>
          ))}
        </select>
        <button type="button" aria-pressed={isOver} onClick={() => setOver(!isOver)}>
          Draw that instead
        </button>
      </div>
      {lines.length === 0 ? (
        <p>Every control stands alike.</p>
      ) : (
        <>
          <p>
            <span class="difference-key" aria-hidden="true" /> marks in the drawing what stands
            elsewhere:
          </p>
          <ul>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
      <table>
        <caption>{sourceName(setup.rig, follow)} at the outputs: there → here</caption>
        <tbody>
          {levelDifferences(before, now, follow, scale).map(({ output, levels, change }) => (
            <tr key={output}>
              <th scope="row">{output}</th>
              <td>{levels}</td>
              <td>{change || 'the same'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
