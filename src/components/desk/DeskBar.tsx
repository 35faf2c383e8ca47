import type { ComponentChildren } from 'preact';
import {
  type Board,
  type BoardEvent,
  outputPlace,
  type Rig,
  standAlike,
} from '../../../simulator/index.ts';
import { madeWhenChanged } from './drawn-when-changed.ts';
import { laterView } from './later-view.tsx';
import type { RefusalProps } from './RefusalWord.tsx';
import type { Scene } from './scene.ts';
import { UnitChoice } from './UnitChoice.tsx';
import type { RunningBoard } from './use-board.ts';

const RefusalWord = laterView(
  undefined,
  async () => (await import('./RefusalWord.tsx')).RefusalWord,
  ({ refusal }: RefusalProps) => <p class="refusal">{refusal && 'That was refused.'}</p>,
);

interface Props {
  scene: Scene;
  snapshot: RunningBoard['snapshot'];
  send: (event: BoardEvent) => void;
  onFollow: (source: string) => void;
  /** Follows an output, by its id, backwards. */
  onFollowBack: (output: string) => void;
  /** Where “Start again” leads; to where the desk stood at first when left out. */
  home?: Board | undefined;
  children?: ComponentChildren;
}

/** What the value of an output begins with in the list of what is followed; no track has a name like it. */
const BACK = 'to ';

/** Above a desk: which source is lit, what levels are read in, undo and redo, and why the last edit was refused. */
export function DeskBar(props: Props) {
  const { scene, snapshot, send, onFollow, onFollowBack, home, children } = props;
  const { past, future, refusal, setup, start } = snapshot.context;
  const { followed } = scene;
  const back = setup.rig.outputs.find(
    (output) => followed.kind === 'output' && followed.output === outputPlace(output.id),
  );
  const to = home && { rig: start.rig, board: home };
  const isHome = standAlike(to ?? start, setup);
  const goHome = () => send(to ? { type: 'setup.load', setup: to } : { type: 'board.reset' });
  return (
    <div class="desk-bar">
      <Follow
        rig={setup.rig}
        value={back ? `${BACK}${back.id}` : scene.follow}
        onFollow={onFollow}
        onFollowBack={onFollowBack}
      />
      <UnitChoice unit={scene.scale.unit} />
      <span class="desk-bar-group">
        <button type="button" disabled={past.length === 0} onClick={() => send({ type: 'undo' })}>
          Undo
        </button>
        <button type="button" disabled={future.length === 0} onClick={() => send({ type: 'redo' })}>
          Redo
        </button>
        <button type="button" disabled={isHome} onClick={goHome}>
          Start again
        </button>
      </span>
      {children}
      <RefusalWord rig={setup.rig} refusal={refusal} />
    </div>
  );
}

interface FollowProps extends Pick<Props, 'onFollow' | 'onFollowBack'> {
  rig: Rig;
  value: string;
}

const Follow = madeWhenChanged(({ rig, value, onFollow, onFollowBack }: FollowProps) => (
  <label>
    <span class="followed-key" aria-hidden="true" /> Follow
    <select
      value={value}
      onChange={({ currentTarget: { value: wanted } }) => {
        if (wanted.startsWith(BACK)) onFollowBack(wanted.slice(BACK.length));
        else onFollow(wanted);
      }}
    >
      <optgroup label="A track, to where it goes">
        {rig.box.tracks.map(({ id: track, label }) => (
          <option key={track} value={track}>
            {label}
          </option>
        ))}
      </optgroup>
      <optgroup label="An output, back to what feeds it">
        {rig.outputs.map((output) => (
          <option key={output.id} value={`${BACK}${output.id}`}>
            {output.label}
          </option>
        ))}
      </optgroup>
    </select>
  </label>
));
