import { useMemo, useState } from 'preact/hooks';
import { CONTROL_ROOM, db, outputPlace, ownerLabel, part } from '../../../simulator/index.ts';
import { canPlay, type End } from '../../audition/audition.ts';
import { VOLUME } from '../../audition/calibration.ts';
import { SAMPLE_RATE } from '../../audition/instruments/piece.ts';
import { listenAt } from '../../audition/listening.ts';
import { BLOCK } from '../../audition/sounding-graph.ts';
import { gainText, guardSentence, hearingSentence, spokenGain } from '../../text/index.ts';
import type { Scene } from './scene.ts';
import { useAudition } from './use-audition.ts';

/** How much later a loop without a delay comes each time round, as one reads it. */
const BLOCK_MS = ((1000 * BLOCK) / SAMPLE_RATE).toFixed(1);

/** What is said after it has stopped, by why it did. */
const STOPPED: Readonly<Record<End, string>> = {
  asked: 'Stopped.',
  another: 'Stopped, since another desk plays.',
  hidden: 'Stopped, since the page went out of sight.',
};

/** Where one listens, how loud, start and stop. It never starts by itself. */
export function ListenPanel({ scene }: { scene: Scene }) {
  const { id, setup, solution } = scene;
  const { rig } = setup;
  const places = [
    ...(rig.desk.controlRoom
      ? [{ place: part(CONTROL_ROOM, 'out'), label: ownerLabel(rig, CONTROL_ROOM) }]
      : []),
    ...rig.outputs.map((output) => ({ place: outputPlace(output.id), label: output.label })),
  ];
  const [wanted, setWanted] = useState(places[0]?.place ?? '');
  // Another rig that was loaded may be without it.
  const place = places.some((one) => one.place === wanted) ? wanted : (places[0]?.place ?? '');
  const [volume, setVolume] = useState<number>(VOLUME.first);
  const listening = useMemo(() => listenAt(solution, place), [solution, place]);
  const { state, ended, start, stop } = useAudition(rig, listening, db(volume));

  if (!canPlay()) {
    return (
      <p>This browser has no Web Audio and cannot play anything. All else on this page works.</p>
    );
  }
  return (
    <>
      <p class="caution">
        <strong>Caution.</strong> Turn headphones and monitors down before you start, and up again
        slowly.
      </p>
      <div class="listen-controls">
        <button type="button" class="button-main" onClick={state === 'silent' ? start : stop}>
          {state === 'silent' ? 'Start' : 'Stop'}
        </button>
        <label>
          Listen at{' '}
          <select value={place} onChange={({ currentTarget }) => setWanted(currentTarget.value)}>
            {places.map(({ place: one, label }) => (
              <option key={one} value={one}>
                {label}
              </option>
            ))}
          </select>
        </label>
        <span class="listen-volume">
          <label for={`${id}-volume`}>Volume</label>
          <input
            id={`${id}-volume`}
            type="range"
            min={VOLUME.least}
            max={VOLUME.most}
            step={1}
            value={volume}
            aria-valuetext={spokenGain(volume)}
            onInput={({ currentTarget }) => setVolume(currentTarget.valueAsNumber)}
          />
          <span aria-hidden="true">{gainText(volume, 0)}</span>
        </span>
      </div>
      <p role="status">
        {state === 'tuning' && 'The players tune up…'}
        {state === 'sounding' && hearingSentence(rig, listening)}
        {state === 'silent' && ended && STOPPED[ended]}
      </p>
      {state === 'sounding' && listening.guard < 0 && <p>{guardSentence(listening.guard)}</p>}
      <details>
        <summary>What you hear</summary>
        <p>
          A small piece in eight bars, made by this page from oscillators and noise. Each track is
          as loud as the desk says, and goes through every wire, filter, delay and reverb as it
          stands now. Compressors stay at the gain that the whole music gives them; noise and
          clipping are left out. A loop that dies away comes {BLOCK_MS} ms later each time round,
          and one that grows is not played.
        </p>
      </details>
    </>
  );
}
