import type { Board, Check, Claim, Rig } from '../../simulator/index.ts';
import { boardData } from '../../simulator/index.ts';
import { canonicalText } from './canonical-text.ts';
import { checkOf, claimKey, type OwnDraft } from './own-draft.ts';

/** What can be done to a scenario that is being made. */
export type OwnEdit =
  /** Another room, as it stands. Words stay; boards, checks and mistakes begin anew. */
  | {
      readonly type: 'room.set';
      readonly rig: Rig;
      readonly board: Board;
      /** Whether the course has not got the rig, so that it has to travel along. */
      readonly isOwnRig: boolean;
    }
  | { readonly type: 'words.set'; readonly words: Partial<OwnWords> }
  | { readonly type: 'board.set'; readonly of: 'start' | 'solution'; readonly board: Board }
  /** Opens or locks all that a pattern means. */
  | { readonly type: 'lock.set'; readonly pattern: string; readonly isOpen: boolean }
  /** Asks for a claim, or does so no more. */
  | { readonly type: 'check.set'; readonly claim: Claim; readonly isAsked: boolean }
  | { readonly type: 'check.weigh'; readonly check: string; readonly weight: number }
  | { readonly type: 'mistake.add'; readonly name: string; readonly board: Board }
  | { readonly type: 'mistake.name'; readonly mistake: number; readonly name: string }
  | { readonly type: 'mistake.remove'; readonly mistake: number };

/** The words of a scenario. */
export type OwnWords = Pick<
  OwnDraft,
  'title' | 'brief' | 'hints' | 'debrief' | 'concept' | 'follow'
>;

/** A scenario that nobody has said anything about yet, in a room. */
export function newOwn(
  id: string,
  concept: string,
  rig: Rig,
  board: Board,
  isOwnRig: boolean,
): OwnDraft {
  const empty = { title: '', brief: '', hints: '', debrief: '' };
  return inRoom({ id, revision: 1, concept, ...empty }, rig, board, isOwnRig);
}

type Kept = Pick<
  OwnDraft,
  'id' | 'revision' | 'item' | 'title' | 'concept' | 'brief' | 'hints' | 'debrief'
>;

function inRoom(kept: Kept, rig: Rig, board: Board, isOwnRig: boolean): OwnDraft {
  const standing = boardData(board);
  return {
    ...kept,
    rig: rig.id,
    ...(isOwnRig ? { ownRig: rig } : {}),
    follow: rig.box.tracks[0]?.id ?? '',
    start: standing,
    solution: standing,
    open: [],
    checks: [],
    mistakes: [],
  };
}

/** A scenario after an edit. */
export function ownEdited(own: OwnDraft, edit: OwnEdit): OwnDraft {
  switch (edit.type) {
    case 'room.set': {
      const { id, revision, item, title, concept, brief, hints, debrief } = own;
      const kept = { id, revision, title, concept, brief, hints, debrief };
      const named = item === undefined ? kept : { ...kept, item };
      return inRoom(named, edit.rig, edit.board, edit.isOwnRig);
    }
    case 'words.set':
      return { ...own, ...edit.words };
    case 'board.set': {
      const board = boardData(edit.board);
      // A solution that was not touched yet goes along with the start.
      const isUntouched = canonicalText(own.solution) === canonicalText(own.start);
      if (edit.of === 'start' && isUntouched) return { ...own, start: board, solution: board };
      return { ...own, [edit.of]: board };
    }
    case 'lock.set': {
      const others = own.open.filter((pattern) => pattern !== edit.pattern);
      return { ...own, open: edit.isOpen ? [...others, edit.pattern] : others };
    }
    case 'check.set':
      return { ...own, checks: withClaim(own.checks, edit.claim, edit.isAsked) };
    case 'check.weigh':
      return {
        ...own,
        checks: own.checks.map((check) =>
          check.id === edit.check ? { ...check, weight: edit.weight } : check,
        ),
      };
    case 'mistake.add':
      return {
        ...own,
        mistakes: [...own.mistakes, { name: edit.name, board: boardData(edit.board) }],
      };
    case 'mistake.name':
      return {
        ...own,
        mistakes: own.mistakes.map((mistake, index) =>
          index === edit.mistake ? { ...mistake, name: edit.name } : mistake,
        ),
      };
    case 'mistake.remove':
      return { ...own, mistakes: own.mistakes.filter((_, index) => index !== edit.mistake) };
  }
}

function withClaim(checks: readonly Check[], claim: Claim, isAsked: boolean): Check[] {
  const others = checks.filter((check) => claimKey(check.claim) !== claimKey(claim));
  return isAsked ? [...others, checkOf(claim, others)] : others;
}
