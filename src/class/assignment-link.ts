import { type PackedLink, packLink, unpackLink } from '../share/packed-link.ts';
import { type Assignment, parseAssignment } from './assignment.ts';
import { ASSIGNMENT_FRAGMENT } from './assignment-fragment.ts';

const ASSIGNMENT_LINK: PackedLink = {
  fragment: ASSIGNMENT_FRAGMENT,
  version: 1,
  holds: 'assignment',
  tooLongSince: 'much text, or scenarios of your own',
};

/** An assignment as the fragment of an address. @throws InputError when it is too long for a link. */
export const assignmentLink = (assignment: Assignment): Promise<string> =>
  packLink(ASSIGNMENT_LINK, JSON.stringify(assignment));

/**
 * Reads the link of an assignment.
 *
 * @param fragment what `assignmentFragment` gives.
 * @throws InputError when it is too long, damaged, from a newer version, or holds no assignment.
 */
export const assignmentOfLink = async (fragment: string): Promise<Assignment> =>
  parseAssignment('The link', await unpackLink(ASSIGNMENT_LINK, fragment));
