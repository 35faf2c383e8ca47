import { parseRig } from '../../simulator/board/setup-file.ts';
import type { Rig } from '../../simulator/rig/schema.ts';

/**
 * A room that is small enough to reckon by hand, as the text of a rig file.
 *
 * At the converter, viola −17 + 21 = 4 dBu, horn −23 + 21 = −2 dBu, organ −26 + 21 = −5 dBu a side.
 */
export const SMALL_ROOM = `id: shed
label: The shed
box:
  tracks:
    - { id: viola, label: Viola, levelDbfs: -17 }
    - { id: horn, label: Horn, levelDbfs: -23 }
    - { id: organ, label: Organ, levelDbfs: -26, stereo: true }
  buses:
    - { id: stack, label: Stack }
    - { id: heap, label: Heap }
converter: { outputs: 6, fullScaleDbu: 21 }
desk:
  stripTypes:
    - id: narrow
      stages: [trim, polarity, insert, fader, mute, pan]
      taps: { pre: insert, post: mute }
    - id: wide
      stereo: true
      stages: [trim, insert, fader, mute, pan]
      taps: { pre: insert, post: mute }
  strips:
    - { id: a, mark: A, label: Viola, type: narrow }
    - { id: b, mark: B, label: Horn, type: narrow }
    - { id: c, mark: C, label: Spare, type: narrow }
    - { id: w, mark: W, label: Hall return, type: wide }
  auxes:
    - { id: ears, label: Ears, tap: pre }
    - { id: wash, label: Wash, tap: switchable }
    - { id: late, label: Late, tap: post }
  subgroups:
    - { id: band, label: Band }
rack:
  - { id: squash, label: Squash, kind: compressor }
  - { id: twin, label: Twin, kind: compressor, inputs: 2, outputs: 2 }
  - { id: hall, label: Hall, kind: reverb, outputs: 2 }
  - { id: boost, label: Boost, kind: gain }
outputs:
  - { id: tape, label: Tape, stereo: true }
  - { id: cans, label: Cans }
defaults:
  box.viola.to: out1
  box.horn.to: out2
  box.organ.to: out3-4
  desk.a.in: converter.out1
  desk.b.in: converter.out2
  rack.hall.in: desk.wash.out
  desk.w.in.l: rack.hall.out.l
  desk.w.in.r: rack.hall.out.r
  out.cans: desk.ears.out
  out.tape.l: desk.main.out.l
  out.tape.r: desk.main.out.r
`;

/** The small room, read anew, so that a test that needs a rig of its own has one. */
export const smallRoom = (change: (text: string) => string = (text) => text): Rig =>
  parseRig('shed.yaml', change(SMALL_ROOM));

/** A setup file in the small room, with a board of these lines. */
export const smallRoomSetup = (...board: readonly string[]): string =>
  [
    'format: tap-and-sum/setup',
    'version: 1',
    `rig:\n${SMALL_ROOM.replace(/^(?=.)/gm, '  ').trimEnd()}`,
    ...(board.length > 0 ? ['board:', ...board.map((line) => `  ${line}`)] : []),
    '',
  ].join('\n');
