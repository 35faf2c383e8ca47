import { openMemory } from '../../progress/browser-memory.ts';
import { passedText } from '../../text/index.ts';

/** Says at each lesson of a map how many of its tasks were passed; nothing where none was tried. */
export async function showDone(lessons: readonly HTMLElement[]): Promise<void> {
  const memory = await openMemory();
  if (!memory) return;
  const { records } = await memory.contents();
  memory.close();
  const kept = new Map(records.tasks.map((record) => [record.id, record]));
  for (const lesson of lessons) {
    const items = lesson.dataset['items']?.split(' ') ?? [];
    const place = lesson.querySelector('.done');
    if (!place || items.every((id) => !kept.has(id))) continue;
    const passed = items.filter((id) => kept.get(id)?.passedAt !== undefined).length;
    place.textContent = passedText(passed, items.length);
  }
}
