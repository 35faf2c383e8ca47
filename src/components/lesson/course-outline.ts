import { getCollection } from 'astro:content';
import type { CourseOutline } from '../../progress/course-item.ts';
import { practiceItems } from '../../progress/practice.ts';
import { course } from './course.ts';
import { itemsOf, testOutOf, worksIn } from './test-out.ts';

/** All that the pages of the course hold to be done, for what keeps and shows progress. */
export async function courseOutline(): Promise<CourseOutline> {
  const { lessons: order, confusable } = course();
  const lessons = await getCollection('lessons');
  const glossary = await getCollection('glossary');
  const inOrder = order.flatMap((slug) => lessons.find(({ id }) => id === slug) ?? []);
  return {
    items: inOrder.flatMap(({ id, body = '' }) => itemsOf(worksIn(body), `/lessons/${id}/`)),
    practice: practiceItems(),
    units: inOrder.map(({ id, data, body = '' }) => {
      const href = `/lessons/${id}/`;
      const proof = itemsOf(testOutOf(body), href).map((item) => item.id);
      return { id, title: data.title, href, proof };
    }),
    concepts: glossary.map(({ id, data }) => ({ id, term: data.term })),
    confusable,
  };
}
