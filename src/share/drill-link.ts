import {
  DRILL_CONCEPTS,
  DRILL_LEVELS,
  type DrillConcept,
  type DrillLevel,
  SEED,
} from '../../simulator/index.ts';

/** Which drill is asked for. */
export interface DrillAsk {
  readonly concept: DrillConcept;
  readonly level: DrillLevel;
  readonly seed: string;
}

/** The name of a drill, as it stands in its link: `insert-or-send.2.k7x2`. */
export const drillName = ({ concept, level, seed }: DrillAsk): string =>
  `${concept}.${level}.${seed}`;

/** What is wrong with the name of a drill. */
export interface BadDrillName {
  readonly expected: string;
  readonly found: string;
}

/** A drill by its name, or what is wrong with the name. Never throws. */
export function readDrillName(name: string): DrillAsk | BadDrillName {
  const [conceptName = '', levelName = '', seed = '', ...more] = name.slice(0, 80).split('.');
  const concept = DRILL_CONCEPTS.find((one) => one === conceptName);
  const level = DRILL_LEVELS.find((one) => String(one) === levelName);
  const expect = (expected: string, found: string): BadDrillName => ({
    expected,
    found: found ? `"${found.slice(0, 30)}"` : 'nothing',
  });
  if (!concept) return expect(`one of the concepts ${DRILL_CONCEPTS.join(', ')}`, conceptName);
  if (!level) return expect(`a level of ${DRILL_LEVELS.join(', ')}`, levelName);
  if (!SEED.test(seed)) return expect('a seed of 1 to 12 small letters and digits', seed);
  if (more.length > 0) return expect('nothing behind the seed', more.join('.'));
  return { concept, level, seed };
}
