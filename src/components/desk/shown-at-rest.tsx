import type { ComponentType, FunctionComponent } from 'preact';
import { madeWhenChanged } from './drawn-when-changed.ts';
import type { Scene } from './scene.ts';
import { useSettled } from './use-settled.ts';

/**
 * A view of what is read or is slow to draw. Nobody reads while a hand turns something: it stays as it was
 * until the hand rests, and does not hold up what follows the hand.
 */
export function shownAtRest<Props extends { readonly scene: Scene }>(
  View: FunctionComponent<Props>,
): ComponentType<Props> {
  const Resting = madeWhenChanged(View);
  return function ShownAtRest(props: Props) {
    return <Resting {...props} scene={useSettled(props.scene)} />;
  };
}
