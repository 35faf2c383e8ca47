import { readFileSync } from 'node:fs';
import { controls } from '../../simulator/index.ts';
import { readCourse } from '../../src/course/index.ts';
import type { SweptPage } from './sweep.ts';

/** The desk of a lesson that draws most, and the bench with everything around the desk. */
export function sweptPages(): readonly SweptPage[] {
  const { lessons, scenarios } = readCourse();
  const desks = lessons.flatMap((slug) => {
    const text = readFileSync(`lessons/lessons/${slug}.mdx`, 'utf8');
    return [...text.matchAll(/<Task id="([^"]+)"/g)].flatMap(([, id = '']) => {
      const scenario = scenarios.get(id);
      if (!scenario) return [];
      const { rig, show } = scenario;
      const owners = new Set([...controls(rig).values()].map(({ owner }) => owner));
      const drawn = show?.length ?? [...owners].filter((one) => one.startsWith('desk.')).length;
      return [{ address: `/lessons/${slug}/`, desk: `section.task:has(#task-${id}-title)`, drawn }];
    });
  });
  const [largest] = desks.toSorted((one, other) => other.drawn - one.drawn);
  if (!largest) throw new Error('Expected a lesson with a task, found none.');
  return [
    { address: largest.address, desk: largest.desk, fader: 0 },
    { address: '/bench/', desk: '.desk', fader: 3 },
  ];
}
