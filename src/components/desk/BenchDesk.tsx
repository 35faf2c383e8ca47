import { useRef, useState } from 'preact/hooks';
import { movesBetween, type Rig, type Setup } from '../../../simulator/index.ts';
import { Desk } from './Desk.tsx';
import { Later, useLater } from './later.ts';
import { laterView } from './later-view.tsx';
import { NotThereYet } from './NotThereYet.tsx';
import { useAskBeforeLeaving } from './use-ask-before-leaving.ts';
import { useBoard } from './use-board.ts';

const FindingsList = laterView(
  'The findings',
  async () => (await import('./FindingsList.tsx')).FindingsList,
);
const setupExchange = new Later(() => import('./setup-exchange.ts'));

const standsAlike = (one: Setup, other: Setup): boolean =>
  one.rig === other.rig && movesBetween(one.rig, one.board, other.board).length === 0;

/** Any rig, all controls open, with setups to save and open. */
export function BenchDesk({ rig }: { rig: Rig }) {
  const board = useBoard({ setup: { rig, board: {} } });
  const { setup } = board.snapshot.context;
  const [wanted, setWanted] = useState('cello');
  const [problem, setProblem] = useState<readonly string[]>([]);
  // What lies in a file, or is what the room begins with.
  const [kept, setKept] = useState(setup);
  useAskBeforeLeaving(!standsAlike(setup, kept));
  const exchange = useLater(setupExchange, 'when asked');
  const picker = useRef<HTMLInputElement>(null);
  const tracks = setup.rig.box.tracks;
  const follow = tracks.some(({ id }) => id === wanted) ? wanted : (tracks[0]?.id ?? '');

  /** Opens a setup file. A bad one leaves the board as it was and says what is wrong with it. */
  const open = async (file: File) => {
    const opened = await (await exchange.fetch())?.openSetup(file);
    if (!opened) return;
    if ('problems' in opened) return setProblem(opened.problems);
    setProblem([]);
    board.send({ type: 'setup.load', setup: opened.setup });
    setKept(opened.setup);
  };
  const save = async () => {
    const there = await exchange.fetch();
    if (!there) return;
    there.saveSetup(setup);
    setKept(setup);
  };
  return (
    <>
      <Desk
        id="bench"
        board={board}
        follow={follow}
        onFollow={setWanted}
        below={(scene, hands) => <FindingsList scene={scene} hands={hands} onFollow={setWanted} />}
      >
        <span class="desk-bar-group">
          <button type="button" onClick={() => picker.current?.click()}>
            Open a setup…
          </button>
          <input
            ref={picker}
            type="file"
            accept=".yaml,.yml,.json"
            hidden
            aria-label="Setup file"
            onChange={({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              if (file) void open(file);
              currentTarget.value = '';
            }}
          />
          <button type="button" onClick={save}>
            Save the setup
          </button>
        </span>
      </Desk>
      {exchange.hasFailed && <NotThereYet later={exchange} what="Opening and saving" />}
      {problem.length > 0 && (
        <section class="problem" role="alert">
          <p>
            <strong>That file cannot be used.</strong> The desk stays as it was.
          </p>
          <ul>
            {problem.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
