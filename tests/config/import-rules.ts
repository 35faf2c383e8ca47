import { posix } from 'node:path';

/** One import, as it is written in a file of the repository. */
export interface Import {
  /** The importing file, from the root of the repository, with `/` between folders. */
  readonly from: string;
  readonly line: number;
  /** What is imported, as written: `../rig/schema.ts`, `zod/mini`, `node:fs`. */
  readonly specifier: string;
}

/** The folders of `simulator/`. Each may import only from those before it. */
export const SIMULATOR_ROWS: readonly string[] = [
  'file',
  'units',
  'rig',
  'board',
  'circuit',
  'solve',
  'trace',
  'grade',
  'puzzle',
];

/** Rows that import nothing of the project, not even of a row before them. */
const FREE_STANDING: readonly string[] = ['file', 'units'];

/** All that `simulator/` may use from outside: small, without clock, network, page or disk. */
const SIMULATOR_PACKAGES = /^(yaml|zod\/mini|xstate|pure-rand(\/.+)?)$/;

const DOOR = 'simulator/index.ts';

/** Tests that look behind the door, because what they check lies there. */
const LOOKS_BEHIND_THE_DOOR = /^tests\/(simulator|published)\//;

/** Why an import breaks the direction of the project, or `undefined` if it keeps it. */
export function brokenRule({ from, specifier }: Omit<Import, 'line'>): string | undefined {
  const target = targetOf(from, specifier);
  if (from.startsWith('lessons/')) return 'lessons/ is data and imports nothing.';
  if (from.startsWith('simulator/')) return brokenInSimulator(from, specifier, target);
  if (target === undefined) return undefined;
  if (from.startsWith('src/') && target.startsWith('tests/')) {
    return 'src/ is what ships; it cannot import from tests/.';
  }
  if (target.startsWith('simulator/') && target !== DOOR && !LOOKS_BEHIND_THE_DOOR.test(from)) {
    return `from outside, only ${DOOR} is imported. Export there what is needed here.`;
  }
  return undefined;
}

function brokenInSimulator(
  from: string,
  specifier: string,
  target: string | undefined,
): string | undefined {
  if (target === undefined) {
    if (SIMULATOR_PACKAGES.test(specifier)) return undefined;
    return 'of packages, simulator/ uses only yaml, zod/mini, xstate and pure-rand.';
  }
  if (!target.startsWith('simulator/')) return `simulator/ knows nothing of ${folderOf(target)}/.`;
  if (from === DOOR) return undefined;
  if (target === DOOR) return `${DOOR} is for those outside; inside, import the file itself.`;

  const [importer, imported] = [rowOf(from), rowOf(target)];
  const [place, placeOfImported] = [rowIndex(importer), rowIndex(imported)];
  if (place < 0) return noRow(importer);
  if (placeOfImported < 0) return noRow(imported);
  if (importer === imported) return undefined;
  if (FREE_STANDING.includes(importer)) return `${importer}/ imports nothing of the project.`;
  if (placeOfImported < place) return undefined;
  return `${importer}/ comes before ${imported}/ (${SIMULATOR_ROWS.join(' ← ')}).`;
}

/** The imported file, from the root of the repository; `undefined` for a package. */
function targetOf(from: string, specifier: string): string | undefined {
  if (!specifier.startsWith('.')) return undefined;
  const [path = ''] = specifier.split('?');
  return posix.join(posix.dirname(from), path);
}

const folderOf = (path: string): string => path.split('/')[0] ?? path;
const rowOf = (path: string): string => path.split('/')[1] ?? path;
const rowIndex = (row: string): number => SIMULATOR_ROWS.indexOf(row);
const noRow = (name: string): string =>
  `simulator/${name} is no row. The rows are ${SIMULATOR_ROWS.join(', ')}.`;
