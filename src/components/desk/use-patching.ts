import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import {
  type Address,
  type Feed,
  feedOf,
  jacks,
  NONE,
  OPEN,
  valueAt,
} from '../../../simulator/index.ts';
import type { Point } from '../../drawing/drawing.ts';
import { moveCord } from './move-cord.ts';
import type { Hands, Scene } from './scene.ts';

/** A cord or a normal, with the input jack that it leads to. */
export interface Joined extends Feed {
  readonly input: Address;
}

/** Cords in the hand of somebody who plugs them by two clicks or by a drag. */
export interface Patching {
  /** The output jack that the cord in the hand comes from. */
  readonly held: Address | undefined;
  /** Where its other end is while it is dragged, from the corner of the element of `area`. */
  readonly pointer: Point | undefined;
  /** All that is joined, by cord or by normal. */
  readonly joined: readonly Joined[];
  /** Takes the cord of an output jack in the hand, or drops it. */
  readonly take: (output: Address) => void;
  /** Plugs what is in the hand; with nothing there, pulls the plug of the input jack. */
  readonly plug: (input: Address) => void;
  /** Begins a drag at the socket of an output jack. */
  readonly drag: (output: Address, event: PointerEvent & { currentTarget: Element }) => void;
  /** For the element that all jacks are in, and that `pointer` is measured from. */
  readonly area: {
    readonly ref: { current: HTMLDivElement | null };
    readonly onPointerMove: (event: PointerEvent) => void;
    readonly onPointerUp: (event: PointerEvent) => void;
    readonly onPointerCancel: () => void;
  };
}

/**
 * Lets one plug cords by hand. A click on an input that holds a cord pulls its plug and keeps it in the hand. Escape
 * drops what one holds.
 */
export function usePatching(scene: Scene, hands: Hands): Patching {
  const { setup, locked } = scene;
  const [held, setHeld] = useState<Address>();
  const [pointer, setPointer] = useState<Point>();
  const box = useRef<HTMLDivElement>(null);
  const drop = () => {
    setHeld(undefined);
    setPointer(undefined);
  };
  useLayoutEffect(() => {
    if (held === undefined) return;
    const onKey = ({ key }: KeyboardEvent) => {
      if (key !== 'Escape') return;
      setHeld(undefined);
      setPointer(undefined);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [held]);

  const plug = (input: Address) => {
    const standing = String(valueAt(setup, input));
    if (held === undefined) {
      if (standing === NONE || locked.has(input)) return;
      hands.send({ type: 'cord.remove', input });
      if (standing !== OPEN) setHeld(standing);
      return;
    }
    moveCord(scene, hands, held, input);
    drop();
  };
  const joined = jacks(setup.rig).inputs.flatMap((input) => {
    const feed = feedOf(setup, input);
    return feed ? [{ input, ...feed }] : [];
  });
  return {
    held,
    pointer,
    joined,
    plug,
    take: (output) => setHeld(held === output ? undefined : output),
    drag: (output, event) => {
      event.preventDefault();
      setHeld(output);
      setPointer(within(box.current, event));
      // The pointer of a finger stays with what it touched unless it is let go.
      event.currentTarget.releasePointerCapture(event.pointerId);
    },
    area: {
      ref: box,
      onPointerMove: (event) => {
        if (pointer) setPointer(within(box.current, event));
      },
      onPointerUp: ({ clientX, clientY }) => {
        if (!pointer) return;
        setPointer(undefined);
        const input = document
          .elementFromPoint(clientX, clientY)
          ?.closest<HTMLElement>('[data-input]')?.dataset['input'];
        // A click ends where it began, and the cord stays in the hand.
        if (input !== undefined) plug(input);
      },
      onPointerCancel: drop,
    },
  };
}

/** A point of the window as one of an element. */
function within(element: Element | null, { clientX, clientY }: PointerEvent): Point {
  const { left, top } = element?.getBoundingClientRect() ?? new DOMRect();
  return { x: clientX - left, y: clientY - top };
}
