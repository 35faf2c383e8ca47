import type { AnswerFormProps } from './answer-form.ts';
import { NumberForm } from './NumberForm.tsx';
import { OptionsForm } from './OptionsForm.tsx';
import { OrderForm } from './OrderForm.tsx';

/** Where one answers a question: each kind in its own way, and always by native fields and buttons. */
export function AnswerForm(props: AnswerFormProps) {
  const { kind } = props.question;
  if (kind === 'predict') return <NumberForm {...props} />;
  if (kind === 'order') return <OrderForm {...props} />;
  return <OptionsForm {...props} />;
}
