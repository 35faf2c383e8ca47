import * as z from 'zod/mini';

const CODE = /^[a-z0-9][a-z0-9-]{0,39}$/;

/** By what an instructor knows a learner: 1 to 40 small letters, digits and hyphens. It need not be a name. */
export const learnerCodeSchema = z.string().check(z.regex(CODE));

/** A learner code as somebody typed it: spaces around it and capital letters do not matter. Nothing when it is none. */
export function readLearnerCode(typed: string): string | undefined {
  const code = typed.slice(0, 80).trim().toLowerCase();
  return CODE.test(code) ? code : undefined;
}
