import type { Component, FunctionComponent } from 'preact';
import type { Scene } from './scene.ts';
import { looksAlike, standsAlike } from './still.ts';

interface Shown {
  readonly scene: Scene;
}

/**
 * A view of a part of the drawing that is drawn anew only where it looks different. Its properties are one
 * thing that is drawn, the scene, and others that are compared as they are.
 *
 * @param drawnOf the thing that is drawn: a column, a rail, a cord.
 */
export const drawnWhenChanged = <Props extends Shown>(
  View: FunctionComponent<Props>,
  drawnOf: (props: Props) => object,
): FunctionComponent<Props> =>
  shownWhen(View, (before, next) => !looksAlike(drawnOf(next), before.scene, next.scene));

/** A part of the sheet or the drawing that is made anew only where one of its controls, or a cord, stands elsewhere than before. */
export const setWhenChanged = <Props extends Shown>(
  View: FunctionComponent<Props>,
  addressesOf: (props: Props) => readonly string[],
): FunctionComponent<Props> =>
  shownWhen(View, (before, next) => !standsAlike(addressesOf(next), before.scene, next.scene));

/** A view that is made anew only where one of its properties is another one. */
export const madeWhenChanged = <Props extends object>(
  View: FunctionComponent<Props>,
): FunctionComponent<Props> => shownWhen(View);

/** A view that is made anew where the scene asks for it, or any other property is another one. */
function shownWhen<Props extends object>(
  View: FunctionComponent<Props>,
  isOther?: (before: Props, next: Props) => boolean,
): FunctionComponent<Props> {
  return function ShownWhen(this: Component<Props>, props) {
    // Once: hooks of the view put their own around it.
    this.shouldComponentUpdate ??= (next) => {
      for (const name in next) {
        if ((!isOther || name !== 'scene') && this.props[name] !== next[name]) return true;
      }
      return isOther?.(this.props as Props, next) === true;
    };
    return View(props);
  };
}
