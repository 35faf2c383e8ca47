import { getCollection } from 'astro:content';
import type { CourseItem, CourseOutline } from '../../progress/course-item.ts';
import { practiceItems } from '../../progress/practice.ts';
import { course } from './course.ts';
import { questionItems, scenarioItem } from './lesson-items.ts';

/** What stands in the prose of a lesson to be done, in order. */
const EMBEDDED = /<(Task|Quiz)\s[^>]*\bid="([a-z][a-z0-9-]*)"/g;

/** All that the pages of the course hold to be done, for what keeps and shows progress. */
export async function courseOutline(): Promise<CourseOutline> {
  const { lessons: order, confusable } = course();
  const lessons = await getCollection('lessons');
  const glossary = await getCollection('glossary');
  const inOrder = order.flatMap((slug) => lessons.find(({ id }) => id === slug) ?? []);
  return {
    items: inOrder.flatMap(({ id, body }) => itemsIn(body ?? '', `/lessons/${id}/`)),
    practice: practiceItems(),
    units: inOrder.map(({ id, data }) => ({ id, title: data.title, href: `/lessons/${id}/` })),
    concepts: glossary.map(({ id, data }) => ({ id, term: data.term })),
    confusable,
  };
}

function itemsIn(prose: string, page: string): CourseItem[] {
  const { scenarios, quizzes } = course();
  return [...prose.matchAll(EMBEDDED)].flatMap(([, component, id = '']) => {
    const scenario = component === 'Task' ? scenarios.get(id) : undefined;
    const quiz = component === 'Quiz' ? quizzes.get(id) : undefined;
    return [
      ...(scenario ? [scenarioItem(scenario, page)] : []),
      ...(quiz ? questionItems(quiz, page) : []),
    ];
  });
}
