import { useState } from 'preact/hooks';
import { assignmentFragment } from '../../class/assignment-fragment.ts';

interface Props {
  onLink: (link: string) => void;
}

/** Takes the link of an assignment as text. */
export function AssignmentLinkField({ onLink }: Props) {
  const [text, setText] = useState('');
  const [isBad, setBad] = useState(false);
  const id = 'assignment-link';
  return (
    <form
      class="link-field"
      onSubmit={(event) => {
        event.preventDefault();
        const link = assignmentFragment(text);
        setBad(!link);
        if (link) onLink(link);
      }}
    >
      <label for={id}>Or its link</label>
      <input
        id={id}
        type="text"
        value={text}
        autocomplete="off"
        spellcheck={false}
        aria-invalid={isBad}
        aria-describedby={isBad ? `${id}-problem` : undefined}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
      />
      <button type="submit">Open the link</button>
      {isBad && (
        <p id={`${id}-problem`} class="problem" role="alert">
          Expected the link of an assignment, but found another text. Copy all of it, to its last
          letter.
        </p>
      )}
    </form>
  );
}
