import { InputError } from '../../../simulator/index.ts';
import { type Assignment, parseAssignment } from '../../class/assignment.ts';
import { MOST_BYTES, spokenName } from '../../class/open-files.ts';

/** Reads the file of an assignment that a person chose. One over the cap is refused before it is read. @throws InputError */
export async function readAssignmentFile(file: File): Promise<Assignment> {
  const name = spokenName(file.name);
  if (file.size > MOST_BYTES) {
    const expected = `at most ${MOST_BYTES} bytes`;
    const hint = 'Is this the right file?';
    throw new InputError(name, [{ place: '', expected, found: `${file.size}`, hint }]);
  }
  return parseAssignment(name, await file.text());
}
