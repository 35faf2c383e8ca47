import { InputError } from '../file/input-error.ts';
import type { Answer, AnswerOf } from './answer.ts';

/** @throws InputError when an answer is not of the kind that its task takes. */
export function refuseOtherKind<Kind extends Answer['kind']>(
  where: string,
  kind: Kind,
  answer: Answer,
): asserts answer is AnswerOf<Kind> {
  if (answer.kind === kind) return;
  const expected = `the answer "${kind}", which this task takes`;
  throw new InputError(where, [{ place: 'kind', expected, found: answer.kind }]);
}

/** @throws InputError when an answer names an option that its question has not, or one twice. */
export function refuseStrangers(
  where: string,
  place: string,
  options: readonly { readonly id: string }[],
  named: readonly string[],
): void {
  const ids = options.map(({ id }) => id);
  named.forEach((name, index) => {
    if (!ids.includes(name)) {
      const expected = `one of ${ids.join(', ')}`;
      throw new InputError(where, [{ place, expected, found: `"${name}"` }]);
    }
    if (named.indexOf(name) < index) {
      throw new InputError(where, [{ place, expected: 'each once', found: `"${name}" twice` }]);
    }
  });
}
