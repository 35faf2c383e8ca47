import {
  type Address,
  copiesOf,
  type Level,
  levelAt,
  levelsFrom,
  levelsToward,
  SILENCE,
  type Solution,
} from '../../simulator/index.ts';

/** Below this level, in dBu, a wire counts as carrying next to nothing; above the upper one it is as bright as it gets. */
export const DIMMEST_DBU = -40;
export const BRIGHTEST_DBU = 10;

/** How a wire looks: 0 is unlit, 1 as bright and thick as it gets; `unknown` where an unstable loop reaches. */
export type Brightness = number | 'unknown';

/** Steps of brightness: finer ones are not told apart by eye, and a wire would be drawn anew for each. */
const STEPS = 20;

/**
 * Brightness of a level: by the square of where its dB lie between the dimmest and the brightest, so that
 * usual levels are told apart, to the nearest step. Silence is 0, and nothing else is.
 */
export function brightnessOf(level: Level): Brightness {
  if (level === undefined) return 'unknown';
  if (level === -Infinity) return 0;
  const share = Math.max(0, level - DIMMEST_DBU) / (BRIGHTEST_DBU - DIMMEST_DBU);
  return Math.min(STEPS, Math.max(1, Math.round(STEPS * share ** 2))) / STEPS;
}

/** What is lit: a source forwards, all that comes to an output backwards, or the source on one way alone. */
export type Followed =
  | { readonly kind: 'source'; readonly source: string }
  | { readonly kind: 'output'; readonly output: Address }
  | { readonly kind: 'way'; readonly source: string; readonly places: ReadonlySet<Address> };

/** How a place is lit. */
export interface Glow {
  readonly brightness: Brightness;
  /** How many copies of one sound add up there; what is shown is whether there are several. */
  readonly copies: number;
  /** Whether it lies on a loop. */
  readonly isLoop: boolean;
  /** Whether nothing at all stands there, of any source. */
  readonly isSilent: boolean;
}

/** How each place of a circuit is lit. */
export type Light = (place: Address) => Glow;

const DARK: Glow = { brightness: 0, copies: 1, isLoop: false, isSilent: false };
/** Nothing is lit, where light would show what is asked. */
export const unlit: Light = () => DARK;

/** The light on a circuit. It is computed place by place, when it is asked for. */
export function lightOf(solution: Solution, followed: Followed): Light {
  const level = levelsOf(solution, followed);
  const copies = followed.kind === 'source' ? copiesOf(solution, followed.source) : undefined;
  const rings = new Set(solution.loops.flatMap(({ ring }) => ring));
  const known = new Map<Address, Glow>();
  return (place) => {
    const before = known.get(place);
    if (before) return before;
    const stages = solution.circuit.stagesAt.get(place) ?? [];
    const glow: Glow = {
      brightness: brightnessOf(level(place)),
      copies: Math.max(0, ...stages.map((stage) => copies?.[stage] ?? 0)),
      isLoop: stages.some((stage) => rings.has(stage)),
      isSilent: levelAt(solution, place) === -Infinity,
    };
    known.set(place, glow);
    return glow;
  };
}

/** The level that lights a place. */
function levelsOf(solution: Solution, followed: Followed): (place: Address) => Level {
  switch (followed.kind) {
    case 'source':
      return levelsFrom(solution, followed.source);
    case 'output':
      return levelsToward(solution, followed.output);
    case 'way': {
      const level = levelsFrom(solution, followed.source);
      return (place) => (followed.places.has(place) ? level(place) : SILENCE);
    }
  }
}
