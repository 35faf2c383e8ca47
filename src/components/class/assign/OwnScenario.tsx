import { useEffect, useMemo, useState } from 'preact/hooks';
import type { AssignmentEvent } from '../../../class/assignment-machine.ts';
import { type OwnDraft, ownBoards } from '../../../class/own-draft.ts';
import type { OwnEdit } from '../../../class/own-edit.ts';
import { ownGaps } from '../../../class/prove-own.ts';
import type { Course } from '../../../course/course.ts';
import { fetchCourse } from '../fetch-course.ts';
import type { Catalogue } from './catalogue.ts';
import { OwnChecks } from './OwnChecks.tsx';
import { OwnDesk } from './OwnDesk.tsx';
import { OwnLocks } from './OwnLocks.tsx';
import { OwnMistakes } from './OwnMistakes.tsx';
import { OwnProving } from './OwnProving.tsx';
import { OwnRoom } from './OwnRoom.tsx';
import { OwnWordFields } from './OwnWordFields.tsx';
import { STEPS, type StepId } from './own-step.ts';

interface Props {
  own: OwnDraft;
  canUndo: boolean;
  concepts: Catalogue['concepts'];
  send: (event: AssignmentEvent) => void;
}

/** Where an instructor makes a scenario, step by step. */
export function OwnScenario({ own, canUndo, concepts, send }: Props) {
  const [course, setCourse] = useState<Course>();
  const [hasFailed, setFailed] = useState(false);
  const [step, setStep] = useState<StepId>('room');
  /** Rises when what a desk shows was changed from outside of it. */
  const [turn, setTurn] = useState(0);
  const fetch = () => {
    setFailed(false);
    fetchCourse().then(setCourse, () => setFailed(true));
  };
  useEffect(fetch, []);
  const rig = own.ownRig ?? course?.rigs.get(own.rig);
  const boards = useMemo(() => rig && ownBoards(own, rig), [own, rig]);
  const gaps = useMemo(() => (rig ? ownGaps(own, rig) : []), [own, rig]);
  if (!course || !rig || !boards) {
    return hasFailed ? (
      <p class="problem" role="status">
        The rooms of the course could not be fetched.{' '}
        <button type="button" onClick={fetch}>
          Try again
        </button>
      </p>
    ) : (
      <p role="status">The rooms are coming.</p>
    );
  }
  const edit = (change: OwnEdit) => send({ type: 'own.edit', edit: change });
  const props = { own, rig, boards, edit };
  const key = `${step} ${turn} ${rig.id}`;
  return (
    <section class="own" aria-labelledby="own-title">
      <h2 id="own-title">{own.title === '' ? 'A scenario of your own' : own.title}</h2>
      <div class="buttons">
        <button
          type="button"
          aria-disabled={!canUndo}
          onClick={() => {
            send({ type: 'undo' });
            setTurn(turn + 1);
          }}
        >
          Undo
        </button>
        <button type="button" onClick={() => send({ type: 'own.drop' })}>
          Leave without it
        </button>
      </div>
      <ol class="own-steps">
        {STEPS.map(({ id, name, gaps: of }, index) => (
          <li key={id}>
            <button type="button" aria-pressed={step === id} onClick={() => setStep(id)}>
              {index + 1}. {name}
              {of.some((gap) => gaps.includes(gap)) && <span> (missing)</span>}
            </button>
          </li>
        ))}
      </ol>
      <div class="own-step">
        {step === 'room' && <OwnRoom {...props} course={course} />}
        {step === 'start' && (
          <>
            <p class="prose">Set the desk as a learner finds it. It is kept as you go.</p>
            <OwnDesk
              key={key}
              id="own-start"
              rig={rig}
              board={boards.start}
              onBoard={(board) => edit({ type: 'board.set', of: 'start', board })}
            />
          </>
        )}
        {step === 'solution' && (
          <>
            <p class="prose">
              Go on from the start to where it should end up. “Start again” leads back to the start.
            </p>
            <OwnDesk
              key={key}
              id="own-solution"
              rig={rig}
              board={boards.solution}
              home={boards.start}
              onBoard={(board) => edit({ type: 'board.set', of: 'solution', board })}
            />
          </>
        )}
        {step === 'locks' && <OwnLocks {...props} />}
        {step === 'checks' && <OwnChecks {...props} />}
        {step === 'mistakes' && <OwnMistakes key={key} {...props} />}
        {step === 'words' && <OwnWordFields {...props} concepts={concepts} />}
      </div>
      <OwnProving {...props} gaps={gaps} onStep={setStep} send={send} />
    </section>
  );
}
