import type { Lesson } from './lesson.ts';
import { course } from './the-course.ts';

/** How much a lesson is: words of its prose, steps of its walk-throughs, tasks, questions. */
export interface Counts {
  readonly words: number;
  readonly steps: number;
  readonly tasks: number;
  readonly questions: number;
}

export const NOTHING: Counts = { words: 0, steps: 0, tasks: 0, questions: 0 };

const WORD = /[\p{L}\p{N}][\p{L}\p{N}’'-]*/gu;

export function countIn({ prose, components }: Lesson): Counts {
  const ids = (wanted: string) =>
    components.filter(({ name }) => name === wanted).map(({ props }) => String(props['id']));
  const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
  return {
    words: prose.join(' ').match(WORD)?.length ?? 0,
    steps: sum(ids('WalkThrough').map((id) => course.walkThroughs.get(id)?.steps.length ?? 0)),
    tasks: ids('Task').length,
    questions: sum(ids('Quiz').map((id) => course.quizzes.get(id)?.questions.length ?? 0)),
  };
}

export const together = (one: Counts, other: Counts): Counts => ({
  words: one.words + other.words,
  steps: one.steps + other.steps,
  tasks: one.tasks + other.tasks,
  questions: one.questions + other.questions,
});
