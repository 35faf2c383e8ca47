import type { Answer } from '../../simulator/index.ts';
import type { OptionText } from './question-options.ts';
import { counted } from './sentence.ts';
import { signed } from './signed.ts';

/** An answer to a question as people read it. @param options of the question, as they stand on the page. */
export function answerText(options: readonly OptionText[], answer: Answer): string {
  const textOf = (id: string) => options.find((option) => option.id === id)?.text ?? id;
  switch (answer.kind) {
    case 'option':
      return textOf(answer.option);
    case 'number':
      return answer.value === '-inf' ? 'silent' : signed(answer.value);
    case 'outputs':
      return answer.outputs.length === 0 ? 'none of them' : answer.outputs.map(textOf).join(', ');
    case 'order':
      return answer.order.map(textOf).join(' → ');
    case 'board':
      return `${counted(Object.keys(answer.board).length, 'control')} off default`;
  }
}
