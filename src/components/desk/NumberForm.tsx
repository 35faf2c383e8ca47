import { useState } from 'preact/hooks';
import { signed } from '../../text/index.ts';
import { readNumber } from '../../text/read-number.ts';
import type { AnswerFormProps } from './answer-form.ts';

/** A number to be typed. What is no number is no answer, and says so. */
export function NumberForm({ id, question, answer, onAnswer }: AnswerFormProps) {
  const [typed, setTyped] = useState('');
  const value =
    answer?.kind === 'number' ? (answer.value === '-inf' ? -Infinity : answer.value) : undefined;
  // An answer that was kept comes back as its figure.
  const text = readNumber(typed) === value ? typed : value === undefined ? '' : figure(value);
  // A sign that is not followed by anything yet is no mistake.
  const isRefused = /\w/.test(text) && value === undefined;
  const isLevel = 'quantity' in question && question.quantity.kind === 'level';
  return (
    <>
      <label class="number-answer">
        {isLevel ? 'Level in dBu' : 'Change in dB'}
        <input
          type="text"
          inputMode="text"
          autocomplete="off"
          value={text}
          aria-invalid={isRefused}
          aria-describedby={`${id}-how`}
          onInput={({ currentTarget }) => {
            setTyped(currentTarget.value);
            const now = readNumber(currentTarget.value);
            onAnswer(
              now === undefined
                ? undefined
                : { kind: 'number', value: now === -Infinity ? '-inf' : now },
            );
          }}
        />
      </label>
      <p id={`${id}-how`} class={isRefused ? 'answer-how problem' : 'answer-how'}>
        {isRefused && 'That is no number. '}
        {`Type a number such as −6.5${isLevel ? ', or “silent”' : ''}.`}
      </p>
    </>
  );
}

const figure = (value: number): string => (value === -Infinity ? 'silent' : signed(value));
