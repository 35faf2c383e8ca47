import { DRILL_NAMES } from '../text/index.ts';
import type { AssignedTask } from './assignment.ts';
import type { TaskSource } from './given-task.ts';

/** What an item is called where its answer must not be given away. */
export function itemTitle(task: AssignedTask, { scenarios, quizzes }: TaskSource): string {
  switch (task.kind) {
    case 'scenario':
      return scenarios.get(task.id)?.title ?? task.id;
    case 'question': {
      const quiz = quizzes.get(task.quiz);
      const index = quiz?.questions.findIndex(({ id }) => id === task.id) ?? -1;
      return quiz && index >= 0 ? `${quiz.title}, question ${index + 1}` : task.id;
    }
    case 'drill':
      return `Drill: ${DRILL_NAMES[task.concept]}, level ${task.level}`;
    case 'own':
      return task.scenario.title;
  }
}
