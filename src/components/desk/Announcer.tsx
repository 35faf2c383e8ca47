import { useEffect, useRef, useState } from 'preact/hooks';
import { levelOf, movesBetween, outputPlace } from '../../../simulator/index.ts';
import { cutSentence, sourceName, spokenLevel, spokenMove } from '../../text/index.ts';
import type { Scene } from './scene.ts';

/** How long after the last edit a change is read out, in milliseconds. */
const PAUSE = 500;
/** The most moves that are read out one by one. */
const MOST_MOVES = 3;

/** What stood on a desk at some moment. */
export type Heard = Pick<Scene, 'setup' | 'solution'>;

interface Props {
  scene: Scene;
  /** What stood there before anybody touched it: what is moved until this code is there counts as well. */
  since: Heard;
}

/** Reads out once, half a second after the last edit, what was moved and what the followed source does now. */
export function Announcer({ scene, since }: Props) {
  const { setup, solution, follow } = scene;
  const said = useRef(since);
  const [text, setText] = useState('');
  useEffect(() => {
    if (said.current.setup === setup) return;
    const timer = setTimeout(() => {
      setText(changeInWords(said.current, { setup, solution }, follow));
      said.current = { setup, solution };
    }, PAUSE);
    return () => clearTimeout(timer);
  }, [setup, solution, follow]);
  return (
    <p class="announced visually-hidden" role="status">
      {text}
    </p>
  );
}

function changeInWords(before: Heard, after: Heard, follow: string): string {
  const { rig } = after.setup;
  if (before.setup.rig !== rig) return `Another setup was loaded: ${rig.label}.`;
  const moves = movesBetween(rig, before.setup.board, after.setup.board);
  const moved = moves.slice(0, MOST_MOVES).map((move) => spokenMove(rig, move));
  const rest = moves.length > MOST_MOVES ? [`and ${moves.length - MOST_MOVES} more`] : [];
  const outputs = rig.outputs.flatMap(({ id, label }) => {
    const was = levelOf(before.solution, follow, outputPlace(id));
    const is = levelOf(after.solution, follow, outputPlace(id));
    return was === is ? [] : [`${sourceName(rig, follow)} at ${label}: ${spokenLevel(is)}`];
  });
  const cut = cutSentence(after.setup);
  const cuts = cut === undefined || cut === cutSentence(before.setup) ? [] : [cut];
  return [...moved, ...rest, ...cuts, ...outputs]
    .map((one) => `${one}.`.replace('..', '.'))
    .join(' ');
}
