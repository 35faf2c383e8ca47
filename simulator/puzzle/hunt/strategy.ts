/** What one test can show: the outcome under each suspect, by suspect. Suspects with one outcome it cannot part. */
export type Test = readonly number[];

/** Suspects that still fit, by index, in rising order. */
export type Fitting = readonly number[];

/** The test to make next, and how many it takes in the worst case from there on, itself included. */
export interface Step {
  /** Index of the test. */
  readonly test: number;
  readonly worst: number;
}

/** How many sets of suspects are looked at before the search gives up being exact. */
const MOST_SETS = 4000;

/**
 * How to find one suspect among several by tests that are made one after the other, each chosen by what the ones
 * before have shown.
 *
 * On small sets it is the best there is: all tests are tried at each step, and what counts is how many it takes in
 * the worst case. Where that would take too long it splits as evenly as it can at each step (half-split), which
 * is the best on a plain chain.
 */
export class Strategy {
  /** Whether no strategy needs fewer tests in the worst case. */
  readonly isExact: boolean;
  readonly #tests: readonly Test[];
  readonly #steps = new Map<string, Step>();
  #mostSets = MOST_SETS;

  /** @param count how many suspects there are. Each two have to be parted by some test. */
  constructor(tests: readonly Test[], count: number) {
    this.#tests = tests;
    const all = Array.from({ length: count }, (_, suspect) => suspect);
    this.isExact = this.#searchAll(all);
  }

  /** How many tests it takes in the worst case from here on: none when one suspect is left. */
  worstOf(fitting: Fitting): number {
    return this.bestFor(fitting)?.worst ?? 0;
  }

  /** The test to make next; nothing when one suspect is left. @throws RangeError when no test parts them. */
  bestFor(fitting: Fitting): Step | undefined {
    return this.isExact ? this.#exact(fitting) : this.#half(fitting);
  }

  /** How many tests it takes in the worst case when this one comes next, itself included. */
  worstAfter(test: number, fitting: Fitting): number {
    const parts = partsOf(fitting, this.#tests[test] ?? []);
    return 1 + Math.max(...parts.map((part) => this.worstOf(part)));
  }

  #searchAll(all: Fitting): boolean {
    try {
      this.#exact(all);
      // What is asked for later are parts of it, left by tests that were not the best.
      this.#mostSets = Infinity;
      return true;
    } catch (error) {
      if (!(error instanceof TooMany)) throw error;
      this.#steps.clear();
      return false;
    }
  }

  #exact(fitting: Fitting): Step | undefined {
    if (fitting.length < 2) return undefined;
    const key = fitting.join();
    const known = this.#steps.get(key);
    if (known) return known;
    if (this.#steps.size > this.#mostSets) throw new TooMany();
    const splits = this.#splits(fitting);
    const most = Math.max(...splits.map(({ parts }) => parts.length));
    let best: Step | undefined;
    for (const { test, parts } of splits) {
      const [largest] = parts;
      const least = 1 + fewestFor(largest?.length ?? 0, most);
      if (best && least >= best.worst) continue;
      const worst = 1 + Math.max(...parts.map((part) => this.#exact(part)?.worst ?? 0));
      if (!best || worst < best.worst) best = { test, worst };
      if (best.worst === fewestFor(fitting.length, most)) break;
    }
    if (best) this.#steps.set(key, best);
    return best;
  }

  #half(fitting: Fitting): Step | undefined {
    if (fitting.length < 2) return undefined;
    const key = fitting.join();
    const known = this.#steps.get(key);
    if (known) return known;
    const [first] = this.#splits(fitting);
    if (!first) return undefined;
    const worst = 1 + Math.max(...first.parts.map((part) => this.worstOf(part)));
    const step = { test: first.test, worst };
    this.#steps.set(key, step);
    return step;
  }

  /** The tests that part these suspects, each way of parting them once, the most even first. */
  #splits(fitting: Fitting): readonly Split[] {
    const seen = new Map<string, Split>();
    this.#tests.forEach((outcomes, test) => {
      const parts = partsOf(fitting, outcomes);
      if (parts.length < 2) return;
      const key = parts.map((part) => part.join()).join(';');
      if (!seen.has(key)) seen.set(key, { test, parts: parts.sort((a, b) => b.length - a.length) });
    });
    if (seen.size === 0) {
      throw new RangeError(
        `Expected a test that parts suspects ${fitting.join(', ')}, found none.`,
      );
    }
    return [...seen.values()].sort((a, b) => largestOf(a) - largestOf(b));
  }
}

/** The search has seen more sets of suspects than it may. */
class TooMany extends Error {}

interface Split {
  readonly test: number;
  /** The largest first. */
  readonly parts: readonly Fitting[];
}

const largestOf = ({ parts: [largest] }: Split): number => largest?.length ?? 0;

/** Suspects by the outcome that a test has under each. */
export function partsOf(fitting: Fitting, outcomes: Test): Fitting[] {
  const parts = new Map<number | undefined, number[]>();
  for (const suspect of fitting) {
    const outcome = outcomes[suspect];
    const part = parts.get(outcome);
    if (part) part.push(suspect);
    else parts.set(outcome, [suspect]);
  }
  return [...parts.values()];
}

/** The fewest tests of so many outcomes that could tell so many suspects apart: the logarithm, rounded up. */
export function fewestFor(suspects: number, outcomes: number): number {
  let tests = 0;
  for (let told = 1; told < suspects; told *= Math.max(2, outcomes)) tests += 1;
  return tests;
}
