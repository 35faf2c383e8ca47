import { useRef, useState } from 'preact/hooks';
import { type Rig, type Setup, standAlike } from '../../../simulator/index.ts';
import { SETUP_FRAGMENT } from '../../share/setup-fragment.ts';
import { BenchWord, type Word } from './BenchWord.tsx';
import { Desk } from './Desk.tsx';
import { Later, useLater } from './later.ts';
import { Measurements } from './later-measurements.ts';
import { laterView } from './later-view.tsx';
import { NotThereYet } from './NotThereYet.tsx';
import { useBoard } from './use-board.ts';
import { useFragment } from './use-fragment.ts';
import { WHOLE_ROOM } from './whole-room.tsx';

const FindingsList = laterView(
  'The findings',
  async () => (await import('./FindingsList.tsx')).FindingsList,
);
const RecallSheet = laterView(
  'The recall sheet and the patch list',
  async () => (await import('./RecallSheet.tsx')).RecallSheet,
);
const KeptBench = laterView(undefined, async () => (await import('./KeptBench.tsx')).KeptBench);
const setupExchange = new Later(() => import('./setup-exchange.ts'));

interface BenchProps {
  readonly rig: Rig;
  /** Addresses of the rooms of the bench, by the id of their rig. */
  readonly rooms: Readonly<Record<string, string>>;
}

/** Any rig, all controls open, with setups to save, to open, to link to and to print. */
export function BenchDesk({ rig, rooms }: BenchProps) {
  const board = useBoard({ setup: { rig, board: {} } });
  const { setup } = board.snapshot.context;
  const [wanted, setWanted] = useState('cello');
  const [word, setWord] = useState<Word>();
  // What lies in a file or a link, or is what the room begins with.
  const [kept, setKept] = useState(setup);
  const exchange = useLater(setupExchange, 'when asked');
  const picker = useRef<HTMLInputElement>(null);
  const tracks = setup.rig.box.tracks;
  const follow = tracks.some(({ id }) => id === wanted) ? wanted : (tracks[0]?.id ?? '');

  const load = (opened: Setup) => {
    setWord(undefined);
    board.send({ type: 'setup.load', setup: opened });
    setKept(opened);
  };
  /** Opens a setup file. A bad one leaves the board as it was and says what is wrong with it. */
  const open = async (file: File) => {
    const opened = await (await exchange.fetch())?.openSetup(file);
    if (!opened) return;
    if ('problems' in opened) setWord({ code: 'bad', what: 'file', lines: opened.problems });
    else load(opened.setup);
  };
  const save = async () => {
    const there = await exchange.fetch();
    if (!there) return;
    there.saveSetup(setup);
    setKept(setup);
  };
  const link = async () => {
    const linked = await (await exchange.fetch())?.copyLink(setup, rig);
    if (!linked) return;
    if ('problems' in linked) return setWord({ code: 'no-link', lines: linked.problems });
    setWord({ code: 'link', ...linked });
    setKept(setup);
  };

  // The address that the page was opened by may hold a setup, and so may one that is pasted later.
  useFragment(async (fragment) => {
    if (!fragment.startsWith(SETUP_FRAGMENT)) return;
    const linked = await (await exchange.fetch())?.openLink(fragment, rig);
    if (!linked) return;
    if ('problems' in linked) setWord({ code: 'bad', what: 'link', lines: linked.problems });
    else if ('setup' in linked) load(linked.setup);
    else {
      const room = rooms[linked.otherRig];
      setWord({ code: 'other-room', rig: linked.otherRig, href: room && `${room}${fragment}` });
    }
  });

  return (
    <>
      <Desk
        id="bench"
        board={board}
        follow={follow}
        onFollow={setWanted}
        room={WHOLE_ROOM}
        below={(scene, hands) => (
          <>
            <FindingsList scene={scene} hands={hands} onFollow={setWanted} />
            <Measurements scene={scene} />
            <RecallSheet scene={scene} />
          </>
        )}
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
          <button type="button" onClick={link}>
            Link to this setup
          </button>
        </span>
      </Desk>
      {exchange.hasFailed && <NotThereYet later={exchange} what="Opening, saving and linking" />}
      <KeptBench rig={rig} setup={setup} onTakeUp={load} isElsewhere={standAlike(setup, kept)} />
      <BenchWord word={word} />
    </>
  );
}
