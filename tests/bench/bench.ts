/** Measures the simulator against the bars of the design, and against general solvers in the same run: `npm run bench`. */
import {
  boardOf,
  DRILL_CONCEPTS,
  DRILL_LEVELS,
  drillOf,
  grade,
  HUNT_LEVELS,
  hunt,
  levelAt,
  outputPlace,
  type Setup,
  simulate,
} from '../../simulator/index.ts';
import { gradeClass } from '../../src/class/gradebook.ts';
import { readCourse } from '../../src/course/index.ts';
import { benchSetup } from './bench-setup.ts';
import { classAssignment, classFiles } from './class-files.ts';
import { growthExponent, medianMs, mediansMs, onceMs, quantile } from './measure.ts';
import { equationsOf, mathjsRun, mlMatrixRun } from './other-solvers.ts';
import { SWEEPS, sweep } from './sweep.ts';
import { sweptPages } from './swept-pages.ts';

/** One line of the table. A bar that is the least allowed is held from above. */
interface Line {
  readonly what: string;
  readonly value: number;
  readonly unit: 'ms' | 'times' | '';
  readonly bar?: { readonly most: number } | { readonly least: number };
}

const SIZES = [8, 32, 128, 256];
const COMPARED_SIZE = 32;
const TASKS = 10;
const DRILLS = 40;
const LEARNERS = 1000;
const HUNT_ROOM = 'net-loft';

/** A fader moved, the setup simulated, all outputs read. */
function editToLevels(setup: Setup): (run: number) => void {
  const { rig, board } = setup;
  const places = rig.outputs.map(({ id }) => outputPlace(id));
  return (run) => {
    const moved = { rig, board: { ...board, 'desk.ch1.fader': -1 - (run % 40) / 4 } };
    const solution = simulate(moved);
    for (const place of places) levelAt(solution, place);
  };
}

/** Grades ten boards against the tasks of the course: right ones and mistaken ones in turn. */
function gradeHandIn(): () => void {
  const scenarios = [...readCourse().scenarios.values()];
  const tasks = Array.from({ length: TASKS }, (_, index) => {
    const scenario = scenarios[index % scenarios.length];
    const proof = scenario?.proofs[index % scenario.proofs.length];
    if (!scenario || !proof) throw new Error('Expected scenarios in the course.');
    const values = Object.fromEntries(
      Object.entries(proof.board).map(([at, value]) => [at, value === -Infinity ? '-inf' : value]),
    );
    return { scenario, values };
  });
  return () => {
    for (const { scenario, values } of tasks) {
      grade(scenario, boardOf('hand-in', scenario.rig, values));
    }
  };
}

/** For each concept and level of drills, the time that 95 of 100 take at most, from seed to proof. */
function drillLines(): Line[] {
  for (const concept of DRILL_CONCEPTS) drillOf(concept, 1, 'warm');
  return DRILL_CONCEPTS.flatMap((concept) =>
    DRILL_LEVELS.map((level): Line => {
      const times = Array.from({ length: DRILLS }, (_, index) =>
        onceMs(() => drillOf(concept, level, `bench${index}`)),
      );
      return {
        what: `drill of ${concept}, level ${level}, par proven, 95 of 100`,
        value: quantile(0.95, times),
        unit: 'ms',
        bar: { most: 100 },
      };
    }),
  );
}

/** A class is opened, read and marked, each hand-in once, as the gradebook and the command line do it. */
function gradeClassOnce(): number {
  const course = readCourse();
  const assignment = classAssignment(course);
  const files = classFiles(assignment, course, LEARNERS);
  return onceMs(() => {
    const run = gradeClass('bench', assignment, course, files);
    for (let step = run.next(); ; step = run.next()) {
      if (!step.done) continue;
      if (step.value.rows.length === LEARNERS) return;
      throw new Error(`Expected ${LEARNERS} rows, found ${step.value.rows.length}.`);
    }
  });
}

/** For each level of fault hunts, the time that 95 of 100 take at most, from seed to the best strategy. */
function huntLines(): Line[] {
  const rig = readCourse().rigs.get(HUNT_ROOM);
  if (!rig) throw new Error(`Expected the rig ${HUNT_ROOM} in the course.`);
  hunt(rig, HUNT_LEVELS.length, 'warm');
  return HUNT_LEVELS.map((_, index): Line => {
    const times = Array.from({ length: DRILLS }, (_one, seed) =>
      onceMs(() => hunt(rig, index + 1, `bench${seed}`)),
    );
    return {
      what: `fault hunt, level ${index + 1}, with its best strategy, 95 of 100`,
      value: quantile(0.95, times),
      unit: 'ms',
      bar: { most: 100 },
    };
  });
}

