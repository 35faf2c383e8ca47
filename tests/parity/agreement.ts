import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { checkDocument, readDocument } from '../../simulator/index.ts';
import { type Agreement, agreementSchema } from '../../src/course/index.ts';
import type { Run, Tally } from './comparison.ts';

/** The runs whose outcome the site states, each in a file of its own: they run side by side. */
export const RUNS = {
  'mathjs-flat': {
    engine: 'mathjs, sparse elimination',
    compares: 'Levels where nothing depends on frequency, 2 to 48 strips',
    allowedDb: 1e-4,
  },
  'ml-matrix-flat': {
    engine: 'ml-matrix, dense elimination',
    compares: 'Levels where nothing depends on frequency, 2 to 6 strips',
    allowedDb: 1e-4,
  },
  ngspice: {
    engine: 'ngspice, the setup as a circuit of controlled voltage sources',
    compares: 'Levels where nothing depends on frequency',
    allowedDb: 1e-4,
  },
  'mathjs-compressors': {
    engine: 'mathjs, solved again until no compressor moves',
    compares: 'Levels with compressors',
    allowedDb: 1e-4,
  },
  'mathjs-compressors-in-loops': {
    engine: 'mathjs, solved again until no compressor moves',
    compares: 'Levels with compressors in loops',
    allowedDb: 1e-4,
  },
  'mathjs-noise': {
    engine: 'mathjs, with the noise of every stage as a source',
    compares: 'Noise where nothing depends on frequency',
    allowedDb: 1e-4,
  },
  'mathjs-noise-spectra': {
    engine: 'mathjs, sparse elimination in complex numbers',
    compares: 'Noise with filters and delays, over the whole band',
    allowedDb: 1e-4,
  },
  'mathjs-spectra': {
    engine: 'mathjs, sparse elimination in complex numbers',
    compares: 'Responses with filters and delays, at six frequencies',
    allowedDb: 1e-4,
  },
  'web-audio-flat': {
    engine: 'Web Audio in a browser, in single precision',
    compares: 'Levels where nothing depends on frequency',
    allowedDb: 0.01,
  },
  'web-audio-spectra': {
    engine: 'Web Audio in a browser, in single precision',
    compares: 'Responses with filters and delays, at six frequencies',
    allowedDb: 0.01,
  },
} as const satisfies Record<string, Run>;
export type RunId = keyof typeof RUNS;

export const AGREEMENT_FOLDER = 'lessons/agreement';
const fileOf = (id: RunId): string => `${AGREEMENT_FOLDER}/${id}.yaml`;

/** With this in the environment the runs write their files instead of being held against them. */
const WRITES = process.env['WRITE_AGREEMENT'] === '1';
const HOW_TO_WRITE = 'WRITE_AGREEMENT=1 npm run test:unit -- tests/parity';

/**
 * Holds what a run came to against the file that the site states it from, or writes that file.
 *
 * @throws Error when the file says anything else than the run, or a smaller error than was measured.
 */
export function holdAgainstFile(id: RunId, tally: Tally): void {
  console.log(tally.line);
  const measured: Agreement = {
    ...RUNS[id],
    rigs: tally.rigs,
    looped: tally.looped,
    undecided: tally.undecided,
    comparisons: tally.comparisons,
    worstDb: stated(tally.worstDb),
  };
  if (WRITES) {
    writeFileSync(fileOf(id), `# Written by a run: ${HOW_TO_WRITE}\n${stringify(measured)}`);
    return;
  }
  const faults = faultsOf(readAgreement(id), measured, tally.worstDb);
  if (faults.length > 0) {
    throw new Error(`${fileOf(id)} ${faults.join(', and ')}. To write it anew: ${HOW_TO_WRITE}`);
  }
}

function readAgreement(id: RunId): Agreement | undefined {
  const file = fileOf(id);
  if (!existsSync(file)) return undefined;
  return checkDocument(readDocument(file, readFileSync(file, 'utf8')), agreementSchema);
}

/** What a file says that the run does not bear out. */
export function faultsOf(
  said: Agreement | undefined,
  measured: Agreement,
  worstDb: number,
): string[] {
  if (!said) return ['does not exist'];
  const keys = Object.keys(measured) as (keyof Agreement)[];
  const others = keys.filter((key) => key !== 'worstDb' && said[key] !== measured[key]);
  return [
    ...others.map((key) => `says ${key} ${said[key]}, where the run had ${measured[key]}`),
    ...(worstDb > said.worstDb
      ? [`says ${said.worstDb} dB at worst, where it was ${worstDb}`]
      : []),
  ];
}

/** Below this, in dB, is rounding of double precision, which is not the same on every machine. */
const ROUNDING_DB = 1e-9;

/** An error as it is stated: rounded up to one figure. */
export function stated(errorDb: number): number {
  const least = Math.max(errorDb, ROUNDING_DB);
  const exponent = Math.floor(Math.log10(least));
  const near = Number(least.toExponential(0));
  return near >= least ? near : Number((near + 10 ** exponent).toExponential(0));
}
