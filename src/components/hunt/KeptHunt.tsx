import {
  fromDraft,
  type Hunt,
  type HuntSnapshot,
  huntDraftSchema,
  toDraft,
} from '../../../simulator/index.ts';
import { HUNT } from '../../progress/knowledge.ts';
import { readDraft } from '../../progress/read-draft.ts';
import { type Shelf, taskShelf } from '../../progress/shelf.ts';
import type { TaskName, TaskRecord } from '../../progress/task-record.ts';
import { KeptWord } from '../desk/KeptWord.tsx';
import { useKeeping } from '../desk/use-keeping.ts';

interface Props {
  hunt: Hunt;
  snapshot: HuntSnapshot;
  onTakeUp: (snapshot: HuntSnapshot) => void;
}

/** Keeps how far a hunt is, and goes on from there when the page is opened at it again. */
export function KeptHunt({ hunt, snapshot, onTakeUp }: Props) {
  const name = nameOf(hunt);
  const keeping = useKeeping(
    {
      shelf: (memory) => ofSeed(taskShelf(memory, name), hunt.seed),
      pristine: textOf(snapshot),
      write: () => ({
        text: textOf(snapshot),
        isFinished: snapshot.matches('found') || snapshot.matches('debriefing'),
      }),
      read: (text) => onTakeUp(fromDraft(hunt, readDraft(name.id, text, huntDraftSchema))),
    },
    [snapshot],
  );
  return <KeptWord keeping={keeping} back="“Another hunt” begins a new one." />;
}

/** The hunts of a level are one task, each with its seed in its drafts. */
const nameOf = ({ level }: Hunt): TaskName => ({
  id: `fault-hunt-${level}`,
  kind: HUNT,
  revision: 1,
  concept: 'fault-hunt',
  unit: 'fault-hunt',
});

const textOf = (snapshot: HuntSnapshot): string => JSON.stringify(toDraft(snapshot));

/** A shelf on which only drafts of one hunt are seen; the others stay where they are. */
function ofSeed(shelf: Shelf<TaskRecord>, seed: string): Shelf<TaskRecord> {
  const own = (record: TaskRecord): TaskRecord => ({
    ...record,
    drafts: record.drafts.filter(({ text }) => seedIn(text) === seed),
  });
  return {
    ...shelf,
    read: async () => {
      const record = await shelf.read();
      return record && own(record);
    },
    keep: async (draft, takenUp) => own(await shelf.keep(draft, takenUp)),
  };
}

/** The seed of a draft that can be read; nothing of one that cannot, which is then not of this hunt. */
function seedIn(text: string): string | undefined {
  try {
    return huntDraftSchema.parse(JSON.parse(text)).seed;
  } catch {
    return undefined;
  }
}
