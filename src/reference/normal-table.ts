import { boardOf, type FileBoard, feedOf, parseRig } from '../../simulator/index.ts';
import { capitalised } from '../text/index.ts';
import type { ReferenceTable } from './reference-table.ts';

/** A bay with a point of each kind, an output to plug in instead, and an input to plug into. */
const RIG = parseRig(
  'the bay of the reference',
  `
id: points
label: Three points
box: { tracks: [{ id: cello, label: Cello, levelDbfs: -20 }] }
converter: { outputs: 4, fullScaleDbu: 22 }
bay:
  rows:
    - { id: full, label: Full, kind: full, points: [{ top: converter.out1, bottom: desk.full.in }] }
    - { id: half, label: Half, kind: half, points: [{ top: converter.out2, bottom: desk.half.in }] }
    - { id: open, label: Open, kind: open, points: [{ top: converter.out3, bottom: desk.open.in }] }
desk:
  stripTypes: [{ id: mono, stages: [trim, fader, mute, pan], taps: { pre: trim, post: mute } }]
  strips:
    - { id: full, mark: "1", label: Full, type: mono }
    - { id: half, mark: "2", label: Half, type: mono }
    - { id: open, mark: "3", label: Open, type: mono }
    - { id: other, mark: "4", label: Other, type: mono }
outputs: [{ id: capture, label: Capture, stereo: true }]
`,
);

const POINTS = [
  { id: 'full', name: 'Full-normal', top: 'converter.out1' },
  { id: 'half', name: 'Half-normal', top: 'converter.out2' },
  { id: 'open', name: 'Open', top: 'converter.out3' },
] as const;
type Point = (typeof POINTS)[number];

const PLUGS: readonly (readonly [name: string, cords: (point: Point) => FileBoard])[] = [
  ['nothing plugged', () => ({})],
  ['a cord in the top jack', ({ top }) => ({ 'desk.other.in': top })],
  ['a cord in the bottom jack', ({ id }) => ({ [`desk.${id}.in`]: 'converter.out4' })],
  // In an open row there is no normal that an open plug could break.
  [
    'an open plug in the bottom jack',
    ({ id }) => (id === 'open' ? {} : { [`desk.${id}.in`]: 'open' }),
  ],
];

/** What the bottom jack of a point gets with some cords. */
function comesIn(point: Point, cords: FileBoard): string {
  const setup = { rig: RIG, board: boardOf('the bay of the reference', RIG, cords) };
  const feed = feedOf(setup, `desk.${point.id}.in`);
  if (!feed) return 'nothing';
  return feed.output === point.top ? 'the top' : 'the cord';
}

export const normals: ReferenceTable = {
  id: 'normals',
  title: 'Normals of a bay',
  about:
    'What comes in at the bottom jack of a point. The half-normal is the one that lets you listen at the top without breaking anything.',
  columns: ['With', ...POINTS.map(({ name }) => name)],
  rows: PLUGS.map(([name, cords]) => [
    capitalised(name),
    ...POINTS.map((point) => comesIn(point, cords(point))),
  ]),
  sources: ['trade-practice'],
};
