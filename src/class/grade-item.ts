import {
  type Answer,
  answerSchema,
  boardData,
  checkDocument,
  InputError,
  type MarkedPart,
  markAnswer,
} from '../../simulator/index.ts';
import type { Assignment } from './assignment.ts';
import { canonicalText } from './canonical-text.ts';
import type { GivenItem, GivenTask } from './given-task.ts';
import type { HandedItem } from './hand-in.ts';
import type { ItemNote, NoMark } from './notes.ts';
import { partWords } from './part-words.ts';
import { reasonOf } from './reason.ts';

/** An item of a hand-in, marked anew. */
export interface GradedItem {
  readonly id: string;
  readonly weight: number;
  /** What was met, from 0 to 1, by weights of the parts. */
  readonly share: number;
  readonly passed: boolean;
  /** What was asked, part by part; empty without a mark. */
  readonly parts: readonly MarkedPart[];
  readonly noMark?: NoMark;
  /** What the learner's page made of it, from 0 to 1. */
  readonly claimed?: number;
  readonly notes: readonly ItemNote[];
  /** The option that was chosen, where the answer is one. */
  readonly option?: string;
  /**
   * The answer as text, the same for the same answer; nothing where there is none that can be read, or where
   * it is how the task begins.
   */
  readonly answer?: string;
  /** What each part asks, by its id, where the learner has a drill of their own. */
  readonly asked?: Readonly<Record<string, string>>;
  /** Seed of the learner's drill. */
  readonly seed?: string;
  readonly attempts: number;
  readonly hints: number;
  readonly spentMs: number;
}

/** What came of an answer alone. */
type Marking = Pick<GradedItem, 'share' | 'passed' | 'parts' | 'noMark' | 'option' | 'answer'> & {
  readonly hasMovedLock: boolean;
};

const NO_ANSWER: Marking = {
  share: 0,
  passed: false,
  parts: [],
  noMark: { code: 'no-answer' },
  hasMovedLock: false,
};

/** Marks the answers to one item. Equal answers to the same task are marked once. */
export class ItemMarker {
  readonly id: string;
  readonly #given: GivenItem;
  readonly #assignment: Assignment;
  readonly #known = new WeakMap<GivenTask, Map<string, Marking>>();
  readonly #words = new WeakMap<GivenTask, Readonly<Record<string, string>>>();

  constructor(given: GivenItem, assignment: Assignment) {
    this.id = given.item.id;
    this.#given = given;
    this.#assignment = assignment;
  }

  /** @param handed what the hand-in has of the item, if anything. */
  mark(learner: string, handed: HandedItem | undefined): GradedItem {
    const given = this.#given.taskOf(learner);
    const { hasMovedLock, ...marking } = this.#marking(given, handed);
    const { claimed, attempts = 0, hints = 0, spentMs = 0 } = handed ?? {};
    return {
      id: this.id,
      weight: this.#given.item.weight,
      ...marking,
      ...(claimed === undefined ? {} : { claimed }),
      notes: [
        ...(hasMovedLock ? [{ code: 'moved-lock' as const }] : []),
        ...this.#notes(given, handed),
      ],
      ...(given.kind === 'drill' ? { seed: given.task.seed, asked: this.#asked(given) } : {}),
      attempts,
      hints,
      spentMs,
    };
  }

  #marking(given: GivenTask, handed: HandedItem | undefined): Marking {
    if (handed?.answer === undefined) return NO_ANSWER;
    const text = canonicalText(handed.answer);
    const known = this.#known.get(given) ?? new Map<string, Marking>();
    this.#known.set(given, known);
    const marking = known.get(text) ?? markingOf(this.id, given, handed.answer, text);
    known.set(text, marking);
    return marking;
  }

  #asked(given: GivenTask): Readonly<Record<string, string>> {
    const asked = this.#words.get(given) ?? partWords(given);
    this.#words.set(given, asked);
    return asked;
  }

  #notes(given: GivenTask, handed: HandedItem | undefined): ItemNote[] {
    const { item, revision: marked } = this.#given;
    const { attempts: most, hints: areHintsAllowed } = this.#assignment;
    const assigned = 'revision' in item.task ? item.task.revision : undefined;
    const notes: ItemNote[] = [];
    if (assigned !== undefined && marked !== undefined && assigned !== marked) {
      notes.push({ code: 'assigned-revision', assigned, marked });
    }
    if (!handed) return notes;
    const { revision: worked, seed, attempts, hints } = handed;
    if (worked !== undefined && marked !== undefined && worked !== marked) {
      notes.push({ code: 'worked-revision', worked, marked });
    }
    if (given.kind === 'drill' && seed !== undefined && seed !== given.task.seed) {
      notes.push({ code: 'other-seed', worked: seed, given: given.task.seed });
    }
    if (most !== undefined && attempts > most) {
      notes.push({ code: 'attempts', most, made: attempts });
    }
    if (!areHintsAllowed && hints > 0) notes.push({ code: 'hints', shown: hints });
    return notes;
  }
}

function markingOf(id: string, given: GivenTask, data: unknown, text: string): Marking {
  const { task } = given;
  const where = `The answer to ${id}`;
  let answer: Answer;
  try {
    answer = checkDocument({ file: where, data, lineOf: () => undefined }, answerSchema);
    const { score, of, passed, parts } = markAnswer(where, task, answer);
    return {
      share: of > 0 ? score / of : 0,
      passed,
      parts,
      ...(text === startText(given) ? {} : { answer: text }),
      ...(answer.kind === 'option' ? { option: answer.option } : {}),
      hasMovedLock: score === 0 && parts.some((part) => part.passed),
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { ...NO_ANSWER, noMark: { code: 'unreadable', reason: reasonOf(error) } };
  }
}

/** The answer of somebody who did nothing, as text. */
const startText = ({ kind, task }: GivenTask): string | undefined =>
  kind === 'question' ? undefined : canonicalText({ kind: 'board', board: boardData(task.start) });
