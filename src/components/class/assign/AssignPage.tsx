import { useRef, useState } from 'preact/hooks';
import { InputError } from '../../../../simulator/index.ts';
import type { Assignment } from '../../../class/assignment.ts';
import { draftOf, newDraft } from '../../../class/assignment-draft.ts';
import { assignmentMachine } from '../../../class/assignment-machine.ts';
import { Later, useLater } from '../../desk/later.ts';
import { NotThereYet } from '../../desk/NotThereYet.tsx';
import { useMachine } from '../../desk/use-machine.ts';
import { newSeed } from '../../new-seed.ts';
import { readAssignmentFile } from '../read-assignment-file.ts';
import { CourseTasks } from './CourseTasks.tsx';
import type { Catalogue } from './catalogue.ts';
import { DrillAdder } from './DrillAdder.tsx';
import { GiveOut, type Look } from './GiveOut.tsx';
import { HeadFields } from './HeadFields.tsx';
import { ItemList } from './ItemList.tsx';
import { KeptDraft } from './KeptDraft.tsx';

const looks = new Later(() => import('./looks.ts'));
const making = new Later(() => import('./making.ts'));

const newId = (): string => `assignment-${newSeed()}`;

interface Props {
  catalogue: Catalogue;
}

/** Where an instructor makes an assignment. */
export function AssignPage({ catalogue }: Props) {
  const [fresh] = useState(() => newDraft(newId()));
  const { actor, snapshot } = useMachine(assignmentMachine, { draft: fresh });
  const { send } = actor;
  const { draft, past } = snapshot.context;
  const [isReady, setReady] = useState(false);
  const [looking, setLooking] = useState<{ look: Look; assignment: Assignment }>();
  const [problems, setProblems] = useState<readonly string[]>([]);
  const picker = useRef<HTMLInputElement>(null);
  const later = useLater(looks);
  const own = useLater(making);

  /** Opens an assignment; one that cannot be used leaves everything as it is. */
  const open = async (file: File) => {
    try {
      send({ type: 'draft.open', draft: draftOf(await readAssignmentFile(file)) });
      setProblems([]);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      setProblems(error.message.split('\n'));
    }
  };
  const isMaking = snapshot.matches('making');
  const kept = (
    <KeptDraft
      draft={draft}
      fresh={fresh}
      onTakeUp={(taken) => send({ type: 'draft.take-up', draft: taken })}
      onReady={() => setReady(true)}
    />
  );
  const content = looking ? (
    later.there ? (
      <later.there.Looking {...looking} onBack={() => setLooking(undefined)} />
    ) : (
      <NotThereYet later={later} what="The tasks" />
    )
  ) : isMaking && draft.own ? (
    own.there ? (
      <own.there.OwnScenario
        own={draft.own}
        canUndo={past.length > 0}
        concepts={catalogue.concepts}
        send={send}
      />
    ) : (
      <NotThereYet later={own} what="The desks" />
    )
  ) : undefined;
  if (!isReady || content) {
    return (
      <>
        {kept}
        {isReady && content}
      </>
    );
  }
  return (
    <>
      {kept}
      <div class="buttons">
        <button type="button" onClick={() => picker.current?.click()}>
          Open an assignment…
        </button>
        <input
          ref={picker}
          type="file"
          accept=".json,.yaml,.yml"
          hidden
          aria-label="Assignment file"
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            if (file) void open(file);
            currentTarget.value = '';
          }}
        />
        <button
          type="button"
          onClick={() => send({ type: 'draft.open', draft: newDraft(newId()) })}
        >
          New
        </button>
        <button
          type="button"
          aria-disabled={past.length === 0}
          onClick={() => send({ type: 'undo' })}
        >
          Undo
        </button>
      </div>
      {problems.length > 0 && (
        <div role="alert">
          <p class="problem">This cannot be opened. What was here stays as it is.</p>
          <ul class="problem">
            {problems.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
      <h2>What it says</h2>
      <HeadFields draft={draft} send={send} />
      <h2>Its tasks</h2>
      <ItemList
        items={draft.items}
        catalogue={catalogue}
        send={send}
        onChangeOwn={async (item) => {
          const there = own.there ?? (await own.fetch());
          const opened = await there?.openOwn(item);
          if (opened && 'own' in opened) send({ type: 'own.begin', own: opened.own });
          else setProblems(opened?.problems ?? []);
        }}
      />
      <h3>Tasks of the course</h3>
      <CourseTasks catalogue={catalogue} items={draft.items} send={send} />
      <h3>Drills</h3>
      <p class="prose">
        A drill is generated and proven when a learner opens it. One for each means that neighbours
        get different ones: up to 24 in a class.
      </p>
      <DrillAdder send={send} />
      <h3>A scenario of your own</h3>
      <p class="prose">
        Set how a desk stands at first and how it should end up, and choose what has to be heard. It
        travels in the assignment.
      </p>
      <button
        type="button"
        onClick={async () => {
          const there = own.there ?? (await own.fetch());
          const begun = await there?.beginOwn(firstConcept(catalogue));
          if (begun && 'own' in begun) send({ type: 'own.begin', own: begun.own });
          else setProblems(begun?.problems ?? []);
        }}
      >
        Make a scenario…
      </button>
      {own.hasFailed && <NotThereYet later={own} what="The desks" />}
      <h2>Give it out</h2>
      <GiveOut draft={draft} onLook={(look, assignment) => setLooking({ look, assignment })} />
    </>
  );
}

/** What the first task of the course trains. */
const firstConcept = ({ lessons, concepts }: Catalogue): string =>
  lessons[0]?.tasks[0]?.concept ?? concepts[0]?.id ?? 'level';
