import type { Quiz, Scenario } from '../../../simulator/index.ts';
import type { CourseItem } from '../../progress/course-item.ts';
import { course } from './course.ts';
import { questionItems, scenarioItem } from './lesson-items.ts';

/** Components that hold something to be done, and links to drills, in the prose of a lesson. */
const EMBEDDED = /<(Task|Quiz)\s[^>]*\bid="([a-z][a-z0-9-]*)"/g;
const DRILL = /\/drills\/#drill=([a-z-]+)\.\d\.([a-z0-9]+)/;

/** What a lesson holds to be done, in order. */
export interface Works {
  readonly scenarios: readonly Scenario[];
  readonly quizzes: readonly Quiz[];
}

/** All that stands in the prose of a lesson to be done. What the course does not have is left out. */
export function worksIn(prose: string): Works {
  const { scenarios, quizzes } = course();
  const ids = (wanted: string) =>
    [...prose.matchAll(EMBEDDED)].flatMap(([, name, id = '']) => (name === wanted ? [id] : []));
  return {
    scenarios: ids('Task').flatMap((id) => scenarios.get(id) ?? []),
    quizzes: ids('Quiz').flatMap((id) => quizzes.get(id) ?? []),
  };
}

/** By what one shows that one knows a lesson without reading it: its free task, which is the last, and its questions. */
export interface TestOut extends Works {
  /** Name of a drill of the same idea at the second level, where the lesson leads to drills. */
  readonly drill: string | undefined;
}

export function testOutOf(prose: string): TestOut {
  const { scenarios, quizzes } = worksIn(prose);
  const [, concept, seed] = DRILL.exec(prose) ?? [];
  const drill = concept === undefined ? undefined : `${concept}.2.${seed}`;
  return { scenarios: scenarios.slice(-1), quizzes, drill };
}

/** What the progress of some works on a page is kept under. */
export const itemsOf = ({ scenarios, quizzes }: Works, page: string): CourseItem[] => [
  ...scenarios.map((scenario) => scenarioItem(scenario, page)),
  ...quizzes.flatMap((quiz) => questionItems(quiz, page)),
];
