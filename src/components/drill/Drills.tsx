import { useRef, useState } from 'preact/hooks';
import {
  DRILL_CONCEPTS,
  DRILL_LEVELS,
  type DrillConcept,
  type DrillLevel,
} from '../../../simulator/index.ts';
import {
  DRILL_FRAGMENT,
  type DrillAsk,
  drillLink,
  drillName,
  readDrillName,
} from '../../share/drill-link.ts';
import { DRILL_NAMES } from '../../text/drill-names.ts';
import { Later, useLater } from '../desk/later.ts';
import { NotThereYet } from '../desk/NotThereYet.tsx';
import { useFragment } from '../desk/use-fragment.ts';
import { askForDrill } from './ask-worker.ts';
import type { MadeDrill } from './drill-worker.ts';

const drillTask = new Later(() => import('./DrillTask.tsx'));

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
  const task = useLater(drillTask);
  const latest = useRef('');

  const make = async (ask: DrillAsk) => {
    latest.current = drillName(ask);
    setConcept(ask.concept);
    setLevel(ask.level);
    setState({ code: 'making' });
    if (!task.there) void task.fetch();
    const answer = await askForDrill(ask).catch(() => undefined);
    // Another one may have been asked for meanwhile.
    if (latest.current !== drillName(ask)) return;
    if (!answer) setState({ code: 'failed' });
    else if (answer.made) setState({ code: 'made', ask, made: answer.made });
    else setState({ code: 'unproven' });
  };
  useFragment((fragment) => {
    if (!fragment.startsWith(DRILL_FRAGMENT)) return;
    const ask = readDrillName(fragment.slice(DRILL_FRAGMENT.length));
    if ('expected' in ask) {
      latest.current = '';
      const words = `The link holds no drill. Expected ${ask.expected}, found ${ask.found}.`;
      setState({ code: 'bad-link', words });
    } else if (latest.current !== drillName(ask)) void make(ask);
  });
  const askNew = () => {
    const ask = { concept, level, seed: newSeed() };
    void make(ask);
    window.history.replaceState(null, '', drillLink(ask));
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
        <button type="button" class="button-main" onClick={askNew}>
          New drill
        </button>
      </div>
      <p role="status">{state.code === 'made' ? madeText(state.made) : wordsOf(state)}</p>
      {state.code === 'made' && (
        <p>
          <a href={drillLink(state.ask)}>Link to this drill</a>
        </p>
      )}
      {state.code === 'made' && !task.there && <NotThereYet later={task} what="The desk" />}
      {state.code === 'made' && task.there && (
        <task.there.DrillTask key={drillName(state.ask)} made={state.made} />
      )}
    </>
  );
}

const madeText = ({ par }: MadeDrill): string =>
  `It can be done in ${par} ${par === 1 ? 'move' : 'moves'}: so many controls have to stand elsewhere.`;

const wordsOf = (state: Exclude<State, { code: 'made' }>): string =>
  state.code === 'bad-link' ? state.words : WORDS[state.code];

/** A seed that nobody had before, as far as chance goes. */
function newSeed(): string {
  const [number = 0] = crypto.getRandomValues(new Uint32Array(1));
  return number.toString(36);
}
