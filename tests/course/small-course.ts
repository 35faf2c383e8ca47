import type { CourseFile } from '../../src/course/index.ts';

/** The path of a file of the small course. */
export type Path =
  | 'lessons/course.yaml'
  | 'lessons/rigs/two.yaml'
  | 'lessons/scenarios/send-it.yaml'
  | 'lessons/quizzes/levels.yaml'
  | 'lessons/walk-throughs/down.yaml';

/** A course of one rig with two strips, and one task of each kind. Nothing is wrong with it. */
const TEXTS: Readonly<Record<Path, string>> = {
  'lessons/course.yaml':
    'title: A small course\nparts: [{ title: One part, about: Two lessons., lessons: [first, second] }]\n',
  'lessons/rigs/two.yaml': `
id: two
label: Two strips
box:
  tracks:
    - { id: flute, label: Flute, levelDbfs: -20 }
    - { id: harp, label: Harp, levelDbfs: -26 }
converter: { outputs: 2, fullScaleDbu: 18 }
desk:
  stripTypes:
    - id: mono
      stages: [trim, insert, fader, mute, pan]
      taps: { pre: insert, post: mute }
  strips:
    - { id: ch1, mark: "1", label: Flute, type: mono }
    - { id: ch2, mark: "2", label: Harp, type: mono }
  auxes:
    - { id: aux1, label: Aux 1, tap: switchable }
outputs:
  - { id: mix, label: Mix, stereo: true }
  - { id: ears, label: Ears }
defaults:
  box.flute.to: out1
  box.harp.to: out2
  desk.ch1.in: converter.out1
  desk.ch2.in: converter.out2
  out.mix.l: desk.main.out.l
  out.mix.r: desk.main.out.r
  out.ears: desk.aux1.out
`,
  'lessons/scenarios/send-it.yaml': `
id: send-it
revision: 1
title: Send the flute
rig: two
concept: send
brief: [Send the flute to the ears.]
follow: flute
open: [desk.*.aux1, desk.*.aux1.tap]
checks:
  - id: heard
    claim: { kind: reaches, source: flute, output: ears, minDbu: -9, maxDbu: -7 }
  - id: alone
    claim: { kind: absent, source: harp, output: ears }
debrief: Done.
solution: { desk.ch1.aux1: -6 }
alsoPasses:
  - { name: before the fader, changes: { desk.ch1.aux1: -5.5, desk.ch1.aux1.tap: pre } }
mistakes:
  - { id: harp-too, name: the harp too, changes: { desk.ch2.aux1: 0 }, fails: [alone] }
  - { id: soft, name: too soft, changes: { desk.ch1.aux1: -30 }, fails: [heard] }
`,
  'lessons/quizzes/levels.yaml': `
id: levels
revision: 1
title: Levels
rig: two
questions:
  - id: where
    kind: statements
    concept: send
    ask: Where is the flute?
    follow: flute
    options:
      - id: mix
        text: In the mix
        claim: { kind: once, source: flute, output: mix }
        reason: It is.
      - id: ears
        text: In the ears
        claim: { kind: once, source: flute, output: ears }
        reason: The send is closed.
    explain: Sends begin closed.
  - id: how-loud
    kind: number
    concept: level
    ask: How loud is the flute in the mix?
    follow: flute
    quantity: { kind: level, source: flute, output: mix }
    options:
      - { id: as-is, reason: It is. }
      - { id: lower, asIf: { desk.ch1.fader: -3 }, reason: The fader is at unity. }
    explain: The fader is at unity.
`,
  'lessons/walk-throughs/down.yaml': `
id: down
revision: 1
title: Down the strip
rig: two
follow: flute
steps:
  - id: one
    say: It comes down.
    heard: [{ kind: reaches, source: flute, output: mix, minDbu: -2.1, maxDbu: -1.9 }]
  - id: two
    say: It is muted.
    changes: { desk.ch1.mute: true }
    heard: [{ kind: absent, source: flute, output: mix }]
`,
};

/** The files of the small course, with some words of one file changed. */
export function filesWith(path?: Path, from = '', to = ''): CourseFile[] {
  return Object.entries(TEXTS).map(([file, text]) => {
    if (file !== path) return { path: file, text };
    if (!text.includes(from)) throw new Error(`Expected ${path} to hold ${from}.`);
    return { path: file, text: text.replace(from, to) };
  });
}
