/** A piece of work; it is told the number of the run, so that it can do something else each time. */
type Work = (run: number) => void;

/** Median time of a piece of work, in milliseconds, after it has run warm. */
export function medianMs(work: Work, budgetMs = 1500): number {
  warm(work, budgetMs / 4);
  return quantile(0.5, timesOf(work, budgetMs));
}

/** Turns that several pieces of work take. */
const TURNS = 8;

/**
 * Median times of several pieces of work, in milliseconds. They take turns, so that a machine which is slower at one
 * moment than at another is so for all of them.
 */
export function mediansMs(works: readonly Work[], budgetMs = 1500): readonly number[] {
  for (const work of works) warm(work, budgetMs / 4);
  const times = works.map((): number[] => []);
  for (let turn = 0; turn < TURNS; turn += 1) {
    works.forEach((work, index) => {
      times[index]?.push(...timesOf(work, budgetMs / TURNS));
    });
  }
  return times.map((some) => quantile(0.5, some));
}

function warm(work: Work, budgetMs: number): void {
  const until = performance.now() + budgetMs;
  for (let run = 0; run < 3 || (run < 300 && performance.now() < until); run += 1) work(run);
}

function timesOf(work: Work, budgetMs: number): readonly number[] {
  const times: number[] = [];
  const until = performance.now() + budgetMs;
  for (let run = 0; run < 5 || (run < 1000 && performance.now() < until); run += 1) {
    const started = performance.now();
    work(run);
    times.push(performance.now() - started);
  }
  return times;
}

/** The least of some times that a share of them, of 1, does not exceed: the nearest rank. */
export function quantile(share: number, times: readonly number[]): number {
  const sorted = times.toSorted((one, other) => one - other);
  return sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN;
}

/** Time of a long piece of work that runs once, in milliseconds. */
export function onceMs(work: () => void): number {
  const started = performance.now();
  work();
  return performance.now() - started;
}

/**
 * Time of a piece of work that is always the same, in milliseconds: by how much it differs from one moment to
 * another is what else the machine does.
 */
export const paceMs = (): number =>
  medianMs(() => {
    const numbers = Array.from({ length: 20_000 }, (_, index) => Math.imul(index, 16_777_619));
    numbers.sort((one, other) => one - other);
  }, 100);

/** Exponent of y ~ x^e: slope of the straight line through the logarithms, by least squares. */
export function growthExponent(points: readonly (readonly [x: number, y: number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (axis: 0 | 1) => logs.reduce((sum, one) => sum + one[axis], 0) / logs.length;
  const [mx, my] = [mean(0), mean(1)];
  const [top, bottom] = logs.reduce(
    ([a, b], [x, y]) => [a + (x - mx) * (y - my), b + (x - mx) ** 2],
    [0, 0],
  );
  return top / bottom;
}
