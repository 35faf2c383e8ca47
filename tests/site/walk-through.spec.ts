import { course, openTask, pageOf } from './course-pages.ts';
import { test } from './fixture.ts';
import { playWalkThrough } from './play-walk-through.ts';

const ARTICLE = '/numbers/';

test(`${ARTICLE}: by keyboard alone, every walk-through says what the simulator computes`, async ({
  page,
}) => {
  const shown = [...course.walkThroughs.values()].filter(
    ({ id }) => pageOf('WalkThrough', id) === ARTICLE,
  );
  const [first] = shown;
  if (!first) throw new Error(`Expected walk-throughs on ${ARTICLE}, but found none.`);
  await openTask(page, 'WalkThrough', first.id);
  for (const walkThrough of shown) {
    await test.step(walkThrough.id, () => playWalkThrough(page, walkThrough));
  }
});
