/** As much of a page in HTML as is needed here: a tree of elements, of components by name, and of text between them. */
interface Node {
  readonly type: string;
  readonly name?: string;
  readonly tagName?: string;
  readonly properties?: Readonly<Record<string, unknown>>;
  children?: Node[];
}

/** Components that come to life on the page. */
const ALIVE = ['Task', 'Quiz', 'WalkThrough', 'MeasuredWalkThrough'];

/**
 * Puts all that stands between two desks of a lesson into one box, a passage. When a fader moves, the page is laid
 * out down to its desk. What stands beside that is passed over box by box, and prose beside a picture is laid out
 * anew; one box is passed over at once.
 *
 * @returns a plugin for the tree of HTML that a lesson is rendered from.
 */
export function passages() {
  return (tree: Node): void => {
    const parts: Node[] = [];
    for (const node of tree.children ?? []) {
      const last = parts.at(-1);
      if (node.name && ALIVE.includes(node.name)) parts.push(node);
      else if (last?.tagName === 'div') last.children?.push(node);
      else if (node.type !== 'text') parts.push(passageOf(node));
    }
    tree.children = parts;
  };
}

const passageOf = (first: Node): Node => ({
  type: 'element',
  tagName: 'div',
  properties: { className: ['passage'] },
  children: [first],
});
