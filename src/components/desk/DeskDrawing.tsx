import type { ComponentChildren } from 'preact';
import type { Drawing } from '../../drawing/drawing.ts';
import { ColumnView } from './ColumnView.tsx';
import { NamesView } from './NamesView.tsx';
import { Pane } from './Pane.tsx';
import { RailView } from './RailView.tsx';
import type { Hands, Scene } from './scene.ts';
import { useRouted } from './use-routed.ts';

interface Props {
  drawing: Drawing;
  scene: Scene;
  /** What the picture shows, in one line. */
  name: string;
  /** Left out for a picture that only shows. */
  hands?: Hands | undefined;
  /** Panes with what is drawn besides the desk, on its rails and under its columns. */
  children?: ComponentChildren;
}

/** The desk as its own schematic. A pointer can move things on it; all else is done in the sheet beside it. */
export function DeskDrawing({ drawing, scene, name, hands, children }: Props) {
  const { columns, rails, pairs, tapNames } = drawing;
  const routed = useRouted(scene.setup);
  return (
    <div class="desk-picture">
      <div class="desk-drawing" role="img" aria-label={name}>
        <Pane drawing={drawing}>
          {pairs.map((frame) => (
            <rect key={frame.x} class="pair" {...frame} rx={6} />
          ))}
          {rails.map((rail) => (
            <RailView key={`${rail.owner} ${rail.y}`} rail={rail} scene={scene} hands={hands} />
          ))}
          {tapNames && (
            <>
              <text class="tap-before" {...tapNames.before}>
                before
              </text>
              <text class="tap-after" {...tapNames.after}>
                after
              </text>
            </>
          )}
        </Pane>
        {children}
        {columns.map((column) => (
          <ColumnView
            key={column.owner}
            drawing={drawing}
            column={column}
            routed={routed}
            scene={scene}
            hands={hands}
          />
        ))}
      </div>
      {/* Last, so that a page which is painted while it comes in shows the drawing where it stays. */}
      <NamesView drawing={drawing} hands={hands} />
    </div>
  );
}
