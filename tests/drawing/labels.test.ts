import { describe, expect, test } from 'vitest';
import { controls, jacks, type Rig } from '../../simulator/index.ts';
import { readCourse } from '../../src/course/index.ts';
import { layOut } from '../../src/drawing/lay-out.ts';
import { ROOM_FOR, shortened, shortOwner } from '../../src/drawing/names.ts';
import { shortOption } from '../../src/text/index.ts';

/** Width of a letter of the text face on average, in parts of its size. */
const EM_PER_LETTER = 0.56;
/** Sizes of the words in a drawing, as `desk.css` sets them. */
const SIZE = { mark: 16, name: 13, from: 11.5, side: 12, goal: 12, choice: 11 };
/** Names may touch by this much: the estimate is no better. */
const HAIR = 2;
/** Names at the left end right there, and those at the right begin this far from their column or rail. */
const SIDE_END = 58;
const FOOT_START = -24;
/** Where the riser of the next subgroup passes a foot. */
const NEXT_RISER = 62;
/** How wide the box of a choice is. */
const CHOICE = 84;

const course = readCourse();
const rigs = course.bench.map(({ rig }) => course.rigs.get(rig) as Rig);
const widthOf = (text: string, size: number) => text.length * EM_PER_LETTER * size;

describe.each(rigs)('layOut() leaves room for the names of the rig $id', (rig) => {
  const drawing = layOut(rig);
  const { inputs, outputs } = jacks(rig);
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
    const feeds = [...outputs.map((jack) => shortOwner(rig, jack)), 'no cord'].map((name) =>
      shortened(name, ROOM_FOR.feed),
    );
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

  test('names of all that can be fed, at the ends of rails and below columns that end', () => {
    const names = [...inputs.map((jack) => shortOwner(rig, jack)), 'not plugged'];
    const widest = (room: number) =>
      Math.max(...names.map((name) => widthOf(shortened(name, room), SIZE.goal)));
    const control = drawing.columns.find(({ kind }) => kind === 'control-room');
    const end = control ? control.x - CHOICE / 2 : drawing.width;
    const rails = drawing.rails.flatMap((one) => (one.end ? [one.end.x] : []));
    expect(Math.max(...rails) + widest(ROOM_FOR.goal)).toBeLessThanOrEqual(end + HAIR);
    const feet = drawing.columns.flatMap(({ foot }) => (foot ? [foot.x + FOOT_START] : []));
    expect(feet.length).toBeGreaterThan(0);
    expect(Math.max(...feet) + widest(ROOM_FOR.foot)).toBeLessThanOrEqual(drawing.width + HAIR);
    expect(FOOT_START + widest(ROOM_FOR.foot)).toBeLessThanOrEqual(NEXT_RISER + HAIR);
  });

  test('what the control room hears and what a solo is, in their boxes', () => {
    const words = [...controls(rig).values()].flatMap((control) =>
      control.kind === 'choice' && /^desk\.control\./.test(control.address)
        ? control.options.map(({ value }) => shortOption(control, value))
        : [],
    );
    const shown = words.map((word) => shortened(word, ROOM_FOR.choice));
    expect(shown.filter((word) => widthOf(word, SIZE.choice) > CHOICE)).toEqual([]);
    expect(shown).toEqual(words);
  });

  test('names of strips are written out', () => {
    const { strips } = rig.desk;
    expect(strips.filter(({ label }) => shortened(label, ROOM_FOR.column) !== label)).toEqual([]);
  });
});

test('shortened() keeps a name that fits, and cuts one that does not: 8 of 11 letters', () => {
  expect(shortened('Hammered', 8)).toBe('Hammered');
  expect(shortened('Frame drums', 8)).toBe('Frame d…');
  expect(shortened('Frame drums', 7)).toBe('Frame…');
});
