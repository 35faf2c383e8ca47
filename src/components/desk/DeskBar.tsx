import type { ComponentChildren } from 'preact';
import { type Board, type BoardEvent, movesBetween } from '../../../simulator/index.ts';
import { LEVEL_UNITS, type LevelUnit, refusalSentence } from '../../text/index.ts';
import { chooseLevelUnit } from './level-unit.ts';
import type { Scene } from './scene.ts';
import type { RunningBoard } from './use-board.ts';

interface Props {
  scene: Scene;
  snapshot: RunningBoard['snapshot'];
  send: (event: BoardEvent) => void;
  onFollow: (source: string) => void;
  /** Where “Start again” leads; to where the desk stood at first when left out. */
  home?: Board | undefined;
  children?: ComponentChildren;
}

/** Above a desk: which source is lit, what levels are read in, undo and redo, and why the last edit was refused. */
export function DeskBar({ scene, snapshot, send, onFollow, home, children }: Props) {
  const { past, future, refusal, setup, start } = snapshot.context;
  const id = `${scene.id}-follow`;
  const to = home ?? start.board;
  const isHome = start.rig === setup.rig && movesBetween(setup.rig, to, setup.board).length === 0;
  const goHome = () =>
    send(
      home
        ? { type: 'setup.load', setup: { rig: start.rig, board: home } }
        : { type: 'board.reset' },
    );
  return (
    <div class="desk-bar">
      <label for={id}>
        <span class="followed-key" aria-hidden="true" /> Follow
      </label>
      <select
        id={id}
        value={scene.follow}
        onChange={({ currentTarget }) => onFollow(currentTarget.value)}
      >
        {setup.rig.box.tracks.map(({ id: track, label }) => (
          <option key={track} value={track}>
            {label}
          </option>
        ))}
      </select>
      <label for={`${scene.id}-unit`}>Levels in</label>
      <select
        id={`${scene.id}-unit`}
        value={scene.scale.unit}
        onChange={({ currentTarget }) => chooseLevelUnit(currentTarget.value as LevelUnit)}
      >
        {LEVEL_UNITS.map((unit) => (
          <option key={unit}>{unit}</option>
        ))}
      </select>
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
      <p class="refusal" role="alert">
        {refusal && refusalSentence(setup.rig, refusal)}
      </p>
    </div>
  );
}
