import { InputError } from '../../simulator/index.ts';

const LONGEST = 300;

/** Why something could not be used, in one line: the first thing that is wrong with it, however much a file says. */
export function reasonOf({ file, problems: [first, ...more] }: InputError): string {
  const message = first ? new InputError(file, [first]).message : '';
  const shown = message.length > LONGEST ? `${message.slice(0, LONGEST)}…` : message;
  return more.length > 0 ? `${shown} (${more.length} more.)` : shown;
}
