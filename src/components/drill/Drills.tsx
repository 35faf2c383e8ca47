import { useRef, useState } from 'preact/hooks';
import {
  DRILL_CONCEPTS,
  DRILL_LEVELS,
  type DrillConcept,
  type DrillLevel,
} from '../../../simulator/index.ts';
import { DRILL_FRAGMENT, NEW_DRILL_FRAGMENT } from '../../share/drill-fragment.ts';
import type { DrillAsk } from '../../share/drill-link.ts';
import { DRILL_NAMES } from '../../text/drill-names.ts';
import { Later, useLater } from '../desk/later.ts';
import { NotThereYet } from '../desk/NotThereYet.tsx';
import { useFragment } from '../desk/use-fragment.ts';
import { newSeed } from '../new-seed.ts';
import type { MadeDrill } from './drill-worker.ts';

const playing = new Later(() => import('./playing.ts'));

/** How it stands with the drill that was asked for. */
type State =
  | { readonly code: 'none' | 'making' | 'failed' | 'unproven' }
  | { readonly code: 'bad-link'; readonly words: string }
  | { readonly code: 'made'; readonly ask: DrillAsk; readonly made: MadeDrill };

const WORDS = {
  none: 'Choose a concept and a level, and ask for a drill.',
  making: 'A drill is being made and proven.',
  failed: 'The code that makes drills could not be fetched. Ask again.',
  unproven: 'No drill of this seed could be proven. Ask for another one.',
} as const;

/** Drills: chosen by concept and level, generated, and played. */
export function Drills() {
  const [concept, setConcept] = useState<DrillConcept>('insert-or-send');
  const [level, setLevel] = useState<DrillLevel>(1);
  const [state, setState] = useState<State>({ code: 'none' });
  const { there, hasFailed, fetch } = useLater(playing);
  const latest = useRef('');

  /** Makes the drill of a name, or says what is wrong with the name. */
  const make = async (name: string) => {
    latest.current = name;
    setState({ code: 'making' });
    const code = there ?? (await fetch());
    if (!code) return setState({ code: 'failed' });
    const ask = code.readDrillName(name);
    if ('expected' in ask) {
      const words = `The link holds no drill. Expected ${ask.expected}, found ${ask.found}.`;
      return setState({ code: 'bad-link', words });
    }
    setConcept(ask.concept);
    setLevel(ask.level);
    const answer = await code.askForDrill(ask).catch(() => undefined);
    // Another one may have been asked for meanwhile.
    if (latest.current !== name) return;
    if (!answer) setState({ code: 'failed' });
    else if (answer.made) setState({ code: 'made', ask, made: answer.made });
    else setState({ code: 'unproven' });
  };
  useFragment((fragment) => {
    if (fragment.startsWith(NEW_DRILL_FRAGMENT)) askNew(fragment.slice(NEW_DRILL_FRAGMENT.length));
    if (!fragment.startsWith(DRILL_FRAGMENT)) return;
    const name = fragment.slice(DRILL_FRAGMENT.length);
    if (latest.current !== name) void make(name);
  });
  /** @param of its concept and level: `insert-or-send.2`. */
  const askNew = (of: string) => {
    const name = `${of}.${newSeed()}`;
    void make(name);
    window.history.replaceState(null, '', `${DRILL_FRAGMENT}${name}`);
  };

  return (
    <>
      <div class="task-bar drill-choice">
        <label>
          Concept{' '}
          <select
            value={concept}
            onChange={({ currentTarget: { value } }) => {
              setConcept(DRILL_CONCEPTS.find((one) => one === value) ?? concept);
            }}
          >
            {DRILL_CONCEPTS.map((one) => (
              <option key={one} value={one}>
                {DRILL_NAMES[one]}
              </option>
            ))}
          </select>
        </label>
        <label>
          Level{' '}
          <select
            value={level}
            onChange={({ currentTarget: { value } }) => {
              setLevel(DRILL_LEVELS.find((one) => String(one) === value) ?? level);
            }}
          >
            {DRILL_LEVELS.map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
          </select>
        </label>
        <button type="button" class="button-main" onClick={() => askNew(`${concept}.${level}`)}>
          New drill
        </button>
      </div>
      <p role="status">{state.code === 'made' ? madeText(state.made) : wordsOf(state)}</p>
      {state.code === 'failed' && hasFailed && (
        <NotThereYet later={{ there, hasFailed, fetch }} what="Drills" />
      )}
      {state.code === 'made' && there && (
        <>
          <p>
            <a href={`${DRILL_FRAGMENT}${there.drillName(state.ask)}`}>Link to this drill</a>
          </p>
          <there.DrillTask ask={state.ask} made={state.made} />
        </>
      )}
    </>
  );
}

const madeText = ({ par }: MadeDrill): string =>
  `It can be done in ${par} ${par === 1 ? 'move' : 'moves'}: so many controls have to stand elsewhere.`;

const wordsOf = (state: Exclude<State, { code: 'made' }>): string =>
  state.code === 'bad-link' ? state.words : WORDS[state.code];
