import type { AnswerFormProps } from './answer-form.ts';

/** Options to choose from: one where one of them is right, any of them where outputs are asked for. */
export function OptionsForm({ id, question, options, answer, onAnswer }: AnswerFormProps) {
  const isMany = question.kind === 'outputs';
  const outputs = answer?.kind === 'outputs' ? answer.outputs : [];
  const isChosen = (option: string) =>
    isMany ? outputs.includes(option) : answer?.kind === 'option' && answer.option === option;
  const choose = (option: string, isOn: boolean) => {
    if (!isMany) return onAnswer({ kind: 'option', option });
    const others = outputs.filter((one) => one !== option);
    onAnswer({ kind: 'outputs', outputs: isOn ? [...others, option] : others });
  };
  return options.map((option) => (
    <label key={option.id} class="option">
      <input
        type={isMany ? 'checkbox' : 'radio'}
        name={id}
        value={option.id}
        checked={isChosen(option.id)}
        onChange={({ currentTarget }) => choose(option.id, currentTarget.checked)}
      />
      {option.text}
    </label>
  ));
}
