import type { Rig } from '../../../simulator/index.ts';
import { course, find } from './course.ts';

/** A room that one can play in on the bench. */
export interface BenchRoom {
  readonly rig: Rig;
  /** What is special about it, in a sentence or two. */
  readonly about: string;
  /** The last part of its address; none for the first room, which is the bench itself. */
  readonly slug: string | undefined;
  readonly href: string;
}

/** The rooms of the bench in the order of the course. @throws RangeError for a rig that there is not. */
export const benchRooms = (): BenchRoom[] =>
  course().bench.map(({ rig, about }, index) => ({
    rig: find('rig', course().rigs, rig),
    about,
    slug: index === 0 ? undefined : rig,
    href: index === 0 ? '/bench/' : `/bench/${rig}/`,
  }));
