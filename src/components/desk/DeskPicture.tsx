import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { type Owner, outputPlace } from '../../../simulator/index.ts';
import type { Drawing, Point } from '../../drawing/drawing.ts';
import { sourceName } from '../../text/index.ts';
import { DeskDrawing } from './DeskDrawing.tsx';
import { Pane } from './Pane.tsx';
import type { Hands, Scene } from './scene.ts';
import { useInView } from './use-in-view.ts';

interface Props {
  drawing: Drawing;
  scene: Scene;
  hands: Hands | undefined;
  /** Where something is marked that stands elsewhere in another setup. */
  marks?: readonly Point[] | undefined;
  /** What is brought into sight when it is opened; the columns of the desk when left out. */
  columns?: readonly { readonly owner: Owner; readonly x: number }[] | undefined;
  /** Panes with what is drawn around the desk. */
  children?: ComponentChildren;
}

/** The drawing of a desk in a box of its own, which scrolls sideways where the drawing is wider. */
export function DeskPicture({ drawing, scene, hands, marks, columns, children }: Props) {
  const box = useRef<HTMLElement>(null);
  useInView(box, columns ?? drawing.columns, scene.selected);
  return (
    <section ref={box} class="desk-scroll" tabIndex={0} aria-label="Drawing of the desk">
      <DeskDrawing
        drawing={drawing}
        scene={scene}
        hands={hands}
        name={`The desk, with ${litName(scene)} lit. The ways stand as text under “Ways as text”.`}
      >
        {children}
        {marks && (
          <Pane drawing={drawing}>
            {marks.map(({ x, y }) => (
              <circle key={`${x} ${y}`} class="difference-mark" cx={x} cy={y} r={17} />
            ))}
          </Pane>
        )}
      </DeskDrawing>
    </section>
  );
}

/** What is lit, for the name of the picture. */
function litName({ setup: { rig }, follow, followed }: Scene): string {
  if (followed.kind === 'way') return `one way of ${sourceName(rig, follow)}`;
  if (followed.kind === 'source') return `the way of ${sourceName(rig, follow)}`;
  const output = rig.outputs.find(({ id }) => outputPlace(id) === followed.output);
  return `all that feeds ${output?.label}`;
}
