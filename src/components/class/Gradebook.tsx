import { useMemo, useRef } from 'preact/hooks';
import { assignmentFragment } from '../../class/assignment-fragment.ts';
import { counted } from '../../text/index.ts';
import { useFragment } from '../desk/use-fragment.ts';
import { AssignmentLinkField } from './AssignmentLinkField.tsx';
import { BookView } from './BookView.tsx';
import { DropZone } from './DropZone.tsx';
import { GradingBar } from './GradingBar.tsx';
import { useGradebook } from './use-gradebook.ts';

/** Takes an assignment and what a class handed in, and shows what came of it. */
export function Gradebook() {
  const { state, takeAssignment, takeFiles, stop } = useGradebook();
  const { files, grading, problems, book, before } = state;
  useFragment((fragment) => {
    const link = assignmentFragment(fragment);
    if (link) takeAssignment({ link });
  });
  // While a class is marked again, its tables are not drawn anew at each step.
  const view = useMemo(
    () => book && files.length > 0 && <BookView book={book} before={before} />,
    [book, before, files],
  );
  /** What came of it, in words. */
  const word = useRef<HTMLDivElement>(null);
  return (
    <>
      <div class="gradebook-intake">
        <DropZone
          label="Assignment"
          choose={book ? 'Choose a corrected assignment…' : 'Choose the assignment…'}
          accept=".json,.yaml,.yml"
          onFiles={([file]) => file && takeAssignment({ file })}
        >
          <AssignmentLinkField onLink={(link) => takeAssignment({ link })} />
          {book && (
            <p>
              Marked by “{book.assignment.title}”. With a corrected one, everything is marked again,
              and the old marks stand beside the new.
            </p>
          )}
        </DropZone>
        <DropZone
          label="Hand-ins"
          choose="Choose hand-ins…"
          accept=".json,.zip"
          isMultiple
          onFiles={takeFiles}
        >
          <p>
            Any number of files, or one archive (zip) of them, can be dropped here as well. They
            stay on this machine.
          </p>
        </DropZone>
      </div>
      <div ref={word} role="status" class="screen-only" tabIndex={-1}>
        {!grading && problems.length > 0 && (
          <>
            <p class="problem">That cannot be used.{book ? ' The marks stay as they were.' : ''}</p>
            <ul class="problem">
              {problems.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </>
        )}
        {!grading && !book && files.length > 0 && (
          <p>{counted(files.length, 'file')} chosen. Now the assignment.</p>
        )}
        {!grading && book && files.length === 0 && (
          <p>
            “{book.assignment.title}”: {counted(book.assignment.items.length, 'item')}. Now the
            hand-ins.
          </p>
        )}
        {!grading && book && files.length > 0 && (
          <p>
            {counted(book.rows.length, 'learner')} marked
            {book.aside.length > 0 ? `, ${counted(book.aside.length, 'file')} set aside` : ''}.
          </p>
        )}
      </div>
      {grading && (
        <GradingBar
          done={grading.done}
          of={grading.of}
          onStop={stop}
          focusNext={() => word.current?.focus()}
        />
      )}
      {view}
    </>
  );
}
