import { useState } from 'preact/hooks';
import { InputError } from '../../../../simulator/index.ts';
import { type Assignment, assignmentText } from '../../../class/assignment.ts';
import { type AssignmentDraft, assignmentOf } from '../../../class/assignment-draft.ts';
import { assignmentLink } from '../../../class/assignment-link.ts';
import { handOverFile } from '../../hand-over-file.ts';

/** How an assignment is looked at before it is given out. */
export type Look = 'preview' | 'worksheet' | 'key';

interface Props {
  draft: AssignmentDraft;
  onLook: (look: Look, assignment: Assignment) => void;
}

/** What came of giving it out: a link, with whether it was copied, or what stands against it. */
type Word =
  | { readonly link: string; readonly isCopied: boolean }
  | { readonly problems: readonly string[] }
  | { readonly saved: string };

/** Gives an assignment out, as a file or a link, and shows it as learners get it or as it is printed. */
export function GiveOut({ draft, onLook }: Props) {
  const [word, setWord] = useState<Word>();
  /** Does something with the assignment, or says what it lacks. */
  const withAssignment = async (work: (assignment: Assignment) => void | Promise<void>) => {
    setWord(undefined);
    try {
      await work(assignmentOf(draft));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      setWord({ problems: error.message.split('\n') });
    }
  };
  const save = () =>
    withAssignment((assignment) => {
      const name = `${assignment.id}.assignment.json`;
      handOverFile(name, assignmentText(assignment));
      setWord({ saved: name });
    });
  const link = () =>
    withAssignment(async (assignment) => {
      const fragment = await assignmentLink(assignment);
      const address = new URL(`/assignment/${fragment}`, window.location.href).href;
      const isCopied = await (navigator.clipboard?.writeText(address) ?? Promise.reject()).then(
        () => true,
        () => false,
      );
      setWord({ link: address, isCopied });
    });
  const look = (which: Look) => () =>
    withAssignment((assignment) => {
      onLook(which, assignment);
    });
  return (
    <>
      <div class="buttons">
        <button type="button" class="button-main" onClick={save}>
          Save as a file
        </button>
        <button type="button" onClick={link}>
          Make a link
        </button>
        <button type="button" onClick={look('preview')}>
          See it as a learner
        </button>
        <button type="button" onClick={look('worksheet')}>
          Worksheet to print
        </button>
        <button type="button" onClick={look('key')}>
          Answer key to print
        </button>
      </div>
      <div role="status">{word && <Words word={word} />}</div>
    </>
  );
}

function Words({ word }: { word: Word }) {
  if ('saved' in word) {
    return (
      <p>
        Saved as {word.saved}. Keep it: the gradebook marks by it, and here it can be opened again.
      </p>
    );
  }
  if ('link' in word) {
    return (
      <>
        <p>
          {word.isCopied ? 'The link was copied. ' : ''}It holds the whole assignment, and nothing
          of it lies anywhere else:
        </p>
        <p class="assign-link">
          <a href={word.link}>{word.link}</a>
        </p>
      </>
    );
  }
  return (
    <>
      <p class="problem">It cannot be given out like this:</p>
      <ul class="problem">
        {word.problems.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
