import { render } from 'preact';
import { openMemory } from '../../progress/browser-memory.ts';
import type { CourseOutline } from '../../progress/course-item.ts';
import { NOTHING_KEPT } from '../../text/index.ts';
import { ProgressView } from './ProgressView.tsx';

/** Shows in an element of the page what the browser keeps. */
export async function showProgress(place: HTMLElement, outline: CourseOutline): Promise<void> {
  const memory = await openMemory();
  place.replaceChildren();
  render(
    memory ? (
      <ProgressView memory={memory} outline={outline} />
    ) : (
      <p class="problem" role="alert">
        {NOTHING_KEPT}
      </p>
    ),
    place,
  );
}
