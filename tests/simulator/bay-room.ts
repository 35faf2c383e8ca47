import type { Rig } from '../../simulator/rig/schema.ts';
import { smallRoom } from './small-room.ts';

/**
 * The small room with a bay: outputs 1 and 2 normalled to strips A and B, outputs 3 and 4 half-normalled to strip C
 * and to the booster, the insert of strip A in a full-normal row, that of strip B in an open one, the hall
 * half-normalled to its strip, and two mults.
 */
export const BAY = `bay:
  rows:
    - id: lines
      label: Lines
      kind: full
      points:
        - { top: converter.out1, bottom: desk.a.in }
        - { top: converter.out2, bottom: desk.b.in }
        - { top: desk.a.insert.send, bottom: desk.a.insert.return }
    - id: more
      label: More
      kind: half
      points:
        - { top: converter.out3, bottom: desk.c.in }
        - { top: converter.out4, bottom: rack.boost.in }
        - { top: rack.hall.out.l, bottom: desk.w.in.l }
        - { top: rack.hall.out.r, bottom: desk.w.in.r }
    - id: loose
      label: Loose
      kind: open
      points:
        - { top: desk.b.insert.send, bottom: desk.b.insert.return }
        - { top: rack.squash.out }
        - { bottom: rack.squash.in }
  mults:
    - { id: split, label: Split, outputs: 3 }
    - { id: spare, label: Spare mult, outputs: 2 }
`;

/** Cords of the small room that its bay makes needless. */
const NEEDLESS = /^ {2}desk\.(a\.in|b\.in|w\.in\.[lr]): .*\n/gm;

/** The small room with its bay, after a change to the text of the bay. */
export const bayRoom = (change: (text: string) => string = (text) => text): Rig =>
  smallRoom((text) => `${text.replace(NEEDLESS, '')}${change(BAY)}`);
