import type { Control } from '../../../simulator/index.ts';
import { capitalised } from '../../text/index.ts';

interface Props {
  id: string;
  control: Control;
  isLocked: boolean;
}

/** The name of a control beside its field, which says so when it is locked. */
export const FieldLabel = ({ id, control, isLocked }: Props) => (
  <label class="field-label" for={id}>
    {capitalised(control.label)}
    {isLocked && <span class="lock"> (locked)</span>}
  </label>
);