function measure(): Line[] {
  const setups = SIZES.map((strips) => [strips, benchSetup(strips)] as const);
  const medians = mediansMs(setups.map(([, setup]) => editToLevels(setup)));
  const edits = SIZES.map((strips, index) => [strips, medians[index] ?? Number.NaN] as const);
  const compared = setups.find(([strips]) => strips === COMPARED_SIZE)?.[1];
  const own = edits.find(([strips]) => strips === COMPARED_SIZE)?.[1];
  if (!compared || own === undefined)
    throw new Error(`Expected a desk of ${COMPARED_SIZE} strips.`);
  const equations = equationsOf(simulate(compared).circuit);
  const sparseFast = medianMs(mathjsRun(equations, 'slu'), 1000);
  const sparsePlain = onceMs(mathjsRun(equations, 'lup'));
  const dense = onceMs(mlMatrixRun(equations));
  const size = `${COMPARED_SIZE} strips, ${equations.size} equations`;
  return [
    ...edits.map(
      ([strips, value]): Line => ({
        what: `edit to all levels, ${strips} strips, 8 auxes, 8 subgroups, median`,
        value,
        unit: 'ms',
        ...(strips === COMPARED_SIZE ? { bar: { most: 1 } } : {}),
      }),
    ),
    { what: `mathjs slu and lusolve, ${size}`, value: sparseFast, unit: 'ms' },
    { what: `mathjs lup and lusolve, ${size}`, value: sparsePlain, unit: 'ms' },
    { what: `ml-matrix dense LU, ${size}`, value: dense, unit: 'ms' },
    {
      what: 'faster than mathjs sparse, the quicker of the two',
      value: Math.min(sparseFast, sparsePlain) / own,
      unit: 'times',
      bar: { least: 30 },
    },
    { what: 'faster than ml-matrix dense', value: dense / own, unit: 'times', bar: { least: 200 } },
    {
      // One source to a strip: strips × sources is the square, and would halve this figure.
      what: 'exponent of time against strips, 8 to 256, one source each',
      value: growthExponent(edits),
      unit: '',
      bar: { most: 1.1 },
    },
    {
      what: `grading a hand-in of ${TASKS} tasks, median`,
      value: medianMs(gradeHandIn()),
      unit: 'ms',
      bar: { most: 20 },
    },
    {
      what: `loading and grading ${LEARNERS} hand-ins of ${TASKS} tasks`,
      value: gradeClassOnce(),
      unit: 'ms',
      bar: { most: 20_000 },
    },
    ...drillLines(),
    ...huntLines(),
  ];
}

/** A fader swept in a browser, on the largest desk of a lesson and on the bench. */
async function measureSweeps(): Promise<Line[]> {
  const [lesson, bench] = sweptPages();
  const sweeps = await sweep([lesson, bench].filter((page) => page !== undefined));
  if ('skipped' in sweeps) {
    console.error(`SKIPPED: the fader sweep. ${sweeps.skipped}`);
    return [];
  }
  return sweeps.flatMap(({ quietest, middle, unrest }, index): Line[] => {
    const desk = index === 0 ? 'largest lesson desk' : 'bench';
    const sweepOf = `fader sweep, move to paint, ${desk}, processor 4 times slower`;
    return [
      {
        what: `${sweepOf}, p95 of the middle one of ${SWEEPS}`,
        value: middle.p95,
        unit: 'ms',
        ...(index === 0 ? { bar: { most: 50 } } : {}),
      },
      { what: `${sweepOf}, its median`, value: middle.median, unit: 'ms' },
      { what: `${sweepOf}, p95 of the quietest of ${SWEEPS}`, value: quietest.p95, unit: 'ms' },
      { what: 'the same work beside these sweeps, slowest to quickest', value: unrest, unit: '' },
    ];
  });
}

function verdictOf({ value, bar, unit }: Line): string {
  if (!bar) return '';
  const [limit, isMost] = 'most' in bar ? [bar.most, true] : [bar.least, false];
  const figure = `${isMost ? '≤' : '≥'} ${limit}${unit ? ` ${unit}` : ''}`;
  const holds = isMost ? value <= limit : value >= limit;
  return `${figure}  ${holds ? 'holds' : `falls short by ${figureOf(Math.abs(value - limit))}`}`;
}

const figureOf = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toFixed(3));

const lines = [...measure(), ...(await measureSweeps())];
if (process.argv.includes('--json')) {
  const data = lines.map((line) => ({ ...line, verdict: verdictOf(line) }));
  console.log(JSON.stringify(data, null, 2));
} else {
  const width = Math.max(...lines.map(({ what }) => what.length));
  for (const line of lines) {
    const value = `${figureOf(line.value)} ${line.unit}`.padEnd(14);
    console.log(`${line.what.padEnd(width)}  ${value}${verdictOf(line)}`.trimEnd());
  }
}
