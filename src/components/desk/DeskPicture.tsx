import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Owner } from '../../../simulator/index.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { sourceName } from '../../text/index.ts';
import { DeskDrawing } from './DeskDrawing.tsx';
import type { Hands, Scene } from './scene.ts';
import { useInView } from './use-in-view.ts';

interface Props {
  drawing: Drawing;
  scene: Scene;
  hands: Hands;
  /** What is brought into sight when it is opened; the columns of the desk when left out. */
  columns?: readonly { readonly owner: Owner; readonly x: number }[] | undefined;
  children?: ComponentChildren;
}

/** The drawing of a desk in a box of its own, which scrolls sideways where the drawing is wider. */
export function DeskPicture({ drawing, scene, hands, columns, children }: Props) {
  const box = useRef<HTMLElement>(null);
  useInView(box, columns ?? drawing.columns, scene.selected);
  return (
    <section ref={box} class="desk-scroll" tabIndex={0} aria-label="Drawing of the desk">
      <DeskDrawing
        drawing={drawing}
        scene={scene}
        hands={hands}
        name={`The desk, with the way of ${sourceName(scene.setup.rig, scene.follow)} lit. The same stands as text under “Ways as text”.`}
      >
        {children}
      </DeskDrawing>
    </section>
  );
}
