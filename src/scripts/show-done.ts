import { openMemory } from '../progress/browser-memory.ts';
import { unitText } from '../text/index.ts';

/**
 * Says in each `.done` of the page how much of a lesson was passed, and goes on saying it; nothing where none was
 * tried. Each has the ids of what it counts in `data-items`, and of what shows that one knows the lesson in
 * `data-proof`, both with blanks between. It begins as soon as it is there.
 */
async function showDone(): Promise<void> {
  const places = document.querySelectorAll<HTMLElement>('.done');
  const memory = await openMemory();
  if (!memory) return;
  const show = async () => {
    const { records } = await memory.contents();
    const kept = new Map(records.tasks.map((record) => [record.id, record]));
    const hasPassed = (id: string) => kept.get(id)?.passedAt !== undefined;
    for (const place of places) {
      const { items = '', proof = '' } = place.dataset;
      const of = items.split(' ');
      if (of.every((id) => !kept.has(id))) place.textContent = '';
      else {
        const isKnown = proof.split(' ').every(hasPassed);
        place.textContent = unitText(of.filter(hasPassed).length, of.length, isKnown);
      }
    }
  };
  memory.onChange(() => void show());
  await show();
}

// Without it the page is as good.
showDone().catch(() => undefined);
