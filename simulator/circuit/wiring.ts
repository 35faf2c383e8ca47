import { addressesMoved, type Setup } from '../board/board.ts';
import { type Address, LEGS, type Leg, part } from '../rig/address.ts';
import { controls } from '../rig/controls.ts';
import type { Rig } from '../rig/schema.ts';
import type { Db, Dbu } from '../units/level.ts';
import type { PanRatios, StereoPanRatios } from '../units/pan.ts';
import type { ActiveStage, Law, Legs, Pair, Signal, Stage, Wire } from './circuit.ts';
import { type InputWire, type InputWires, inputWires, rewiredBetween } from './input-wires.ts';
import { type BuiltCircuit, noting, type Section } from './section.ts';

const SUM: Law = { kind: 'sum' };

/**
 * Collects stages and wires, section by section. Places are added in signal order; wires may come from anywhere,
 * but they are laid by the section of the stage that they lead into.
 *
 * Sections of the circuit before, of the same rig, are taken over as they are when no control has moved that they
 * were built from; the others are built again in their place.
 */
export class Wiring {
  readonly rig: Rig;
  readonly #setup: Setup;
  readonly #before: BuiltCircuit | undefined;
  readonly #moved: readonly Address[];
  readonly #inputWires: InputWires;
  readonly #stages: Stage[];
  readonly #wires: (readonly Wire[])[];
  /** The lists of wires that are laid now, by the stage that they lead into. */
  readonly #laid: Wire[][] = [];
  readonly #signals: Signal[] = [];
  readonly #stagesAt = new Map<Address, Legs>();
  readonly #active: Map<number, ActiveStage>;
  readonly #sections: Section[] = [];
  /** Wires that come from a place that was not added yet. */
  readonly #waiting: { readonly from: Address; readonly to: number; readonly ratio: number }[] = [];
  /** The stage that is added next, and the first one of its section. */
  #next = 0;
  #first = 0;
  #reads = new Set<Address>();

  constructor(setup: Setup, before?: BuiltCircuit) {
    const known = before?.setup.rig === setup.rig ? before : undefined;
    this.rig = setup.rig;
    this.#setup = setup;
    this.#before = known;
    const moved = known ? addressesMoved(known.setup.board, setup.board) : [];
    const cordMoved = moved.some((address) => controls(setup.rig).get(address)?.kind === 'cord');
    this.#inputWires = known && !cordMoved ? known.inputWires : inputWires(setup);
    // A cord may break a normal elsewhere, or load what else its output feeds.
    this.#moved = known ? [...moved, ...rewiredBetween(known.inputWires, this.#inputWires)] : moved;
    this.#stages = [...(known?.stages ?? [])];
    this.#wires = [...(known?.wires ?? [])];
    this.#active = new Map(known?.active);
  }

