import { useRef, useState } from 'preact/hooks';
import type { Course } from '../../../course/course.ts';
import { openSetup } from '../../desk/setup-exchange.ts';
import type { StepProps } from './own-step.ts';

interface Props extends StepProps {
  course: Course;
}

/** The room that a scenario is set in: one of the course, or that of a setup file. */
export function OwnRoom({ own, rig, edit, course }: Props) {
  const picker = useRef<HTMLInputElement>(null);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const hasWork = own.checks.length + own.mistakes.length + own.open.length > 0;
  const open = async (file: File) => {
    const opened = await openSetup(file);
    if ('problems' in opened) return setProblems(opened.problems);
    setProblems([]);
    const { rig: found, board } = opened.setup;
    const isKnown = JSON.stringify(course.rigs.get(found.id)) === JSON.stringify(found);
    const known = isKnown ? course.rigs.get(found.id) : undefined;
    edit({ type: 'room.set', rig: known ?? found, board, isOwnRig: !isKnown });
  };
  return (
    <>
      <p class="prose">
        Choose a room of the course, or open a setup that you saved on the bench: its room and how
        it stands are the start then.
        {hasWork &&
          ' Another room drops boards, locks, checks and mistakes; undo brings them back.'}
      </p>
      <div class="buttons">
        <label>
          Room{' '}
          <select
            value={own.ownRig ? '' : own.rig}
            onChange={({ currentTarget: { value } }) => {
              const chosen = course.rigs.get(value);
              if (chosen) edit({ type: 'room.set', rig: chosen, board: {}, isOwnRig: false });
            }}
          >
            {own.ownRig && <option value="">{rig.label} (from a file)</option>}
            {[...course.rigs.values()].map((one) => (
              <option key={one.id} value={one.id}>
                {one.label}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={() => picker.current?.click()}>
          Open a setup…
        </button>
        <input
          ref={picker}
          type="file"
          accept=".yaml,.yml,.json"
          hidden
          aria-label="Setup file"
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            if (file) void open(file);
            currentTarget.value = '';
          }}
        />
      </div>
      {problems.length > 0 && (
        <div role="alert">
          <p class="problem">This setup cannot be opened. The room stays as it is.</p>
          <ul class="problem">
            {problems.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
