import { InputError, type Problem } from '../../../simulator/file/input-error.ts';
import type { Rig } from '../../../simulator/rig/schema.ts';
import { smallRoom } from '../small-room.ts';

/** Small task files on the small room, good as they stand. */

const room = smallRoom();
export const findRig = (id: string): Rig | undefined => (id === room.id ? room : undefined);

/** Viola has to be heard in the cans, before its fader. */
export const SCENARIO = `id: quiet-cans
revision: 3
title: Quiet cans
rig: shed
concept: pre-fader
brief:
  - The player wants to hear the viola.
follow: viola
start:
  desk.a.fader: -12
open:
  - desk.*.ears
  - desk.*.late
  - out.cans
checks:
  - id: heard
    weight: 2
    claim: { kind: reaches, source: viola, output: cans, minDbu: -3, maxDbu: 1 }
  - id: holds-still
    claim:
      kind: steady
      source: viola
      output: cans
      probe: { move: fader, of: viola }
  - id: no-horn
    weight: 4
    claim: { kind: absent, source: horn, output: cans }
debrief: It was taken before the fader.
solution:
  desk.a.ears: -5
alsoPasses:
  - name: softer
    changes: { desk.a.ears: -6.5 }
mistakes:
  - id: after
    name: taken after the fader
    changes: { desk.a.ears: -.inf, desk.a.late: 8, out.cans: desk.late.out }
    fails: [holds-still]
  - id: horn-too
    name: the horn as well
    changes: { desk.b.ears: -20 }
    fails: [no-horn]
`;

export const QUIZ = `id: sends
revision: 1
title: Sends
rig: shed
questions:
  - id: which
    kind: statements
    concept: pre-fader
    ask: What holds?
    follow: viola
    start: { desk.a.ears: -3 }
    explain: It leaves before the fader.
    options:
      - id: still
        text: It holds still.
        claim: { kind: steady, source: viola, output: cans, probe: { control: desk.a.fader } }
        reason: It leaves before the fader.
      - id: moves
        text: It moves.
        claim: { kind: follows, source: viola, output: cans, probe: { control: desk.a.fader } }
        reason: That would be after the fader.
  - id: how-much
    kind: number
    concept: trim
    ask: How much?
    follow: horn
    start: { desk.b.trim: 5 }
    explain: Trim and fader add up.
    quantity: { kind: level, source: horn, output: tape }
    options:
      - { id: right, reason: 'Minus two, and five.' }
      - id: twice
        asIf: { desk.b.trim: 10 }
        reason: Counted twice.
  - id: by-how-much
    kind: number
    concept: follows
    ask: By how much does it move?
    follow: viola
    explain: dB for dB.
    quantity: { kind: move, source: viola, output: tape, probe: { move: fader, of: viola, byDb: -7 } }
    options:
      - { id: all, reason: dB for dB. }
      - id: none
        asIf: { desk.a.main: false }
        reason: It is not even there.
`;

export const WALK = `id: first-steps
revision: 2
title: First steps
rig: shed
follow: viola
start: { desk.a.fader: -12 }
steps:
  - id: one
    say: The fader comes up.
    changes: { desk.a.fader: -1 }
    heard:
      - { kind: reaches, source: viola, output: tape, minDbu: 2.9, maxDbu: 3.1 }
  - id: two
    say: And the horn goes.
    changes: { desk.b.mute: true }
    follow: horn
  - id: three
    say: Back.
    changes: { desk.b.mute: false, desk.a.fader: -2 }
`;

/** The problems that reading throws; none when it does not. */
export function problemsOf(read: () => unknown): readonly Problem[] {
  try {
    read();
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

/** A text with a part replaced, which has to be there. */
export function replaced(text: string, from: string, to: string): string {
  if (!text.includes(from)) throw new Error(`The task has no ${from}.`);
  return text.replace(from, to);
}

/** The line, from 1, that holds this part of a text. */
export const lineWith = (text: string, part: string): number =>
  text.slice(0, text.indexOf(part)).split('\n').length;

/** One question of each kind that is answered by more than a choice among statements or numbers. */
export const KINDS = `id: kinds
revision: 1
title: Kinds
rig: shed
questions:
  - id: say
    kind: predict
    concept: trim
    ask: How much?
    follow: horn
    start: { desk.b.trim: 5 }
    explain: Trim and fader add up.
    quantity: { kind: level, source: horn, output: tape }
    toleranceDb: 0.3
    options:
      - { id: right, reason: 'Minus two, and five.' }
      - { id: twice, asIf: { desk.b.trim: 10 }, reason: Counted twice. }
      - { id: shut, asIf: { desk.b.mute: true }, reason: It is not muted. }
  - id: where
    kind: outputs
    concept: send
    ask: Where is the viola heard?
    follow: viola
    start: { desk.a.ears: -3, desk.a.fader: -.inf }
    explain: The send leaves before the fader.
    options:
      - { id: tape, output: tape, reason: The fader is down. }
      - { id: cans, output: cans, reason: The send is up. }
      - { id: hall, output: rack.hall.in, reason: That send is closed. }
  - id: sequence
    kind: order
    concept: insert
    ask: In which order?
    follow: viola
    output: tape
    start:
      rack.squash.in: desk.a.insert.send
      desk.a.insert.return: rack.squash.out
    explain: Down the strip.
    options:
      - { id: fader, stop: desk.a.fader, reason: Behind the insert. }
      - { id: trim, stop: desk.a.trim, reason: It comes first. }
      - { id: squash, stop: rack.squash, reason: The insert leads there. }
      - { id: main, stop: desk.main, reason: Strips end there. }
  - id: why
    kind: explain
    concept: insert
    ask: The viola is missing. Why?
    follow: viola
    start:
      desk.a.insert.return: rack.squash.out
    explain: A return breaks the normal.
    options:
      - { id: sent, text: It is not sent., finding: insert-not-sent, at: desk.a, reason: So it is. }
      - { id: horn-sent, text: The horn is not sent., finding: insert-not-sent, at: desk.b, reason: It is. }
      - { id: twice, text: It comes twice., finding: arrives-twice, reason: It does not. }
`;
