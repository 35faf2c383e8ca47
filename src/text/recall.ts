import {
  controls,
  fullLabel,
  movesBetween,
  NONE,
  type Setup,
  valueAt,
} from '../../simulator/index.ts';
import { controlText } from './quantities.ts';

/** Some lines of a recall sheet that belong to one owner. */
export interface RecallGroup {
  /** `Strip 3 Cello` */
  readonly owner: string;
  readonly lines: readonly { readonly control: string; readonly value: string }[];
}

/** One cord: `Output 3` to `Strip 3 Cello line input`. */
export interface PatchLine {
  readonly from: string;
  readonly to: string;
}

/** What one has to set to have a setup again: all controls off the defaults of the rig, owner by owner. Cords stand apart. */
export function recallGroups({ rig, board }: Setup): RecallGroup[] {
  const groups = new Map<string, { control: string; value: string }[]>();
  for (const { control, to } of movesBetween(rig, {}, board)) {
    if (control.kind === 'cord') continue;
    const lines = groups.get(control.ownerLabel) ?? [];
    groups.set(control.ownerLabel, lines);
    lines.push({ control: control.label, value: controlText(control, to) });
  }
  return [...groups].map(([owner, lines]) => ({ owner, lines }));
}

/** Every cord that is plugged, in the order of the rig's inputs. */
export const patchLines = (setup: Setup): PatchLine[] =>
  [...controls(setup.rig).values()].flatMap((control) => {
    if (control.kind !== 'cord') return [];
    const value = valueAt(setup, control.address);
    if (value === NONE) return [];
    const from = control.options.find((option) => option.value === value)?.label ?? String(value);
    return [{ from, to: fullLabel(setup.rig, control.address) }];
  });