  /** Builds a section from the setup that is handed in, or takes it over. */
  section(build: (setup: Setup) => void): void {
    const known = this.#before?.sections[this.#sections.length];
    if (known && !this.#moved.some((address) => known.reads.has(address))) {
      this.#next = known.end;
      this.#sections.push(known);
      return;
    }
    this.#reads = new Set();
    this.#first = this.#next;
    build(noting(this.#setup, this.#reads));
    this.#sections.push({ reads: this.#reads, end: this.#next });
  }

  /** Something that several sections are built from: made once, when it is first asked for. Whoever asks depends on what it was made of. */
  shared<Made>(make: (setup: Setup) => Made): () => Made {
    let made: { readonly value: Made; readonly reads: ReadonlySet<Address> } | undefined;
    return () => {
      if (!made) {
        const reads = new Set<Address>();
        made = { value: make(noting(this.#setup, reads)), reads };
      }
      for (const address of made.reads) this.#reads.add(address);
      return made.value;
    };
  }

  /** The stages of a place that was added before. @throws RangeError when there is none. */
  legsAt(place: Address): Legs {
    const legs = (this.#before?.stagesAt ?? this.#stagesAt).get(place);
    if (!legs) throw new RangeError(`Expected a place of the circuit, but got ${place}.`);
    return legs;
  }

  /** Adds a place that sums what will be wired to it. */
  place(place: Address, width: 2, law?: Law): Pair;
  place(place: Address, width: 1 | 2, law?: Law): Legs;
  place(place: Address, width: 1 | 2, law: Law = SUM): Legs {
    const legs: Legs =
      width === 1
        ? [this.#stage(place, undefined, law)]
        : [this.#stage(place, 'l', law), this.#stage(place, 'r', law)];
    if (!this.#before) this.#stagesAt.set(place, legs);
    return legs;
  }

  /** Adds a place fed leg by leg from another one of the same width, through a ratio. */
  through(place: Address, from: Legs, ratio: number, law: Law = SUM): Legs {
    const to = this.place(place, from.length, law);
    this.join(from, to, ratio);
    return to;
  }

  /**
   * Adds a stereo place fed from both sides of a pan: from one leg by two ratios, or side by side.
   * A ratio of 0 is a closed wire, so that a path that was panned away can still be named.
   */
  panned(place: Address, from: Legs, { left, right }: PanRatios, law: Law = SUM): Pair {
    const to = this.place(place, 2, law);
    const [fromLeft, fromRight] = from.length === 2 ? from : [from[0], from[0]];
    this.wire(fromLeft, to[0], left);
    this.wire(fromRight, to[1], right);
    return to;
  }

  /** Adds a stereo place fed from two legs by a stereo panner, which folds the far side into the near one. */
  folded(place: Address, from: Pair, ratios: StereoPanRatios): Pair {
    const to = this.panned(place, from, {
      left: ratios.leftToLeft,
      right: ratios.rightToRight,
    });
    // Nothing folds over at the centre; a closed wire there would only seem to be a way.
    if (ratios.leftToRight > 0) this.wire(from[0], to[1], ratios.leftToRight);
    if (ratios.rightToLeft > 0) this.wire(from[1], to[0], ratios.rightToLeft);
    return to;
  }

  /** Wires one place to another: leg to leg, one leg to both, or both into one. */
  join(from: Legs, to: Legs, ratio: number): void {
    if (from.length === 2 && to.length === 2) {
      this.wire(from[0], to[0], ratio);
      this.wire(from[1], to[1], ratio);
      return;
    }
    for (const source of from) for (const target of to) this.wire(source, target, ratio);
  }

  /** @throws RangeError when the wire leads into a stage of another section, which would not know of it. */
  wire(from: number, to: number, ratio: number): void {
    const into = to < this.#first ? undefined : this.#laid[to];
    if (!into) throw new RangeError(`Expected a stage of this section, but got stage ${to}.`);
    into.push({ from, ratio });
  }

  /** The wire that the cords and normals lead into an input jack, if any. */
  wireInto(input: Address): InputWire | undefined {
    this.#reads.add(input);
    return this.#inputWires.get(input);
  }

  /** Wires the stage of an id (`rack.plate.out.r`) to another one. It may be added later. */
  wireFrom(from: Address, to: number, ratio: number): void {
    if (this.#before) this.wire(this.#stageOf(from), to, ratio);
    else this.#waiting.push({ from, to, ratio });
  }

  /** Adds the place where a track's signals enter, one for each side. */
  source(place: Address, track: string, stereo: boolean, level: Dbu, crest: Db): Legs {
    const legs = this.place(place, stereo ? 2 : 1, { kind: 'source', level });
    legs.forEach((stage, side) => {
      const id = stereo ? part(track, LEGS[side] ?? 'l') : track;
      if (!this.#before) this.#signals.push({ id, track, stage, level, crest });
    });
    return legs;
  }

  /** Makes the stages of a place active ones. Each leg has a noise of its own. */
  activate(legs: Legs, active: ActiveStage): void {
    for (const stage of legs) this.#active.set(stage, active);
  }

  /** The finished circuit. @throws RangeError when a wire comes from a place that was never added. */
  circuit(): BuiltCircuit {
    for (const { from, to, ratio } of this.#waiting) {
      this.#laid[to]?.push({ from: this.#stageOf(from), ratio });
    }
    return {
      stages: this.#stages,
      wires: this.#wires,
      signals: this.#before?.signals ?? this.#signals,
      stagesAt: this.#before?.stagesAt ?? this.#stagesAt,
      active: this.#active,
      setup: this.#setup,
      inputWires: this.#inputWires,
      sections: this.#sections,
    };
  }

  /** The stage of a mono place, or of one leg of a place. */
  #stageOf(id: Address): number {
    const [whole] = (this.#before?.stagesAt ?? this.#stagesAt).get(id) ?? [];
    if (whole !== undefined) return whole;
    const stage = this.legsAt(id.slice(0, -2))[id.endsWith('.l') ? 0 : 1];
    if (stage === undefined) throw new RangeError(`Expected a leg of a place, but got ${id}.`);
    return stage;
  }

  #stage(place: Address, leg: Leg | undefined, law: Law): number {
    const index = this.#next;
    const known = this.#stages[index];
    if (known && (known.place !== place || known.leg !== leg)) {
      throw new RangeError(`Expected ${known.id} as on any board of this rig, but got ${place}.`);
    }
    if (known?.law !== law) {
      this.#stages[index] = { id: leg ? part(place, leg) : place, place, leg, law };
    }
    const into: Wire[] = [];
    this.#wires[index] = into;
    this.#laid[index] = into;
    this.#next += 1;
    return index;
  }
}
