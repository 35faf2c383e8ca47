import { useCallback, useEffect, useState } from 'preact/hooks';
import type { Everything } from '../../progress/backup.ts';
import type { CourseOutline } from '../../progress/course-item.ts';
import {
  conceptStandings,
  type Kept,
  strayRecords,
  unitStandings,
} from '../../progress/knowledge.ts';
import type { Contents, Memory } from '../../progress/memory.ts';
import { reviewQueue } from '../../progress/review-queue.ts';
import { counted } from '../../text/index.ts';
import { AsideList } from './AsideList.tsx';
import { BackupPanel } from './BackupPanel.tsx';
import { ConceptTable } from './ConceptTable.tsx';
import { exportAll, exportAside, importFile, type Word } from './exchange.ts';
import { ForgetDialog, type Forgetting } from './ForgetDialog.tsx';
import { PracticeTasks } from './PracticeTasks.tsx';
import { ReviewList } from './ReviewList.tsx';
import { StatusWord } from './StatusWord.tsx';
import { UnitTasks } from './UnitTasks.tsx';

interface Props {
  memory: Memory;
  outline: CourseOutline;
}

/** What is known, what is due and what is shaky, and the ways to save, merge and reset it. */
export function ProgressView({ memory, outline }: Props) {
  const { contents, now } = useContents(memory);
  const [word, setWord] = useState<Word>();
  const [forgetting, setForgetting] = useState<Forgetting>();
  const [forgotten, setForgotten] = useState<Everything>();
  /** Carries something out, and says what came of it. */
  const carryOut = (step: () => Promise<Word>) =>
    void step().then(setWord, (error: unknown) =>
      setWord({ said: 'The browser refused that.', problems: [String(error)] }),
    );
  if (!contents) return <p>Your progress comes in a moment…</p>;

  const kept: Kept = {
    tasks: new Map(contents.records.tasks.map((one) => [one.id, one])),
    reviews: new Map(contents.records.reviews.map((one) => [one.concept, one])),
  };
  const stray = strayRecords(outline, kept);
  const exportNow = () => carryOut(() => exportAll(memory));
  const forget = ({ what, name }: Forgetting) =>
    carryOut(async () => {
      setForgetting(undefined);
      setForgotten(await memory.reset(what));
      return { said: `Reset: ${name}.` };
    });
  const undo = (records: Everything) =>
    carryOut(async () => {
      await memory.take({ records, unusable: [] });
      setForgotten(undefined);
      return { said: 'It is back.' };
    });
  return (
    <>
      <StatusWord word={word}>
        {forgotten && (
          <button type="button" onClick={() => undo(forgotten)}>
            Undo the reset
          </button>
        )}
      </StatusWord>
      <h2>To review now</h2>
      <ReviewList queue={reviewQueue(outline, kept, now)} concepts={outline.concepts} />
      <h2>By concept</h2>
      <ConceptTable concepts={conceptStandings(outline, kept, now)} now={now} />
      <h2>By lesson</h2>
      {unitStandings(outline, kept).map((unit) => (
        <UnitTasks key={unit.unit} unit={unit} kept={kept} onForget={setForgetting} />
      ))}
      <h2>Drills and fault hunts</h2>
      <PracticeTasks outline={outline} kept={kept} onForget={setForgetting} />
      {stray.length > 0 && (
        <p class="prose">
          {counted(stray.length, 'task')} that the course no longer has{' '}
          {stray.length === 1 ? 'is' : 'are'} kept as well, and in every export:{' '}
          {stray.map(({ id }) => id).join(', ')}.
        </p>
      )}
      <h2>Backup</h2>
      <BackupPanel
        savedAt={contents.savedAt}
        onExport={exportNow}
        onImport={(file) => carryOut(() => importFile(memory, file))}
      />
      {contents.aside.length > 0 && (
        <>
          <h2>Put aside</h2>
          <AsideList
            aside={contents.aside}
            onExport={exportAside}
            onRemove={({ number, name }) =>
              carryOut(async () => {
                await memory.removeAside(number);
                return { said: `Removed for good: ${name}.` };
              })
            }
          />
        </>
      )}
      <h2>Begin again</h2>
      <p>
        <button
          type="button"
          onClick={() => setForgetting({ what: 'everything', name: 'everything' })}
        >
          Reset everything…
        </button>
      </p>
      {forgetting && (
        <ForgetDialog
          forgetting={forgetting}
          onExport={exportNow}
          onForget={() => forget(forgetting)}
          onKeep={() => setForgetting(undefined)}
        />
      )}
    </>
  );
}

/** What is kept, read anew after each change in this tab or another, and the moment it was read. */
function useContents(memory: Memory): { contents: Contents | undefined; now: number } {
  const [read, setRead] = useState<{ contents: Contents; now: number }>();
  const look = useCallback(async () => {
    setRead({ contents: await memory.contents(), now: Date.now() });
  }, [memory]);
  useEffect(() => {
    void look();
    return memory.onChange(() => void look());
  }, [memory, look]);
  return { contents: read?.contents, now: read?.now ?? 0 };
}
