import { describe, expect, test } from 'vitest';
import { controls, ownerLabel, type Rig } from '../../simulator/index.ts';
import { readCourse } from '../../src/course/index.ts';
import { layOut } from '../../src/drawing/lay-out.ts';
import { ROOM_FOR, shortened } from '../../src/drawing/names.ts';

/** Width of a letter of the text face on average, in parts of its size. */
const EM_PER_LETTER = 0.56;
/** Sizes of the words in a drawing, as `desk.css` sets them. */
const SIZE = { mark: 16, name: 13, from: 11.5, side: 12, goal: 12 };
/** Names may touch by this much: the estimate is no better. */
const HAIR = 2;
/** Names at the left end right there, and those at the right begin this far from their column or rail. */
const SIDE_END = 58;
const FOOT_START = 16;

const netLoft = readCourse().rigs.get('net-loft') as Rig;
const drawing = layOut(netLoft);
const widthOf = (text: string, size: number) => text.length * EM_PER_LETTER * size;

const everyOwner = [...new Set([...controls(netLoft).values()].map(({ owner }) => owner))];
const owners = everyOwner.map((owner) => ownerLabel(netLoft, owner));
const outs = Array.from({ length: netLoft.converter.outputs }, (_, index) => `out ${index + 1}`);

describe('layOut() leaves room for the names of the net-loft rig', () => {
  const columns = drawing.columns.map(({ x, mark, label }) => ({
    x,
    mark,
    label: shortened(label, ROOM_FOR.column),
  }));

  test.each(['mark', 'label'] as const)('the %s of a column beside that of the next', (key) => {
    const size = key === 'mark' ? SIZE.mark : SIZE.name;
    const overlaps = columns.slice(1).flatMap((column, index) => {
      const before = columns[index] ?? column;
      const reach = (widthOf(before[key], size) + widthOf(column[key], size)) / 2;
      return reach > column.x - before.x + HAIR ? [`${before[key]} and ${column[key]}`] : [];
    });
    expect(columns.length).toBeGreaterThan(2);
    expect(overlaps).toEqual([]);
  });

  test('the column that is selected is framed around its name', () => {
    const wide = columns.filter(({ label }) => widthOf(label, SIZE.name) > 88);
    expect(wide).toEqual([]);
  });

  test('names of all that can feed strips, side by side', () => {
    const feeds = [...owners, ...outs, 'no cord'].map((name) => shortened(name, ROOM_FOR.feed));
    const [first, second] = columns;
    const room = (second?.x ?? 0) - (first?.x ?? 0) + HAIR;
    expect(feeds.filter((feed) => widthOf(feed, SIZE.from) > room)).toEqual([]);
  });

  test('names of rows and rails, left of the first wire', () => {
    const names = [
      ...drawing.rows.map(({ text }) => text),
      ...drawing.rails.map((one) => one.label),
    ];
    expect(names.filter((name) => widthOf(name, SIZE.side) > SIDE_END + HAIR)).toEqual([]);
  });

  test('names of all that can be fed, at the ends of rails and below the main bus', () => {
    const names = [...owners, 'not plugged'].map((name) => shortened(name, ROOM_FOR.goal));
    const widest = Math.max(...names.map((name) => widthOf(name, SIZE.goal)));
    const starts = [
      ...drawing.rails.flatMap(({ end }) => (end ? [end.x] : [])),
      ...drawing.columns.flatMap(({ foot }) => (foot ? [foot.x + FOOT_START] : [])),
    ];
    expect(starts.length).toBeGreaterThan(1);
    expect(Math.max(...starts) + widest).toBeLessThanOrEqual(drawing.width + HAIR);
  });
});

test('shortened() keeps a name that fits, and cuts one that does not: 8 of 11 letters', () => {
  expect(shortened('Hammered', 8)).toBe('Hammered');
  expect(shortened('Frame drums', 8)).toBe('Frame d…');
  expect(shortened('Frame drums', 7)).toBe('Frame…');
});

test('names of the net-loft strips are written out', () => {
  const { strips } = netLoft.desk;
  expect(strips.filter(({ label }) => shortened(label, ROOM_FOR.column) !== label)).toEqual([]);
});
