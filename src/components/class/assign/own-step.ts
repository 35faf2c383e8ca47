import type { Rig } from '../../../../simulator/index.ts';
import type { OwnDraft, ownBoards } from '../../../class/own-draft.ts';
import type { OwnEdit } from '../../../class/own-edit.ts';
import type { OwnGap } from '../../../class/prove-own.ts';

/** What a step in making a scenario needs. */
export interface StepProps {
  readonly own: OwnDraft;
  readonly rig: Rig;
  readonly boards: ReturnType<typeof ownBoards>;
  readonly edit: (edit: OwnEdit) => void;
}

/** The steps in which a scenario is made, with what each of them is for. */
export const STEPS = [
  { id: 'room', name: 'Room', gaps: [] },
  { id: 'start', name: 'Start', gaps: [] },
  { id: 'solution', name: 'Solution', gaps: ['solution'] },
  { id: 'locks', name: 'What may be moved', gaps: ['open'] },
  { id: 'checks', name: 'What has to be heard', gaps: ['checks'] },
  { id: 'mistakes', name: 'Likely mistakes', gaps: ['mistakes'] },
  { id: 'words', name: 'Words', gaps: ['title', 'brief', 'debrief'] },
] as const satisfies readonly {
  readonly id: string;
  readonly name: string;
  readonly gaps: readonly OwnGap[];
}[];
export type StepId = (typeof STEPS)[number]['id'];

/** What is still missing, as a sentence. */
export const GAP_SENTENCES: Readonly<Record<OwnGap, string>> = {
  solution: 'The solution stands as the start does: move something in it.',
  open: 'Everything is locked: open what a learner may move.',
  checks: 'Nothing has to be heard: choose at least one check.',
  mistakes:
    'At least two likely mistakes are needed, each with a name: they show that the checks tell things apart.',
  title: 'It has no title.',
  brief: 'It does not say what is wanted.',
  debrief: 'It does not say what there was to learn.',
};
