import { type Address, type Leg, part } from '../rig/address.ts';
import type { Db, Dbu } from '../units/level.ts';
import type { PanRatios, StereoPanRatios } from '../units/pan.ts';
import type { ActiveStage, Circuit, Law, Signal, Stage, Wire } from './circuit.ts';

/** The stages of one place while a circuit is being built: one, or left and right. */
export type Legs = readonly [number] | readonly [left: number, right: number];

const SUM: Law = { kind: 'sum' };

/** Collects stages and wires. Places are added in signal order; wires may lead anywhere. */
export class Wiring {
  readonly #stages: Stage[] = [];
  readonly #wires: Wire[][] = [];
  readonly #signals: Signal[] = [];
  readonly #stagesAt = new Map<Address, readonly number[]>();
  readonly #active = new Map<number, ActiveStage>();

  /** Adds a place that sums what will be wired to it. */
  place(place: Address, width: 1 | 2, law: Law = SUM): Legs {
    const legs: Legs =
      width === 1
        ? [this.#stage(place, undefined, law)]
        : [this.#stage(place, 'l', law), this.#stage(place, 'r', law)];
    this.#stagesAt.set(place, legs);
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
  panned(place: Address, from: Legs, { left, right }: PanRatios, law: Law = SUM): Legs {
    const to = this.place(place, 2, law);
    const [fromLeft, fromRight] = from.length === 2 ? from : [from[0], from[0]];
    this.wire(fromLeft, to[0], left);
    this.wire(fromRight, to[1] ?? to[0], right);
    return to;
  }

  /** Adds a stereo place fed from two legs by a stereo panner, which folds the far side into the near one. */
  folded(place: Address, from: readonly [number, number], ratios: StereoPanRatios): Legs {
    const to = this.panned(place, from, {
      left: ratios.leftToLeft,
      right: ratios.rightToRight,
    });
    // Nothing folds over at the centre; a closed wire there would only seem to be a way.
    if (ratios.leftToRight > 0) this.wire(from[0], to[1] ?? to[0], ratios.leftToRight);
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

  wire(from: number, to: number, ratio: number): void {
    this.#wires[to]?.push({ from, ratio });
  }

  /** Adds a recorded signal: a stage of its own in a place. */
  signal(place: Address, leg: Leg | undefined, track: string, level: Dbu, crest: Db): number {
    const stage = this.#stage(place, leg, { kind: 'source', level });
    this.#stagesAt.set(place, [...(this.#stagesAt.get(place) ?? []), stage]);
    this.#signals.push({ id: leg ? `${track}.${leg}` : track, track, stage, level, crest });
    return stage;
  }

  /** Makes the stages of a place active ones. Each leg has a noise of its own. */
  activate(legs: Legs, active: ActiveStage): void {
    for (const stage of legs) this.#active.set(stage, active);
  }

  /** The stage of a jack. @throws RangeError when there is none. */
  jack(id: Address): number {
    const stage = this.#stagesAt.get(id)?.[0] ?? this.#stageOfLeg(id);
    if (stage === undefined) throw new RangeError(`Expected a jack of the circuit, but got ${id}.`);
    return stage;
  }

  /** The stage of a jack that is one leg of a place: `rack.plate.out.r`. */
  #stageOfLeg(id: Address): number | undefined {
    const place = id.slice(0, -2);
    return this.#stagesAt.get(place)?.find((stage) => this.#stages[stage]?.id === id);
  }

  circuit(): Circuit {
    return {
      stages: this.#stages,
      wires: this.#wires,
      signals: this.#signals,
      stagesAt: this.#stagesAt,
      active: this.#active,
    };
  }

  #stage(place: Address, leg: Leg | undefined, law: Law): number {
    const id = leg ? part(place, leg) : place;
    const index = this.#stages.push({ id, place, leg, law }) - 1;
    this.#wires.push([]);
    return index;
  }
}
