import { Component, type ComponentType, type FunctionComponent, h } from 'preact';
import type { Scene } from './scene.ts';
import { looksAlike } from './still.ts';

interface Drawn {
  readonly scene: Scene;
}

/**
 * A view of a part of the drawing that is drawn anew only where it looks different. Its properties are one
 * thing that is drawn, the scene, and others that are compared as they are.
 *
 * @param drawnOf the thing that is drawn: a column, a rail, a cord.
 */
export function drawnWhenChanged<Props extends Drawn>(
  View: FunctionComponent<Props>,
  drawnOf: (props: Props) => object,
): ComponentType<Props> {
  return class DrawnWhenChanged extends Component<Props> {
    override shouldComponentUpdate(next: Readonly<Props>): boolean {
      const { scene: before, ...others } = this.props;
      const { scene: after, ...nextOthers } = next;
      const isOther = Object.entries(nextOthers).some(
        ([name, value]) => Reflect.get(others, name) !== value,
      );
      return isOther || !looksAlike(drawnOf(next), before, after);
    }

    override render() {
      return h(View, this.props as Props & { children?: undefined });
    }
  };
}
