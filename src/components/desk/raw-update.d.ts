import type {} from 'preact';

declare module 'preact' {
  namespace JSX {
    interface SVGAttributes<Target extends EventTarget = SVGElement> {
      /** Tells of a move of the pointer at once. Browsers that do not know it tell of moves with the frame alone. */
      onPointerRawUpdate?: ((event: PointerEvent) => void) | undefined;
    }
  }
}
