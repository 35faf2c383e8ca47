import { type Board, valueAt, withValues } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { BuiltCircuit } from '../circuit/section.ts';
import { failsByWires } from '../grade/holds.ts';
import type { Address } from '../rig/address.ts';
import { NONE, OPEN } from '../rig/control.ts';
import { type OpenWires, openWiresOf } from '../trace/open-wires.ts';
import type { Field, Ground, Turn } from './turns.ts';

/** A board that the search came to, with what of its task fails there whatever the levels are. */
export class Stand {
  readonly board: Board;
  readonly moved: ReadonlySet<Address>;
  /** Moved gains whose value the levels decide. */
  readonly free: readonly Address[];
  /** How many moves are left. */
  readonly left: number;
  readonly #field: Field;
  /** Where the last turn came from; nothing at the start. */
  readonly #last: { readonly from: Stand; readonly turn: Turn } | undefined;
  readonly #failing: (boolean | undefined)[] = [];
  #circuit: BuiltCircuit | undefined;

  /** @param left how many moves there are at the start. */
  constructor(field: Field, left: number, last?: { readonly from: Stand; readonly turn: Turn }) {
    this.#field = field;
    this.#last = last;
    this.left = left;
    const { from, turn } = last ?? {};
    this.moved = new Set(from && turn ? [...from.moved, turn.address] : []);
    this.free = from && turn?.isFree ? [...from.free, turn.address] : (from?.free ?? []);
    const { rig, start } = field.task;
    this.board = from && turn ? withValues(rig, from.board, { [turn.address]: turn.value }) : start;
  }

  /** Where a turn leads. */
  after(turn: Turn): Stand {
    return new Stand(this.#field, this.left - 1, { from: this, turn });
  }

  /** The circuit, as far as it matters which of its wires are open: gains that are tuned may stand elsewhere. */
  get circuit(): BuiltCircuit {
    this.#circuit ??= this.#built();
    return this.#circuit;
  }

  get wires(): OpenWires {
    return openWiresOf(this.circuit);
  }

  /** Whether a check fails whatever the levels are. */
  isAstray(ground: Ground): boolean {
    return this.#fails(this.#field.grounds.indexOf(ground));
  }

  /** Whether no check fails whatever the levels are, and no jack has two cords. It ends at the first that does. */
  get isWired(): boolean {
    if (this.doubled) return false;
    const indexes = [...this.#field.grounds.keys()];
    const before = this.#last?.from;
    // What failed before the last turn is the likeliest to fail still.
    if (before && indexes.some((index) => before.#failing[index] && this.#fails(index)))
      return false;
    return !indexes.some((index) => this.#fails(index));
  }

  /** Two input jacks that name one output jack, which takes one cord: one of them has to let go. */
  get doubled(): readonly [Address, Address] | undefined {
    const { task, cords } = this.#field;
    const inputs = new Map<string, Address>();
    for (const input of cords) {
      const output = String(valueAt({ rig: task.rig, board: this.board }, input));
      if (output === NONE || output === OPEN) continue;
      const other = inputs.get(output);
      if (other !== undefined) return [other, input];
      inputs.set(output, input);
    }
    return undefined;
  }

  #built(): BuiltCircuit {
    if (!this.#last) return this.#field.circuit;
    const { from, turn } = this.#last;
    if (turn.isTuning) return from.circuit;
    return buildCircuit({ rig: this.#field.task.rig, board: this.board }, from.circuit);
  }

  /** A check that none of the wires that the last turn moved has to do with is as it was. */
  #fails(index: number): boolean {
    const known = this.#failing[index];
    if (known !== undefined) return known;
    const isAsBefore = this.#last?.turn.isTuning || this.#last?.turn.concerns[index] === false;
    const fails = this.#last && isAsBefore ? this.#last.from.#fails(index) : this.#failsNow(index);
    this.#failing[index] = fails;
    return fails;
  }

  #failsNow(index: number): boolean {
    const { task, grounds } = this.#field;
    const claim = grounds[index]?.claim;
    return claim !== undefined && failsByWires(claim, task.rig, this.circuit);
  }
}
