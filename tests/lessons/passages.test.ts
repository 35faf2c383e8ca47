import { describe, expect, test } from 'vitest';
import { passages } from '../../src/components/lesson/passages.ts';

const element = (tagName: string) => ({ type: 'element', tagName, children: [] });
const desk = { type: 'mdxJsxFlowElement', name: 'Task' };
const picture = { type: 'mdxJsxFlowElement', name: 'Picture' };
const line = { type: 'text', value: '\n' };
const passage = (...children: object[]) => ({
  type: 'element',
  tagName: 'div',
  properties: { className: ['passage'] },
  children,
});

/** What a page is made of after the plugin was at it. */
function parted(children: { readonly type: string }[]) {
  const tree = { type: 'root', children };
  passages()(tree);
  return tree.children;
}

describe('passages of a lesson', () => {
  test('what stands between two desks is one box; desks stand alone', () => {
    expect(
      parted([element('h2'), line, picture, line, element('p'), desk, line, element('p'), desk]),
    ).toEqual([
      passage(element('h2'), line, picture, line, element('p')),
      desk,
      passage(element('p')),
      desk,
    ]);
  });

  test('a page with nothing, or with desks alone, stays as it is', () => {
    expect(parted([])).toEqual([]);
    expect(parted([desk, line, desk])).toEqual([desk, desk]);
  });
});
