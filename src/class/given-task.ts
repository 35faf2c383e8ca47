import {
  type Drill,
  type DrillConcept,
  type DrillLevel,
  drillOf,
  InputError,
  parseRig,
  parseScenario,
  type Question,
  type Scenario,
} from '../../simulator/index.ts';
import type { Course } from '../course/course.ts';
import type { AssignedTask, Assignment, AssignmentItem } from './assignment.ts';
import { drillSeeds } from './item-stream.ts';

/** What of a course is needed to give out the tasks of an assignment and to mark them. */
export type TaskSource = Pick<Course, 'rigs' | 'scenarios' | 'quizzes' | 'version'>;

/** A task as one learner gets it. */
export type GivenTask =
  | { readonly kind: 'scenario'; readonly task: Scenario }
  | { readonly kind: 'question'; readonly task: Question }
  | { readonly kind: 'drill'; readonly task: Drill };

/** An item of an assignment whose task has been found. */
export interface GivenItem {
  readonly item: AssignmentItem;
  /** What it is called on screen: title of the scenario or of the quiz; nothing for a drill, which its concept names. */
  readonly title: string | undefined;
  /** The revision of the task that is given out and marked by; nothing for a drill. */
  readonly revision: number | undefined;
  /** The task of a learner. @throws RangeError when no drill can be proven, which no seed is known to do. */
  readonly taskOf: (learner: string) => GivenTask;
}

/**
 * Finds the tasks of an assignment.
 *
 * @param file name of the assignment, for messages.
 * @throws InputError with every item whose task the course has not, or whose own scenario does not work.
 */
export function givenItems(file: string, assignment: Assignment, course: TaskSource): GivenItem[] {
  const errors: InputError[] = [];
  const items = assignment.items.flatMap((item, index) => {
    const place = `items[${index}].task`;
    try {
      return [givenItem(file, place, assignment, item, course)];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      errors.push(error);
      return [];
    }
  });
  if (errors.length === 0) return items;
  throw new InputError(
    file,
    errors.flatMap(({ problems }) => problems),
  );
}

function givenItem(
  file: string,
  place: string,
  assignment: Assignment,
  item: AssignmentItem,
  course: TaskSource,
): GivenItem {
  const { task } = item;
  const missing = (expected: string, found: string) =>
    new InputError(file, [{ place, expected, found: `"${found}"` }]);
  switch (task.kind) {
    case 'scenario': {
      const scenario = course.scenarios.get(task.id);
      if (!scenario) throw missing('a scenario of the course', task.id);
      return ofScenario(item, scenario);
    }
    case 'question': {
      const quiz = course.quizzes.get(task.quiz);
      if (!quiz) throw missing('a quiz of the course', task.quiz);
      const question = quiz.questions.find(({ id }) => id === task.id);
      if (!question) throw missing(`a question of the quiz ${quiz.id}`, task.id);
      const given: GivenTask = { kind: 'question', task: question };
      return { item, title: quiz.title, revision: quiz.revision, taskOf: () => given };
    }
    case 'drill':
      return ofDrill(file, place, assignment, item, task);
    case 'own':
      return ofScenario(item, ownScenario(file, place, task, course));
  }
}

function ofScenario(item: AssignmentItem, scenario: Scenario): GivenItem {
  const given: GivenTask = { kind: 'scenario', task: scenario };
  return { item, title: scenario.title, revision: scenario.revision, taskOf: () => given };
}

/** A scenario that travels in the assignment. @throws InputError with its problems, at their places in the assignment. */
function ownScenario(
  file: string,
  place: string,
  { scenario, rig }: Extract<AssignedTask, { kind: 'own' }>,
  course: TaskSource,
): Scenario {
  const ownRig = rig && placedAt(file, `${place}.rig`, () => parseRig(file, JSON.stringify(rig)));
  return placedAt(file, `${place}.scenario`, () =>
    parseScenario(file, JSON.stringify(scenario), (id) =>
      ownRig?.id === id ? ownRig : course.rigs.get(id),
    ),
  );
}

/** What is read of a part of a file. @throws InputError with problems at their places in the whole file. */
function placedAt<T>(file: string, place: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const problems = error.problems.map(({ place: inner, line: _line, ...problem }) => ({
      place: inner ? `${place}.${inner}` : place,
      ...problem,
    }));
    throw new InputError(file, problems);
  }
}

function ofDrill(
  file: string,
  place: string,
  assignment: Assignment,
  item: AssignmentItem,
  { concept, level, seeds }: Extract<AssignedTask, { kind: 'drill' }>,
): GivenItem {
  const made = new Map<string, GivenTask>();
  const taskOf = (learner: string): GivenTask => {
    const tried =
      seeds.policy === 'same' ? [seeds.seed] : drillSeeds(assignment.id, learner, item.id);
    const [first = ''] = tried;
    const given = made.get(first) ?? { kind: 'drill', task: firstProven(concept, level, tried) };
    made.set(first, given);
    return given;
  };
  if (seeds.policy === 'same') {
    try {
      taskOf('');
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      const expected = `a seed that gives a drill of ${concept}, level ${level}`;
      const found = `"${seeds.seed}", of which none can be proven`;
      throw new InputError(file, [{ place, expected, found, hint: 'Take another one.' }]);
    }
  }
  return { item, title: undefined, revision: undefined, taskOf };
}

/** @throws RangeError when none can be proven. */
function firstProven(concept: DrillConcept, level: DrillLevel, seeds: readonly string[]): Drill {
  let failed: unknown;
  for (const seed of seeds) {
    try {
      return drillOf(concept, level, seed);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      failed = error;
    }
  }
  throw failed;
}
