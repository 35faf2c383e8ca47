import { useMemo } from 'preact/hooks';
import { feedOf } from '../../../simulator/index.ts';
import { type FieldCell, type FieldRow, layBay } from '../../drawing/bay-field.ts';
import { normalText, normalWords } from '../../text/index.ts';
import { InputJack, OutputJack } from './JackButton.tsx';
import type { Scene } from './scene.ts';
import type { Patching } from './use-patching.ts';

interface Props {
  scene: Scene;
  patching: Patching;
}

/**
 * The jacks of a room with a patchbay, row by row as they stand on it: what comes out above what goes in. Its cords
 * lie over it; a normal that carries is dashed, one that is broken is crossed.
 */
export function BayRows({ scene, patching }: Props) {
  const { rig } = scene.setup;
  const { rows, sockets, width, height } = useMemo(() => layBay(rig), [rig]);
  const { held, pointer, joined, area } = patching;
  const from = held === undefined ? undefined : sockets.get(held);
  return (
    <section class="desk-scroll" tabIndex={0} aria-label="The patchbay">
      <div class="bay" {...area}>
        {rows.map((row) => (
          <div key={row.label}>
            <h4>{rowName(row)}</h4>
            <ul aria-label={row.label}>
              {row.cells.map((cell) => (
                <li key={cell.top ?? cell.bottom}>
                  <Cell cell={cell} kind={row.kind} scene={scene} patching={patching} />
                </li>
              ))}
            </ul>
          </div>
        ))}
        <svg
          class="bay-cords"
          viewBox={`0 0 ${width} ${height}`}
          width={width}
          height={height}
          aria-hidden="true"
        >
          {joined.map(({ input, output, by }) => {
            const [start, end] = [sockets.get(output), sockets.get(input)];
            if (!start || !end) return null;
            const d = `M${start.x} ${start.y}L${end.x} ${end.y}`;
            return <path key={input} class={`cord cord-${by}`} d={d} />;
          })}
          {from && pointer && (
            <path class="cord cord-held" d={`M${from.x} ${from.y}L${pointer.x} ${pointer.y}`} />
          )}
        </svg>
      </div>
    </section>
  );
}

const rowName = ({ label, kind }: FieldRow): string =>
  kind === undefined ? label : `${label}: ${normalWords(kind)}`;

interface CellProps extends Props {
  cell: FieldCell;
  kind: FieldRow['kind'];
}

function Cell({ cell: { number, top, bottom }, kind, scene, patching }: CellProps) {
  const hasNormal = (kind === 'full' || kind === 'half') && top !== undefined;
  const isBroken =
    hasNormal && bottom !== undefined && feedOf(scene.setup, bottom)?.by !== 'normal';
  const also = (jack: string) => normalText(scene.setup, jack);
  return (
    <>
      <div class="bay-half">
        {top !== undefined && (
          <OutputJack jack={top} scene={scene} patching={patching} also={also(top)} />
        )}
      </div>
      <p class="bay-number" aria-hidden="true">
        {number}
        {isBroken && <span class="bay-broken">broken</span>}
      </p>
      <div class="bay-half">
        {bottom !== undefined && (
          <InputJack jack={bottom} scene={scene} patching={patching} also={also(bottom)} />
        )}
      </div>
    </>
  );
}
