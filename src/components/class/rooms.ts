import { digestOf } from '../../course/digest.ts';

/**
 * What the pages of a class keep lies as the rooms of the bench do: each is a room that was left, with its drafts.
 * Rooms of the bench are named by their rigs, none of which begins like these.
 */

/** Where an assignment is made. */
export const MAKING_ROOM = 'making-an-assignment';

/** What names of rooms begin with where assignments lie that were opened to be done. */
export const GIVEN = 'given-assignment-';
/** What names of rooms begin with where work on assignments lies. */
export const WORK = 'work-on-assignment-';

export const givenRoom = (assignment: string): string => `${GIVEN}${digestOf(assignment)}`;

/** The room of one learner's work: people may share a browser. */
export const workRoom = (assignment: string, learner: string): string =>
  `${WORK}${digestOf(`${assignment}/${learner}`)}`;
