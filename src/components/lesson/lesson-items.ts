import type { QuestionKind, Quiz as QuizFile, Scenario } from '../../../simulator/index.ts';
import type { CourseItem } from '../../progress/course-item.ts';

/** The part of a page's address that names it: `/lessons/sends/` is the unit `sends`. */
export const unitOf = (pathname: string): string =>
  pathname
    .split('/')
    .filter((part) => part !== '')
    .at(-1) ?? 'start';

/** What the progress of a scenario on a page is kept under. */
export const scenarioItem = (scenario: Scenario, page: string): CourseItem => ({
  id: `task-${scenario.id}`,
  kind: scenario.kind,
  revision: scenario.revision,
  concept: scenario.concept,
  unit: unitOf(page),
  title: scenario.title,
  rig: scenario.rig.id,
  href: `${page}#task-${scenario.id}-title`,
});

/** What kinds of question are called where progress is kept. */
const KINDS = {
  statements: 'choose',
  number: 'choose',
  predict: 'predict',
  outputs: 'predict',
  order: 'order',
  explain: 'explain',
} as const satisfies Readonly<Record<QuestionKind, string>>;

/** What the progress of the questions of a quiz on a page is kept under, in their order. */
export const questionItems = (quiz: QuizFile, page: string): CourseItem[] =>
  quiz.questions.map((question, index) => ({
    id: `quiz-${quiz.id}-${question.id}`,
    kind: KINDS[question.kind],
    revision: quiz.revision,
    concept: question.concept,
    unit: unitOf(page),
    title: `${quiz.title}, question ${index + 1}`,
    rig: quiz.rig.id,
    href: `${page}#quiz-${quiz.id}-${question.id}`,
  }));

/** What a task needs to know of an item. */
export const nameOf = ({ id, kind, revision, concept, unit }: CourseItem) => ({
  id,
  kind,
  revision,
  concept,
  unit,
});
