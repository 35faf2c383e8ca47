import { useId, useState } from 'preact/hooks';
import { readLearnerCode } from '../../../class/learner-code.ts';
import { momentText } from '../../../text/index.ts';
import type { KeptAssignment } from './kept-work.ts';

interface Props {
  /** Who worked on it in this browser before. */
  before: KeptAssignment['work'];
  onCode: (learner: string) => void;
}

/** Asks by which code the instructor knows the learner. */
export function CodeForm({ before, onCode }: Props) {
  const [text, setText] = useState('');
  const [isBad, setBad] = useState(false);
  const id = useId();
  return (
    <form
      class="code-form"
      onSubmit={(event) => {
        event.preventDefault();
        const code = readLearnerCode(text);
        setBad(!code);
        if (code) onCode(code);
      }}
    >
      {before.length > 0 && (
        <ul class="code-before">
          {before.map(({ learner, at }) => (
            <li key={learner}>
              <button type="button" onClick={() => onCode(learner)}>
                Go on as {learner}
              </button>{' '}
              left on {momentText(at)}
            </li>
          ))}
        </ul>
      )}
      <label for={id}>Your learner code</label>
      <input
        id={id}
        type="text"
        value={text}
        autocomplete="off"
        autocapitalize="none"
        spellcheck={false}
        aria-invalid={isBad}
        aria-describedby={`${id}-how`}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
      />
      <button type="submit" class="button-main">
        Begin
      </button>
      <p id={`${id}-how`} class={isBad ? 'problem' : 'code-how'} role={isBad ? 'alert' : undefined}>
        {isBad && `Expected a code, but found “${text.slice(0, 40)}”. `}A code is 1 to 40 letters,
        digits and hyphens. Your instructor gave you one; it need not be your name.
      </p>
    </form>
  );
}
