import { getCollection } from 'astro:content';
import type { Quiz, Scenario } from '../../../simulator/index.ts';
import type { Catalogue, CatalogueTask } from '../class/assign/catalogue.ts';
import { course } from './course.ts';
import { worksIn } from './test-out.ts';

/** All tasks of the course that can be assigned, by the lesson that they stand in; and the words that they train. */
export async function catalogue(): Promise<Catalogue> {
  const { lessons: order } = course();
  const lessons = await getCollection('lessons');
  const glossary = await getCollection('glossary');
  const inOrder = order.flatMap((slug) => lessons.find(({ id }) => id === slug) ?? []);
  return {
    lessons: inOrder.flatMap(({ id, data, body = '' }) => {
      const { scenarios, quizzes } = worksIn(body);
      const tasks = [...scenarios.map(scenarioTask), ...quizzes.flatMap(questionTasks)];
      return tasks.length > 0 ? [{ id, title: data.title, tasks }] : [];
    }),
    concepts: glossary.map(({ id, data }) => ({ id, term: data.term })),
  };
}

const scenarioTask = ({ id, revision, title, brief, concept, kind }: Scenario): CatalogueTask => ({
  task: { kind: 'scenario', id, revision },
  title,
  asks: brief[0] ?? '',
  concept,
  kind,
});

const questionTasks = ({ id: quiz, revision, title, questions }: Quiz): CatalogueTask[] =>
  questions.map(({ id, ask, concept, kind }, index) => ({
    task: { kind: 'question', quiz, id, revision },
    title: `${title}, question ${index + 1}`,
    asks: ask,
    concept,
    kind,
  }));
