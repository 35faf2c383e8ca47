import { useCallback, useMemo, useRef, useState } from 'preact/hooks';
import {
  type Address,
  boxOwner,
  contradictionOf,
  faultId,
  type Hunt,
  hunt as huntOf,
  ownerOf,
  part,
  type Rig,
  readPlace,
} from '../../../simulator/index.ts';
import type { HuntChoice } from '../../share/hunt-link.ts';
import {
  complainerWords,
  complaintWords,
  contradictionSentence,
  type LevelScale,
  playerNames,
  readingSentence,
} from '../../text/index.ts';
import { useNarrow } from '../desk/use-narrow.ts';
import { HuntDebrief } from './HuntDebrief.tsx';
import { HuntPicture } from './HuntPicture.tsx';
import { HuntReadings } from './HuntReadings.tsx';
import { HuntTools, type Spot } from './HuntTools.tsx';
import { placeTouched } from './hunt-places.ts';
import { KeptHunt } from './KeptHunt.tsx';
import { useHunt } from './use-hunt.ts';

interface Props {
  rig: Rig;
  choice: HuntChoice;
  scale: LevelScale;
}

/** The hunt that was chosen, from its beginning. */
export function HuntRoom({ rig, choice, scale }: Props) {
  const hunt = useMemo(() => huntOf(rig, choice.level, choice.seed), [rig, choice]);
  return <Hunting key={`${choice.level} ${choice.seed}`} hunt={hunt} scale={scale} />;
}

/** One hunt: the complaint, the room as written down, the meter, what was read, and the debriefing. */
function Hunting({ hunt, scale }: { hunt: Hunt; scale: LevelScale }) {
  const { setup, complaint, source } = hunt;
  const { rig } = setup;
  const { snapshot, send, takeUp } = useHunt(hunt);
  const { steps } = snapshot.context;
  const root = useRef<HTMLDivElement>(null);
  const isNarrow = useNarrow(root);
  const [spot, setSpot] = useState((): Spot => spotAt(sourcePlace(source)));
  const touch = useCallback(
    (address: Address) => {
      const place = placeTouched(hunt, address);
      if (place) setSpot(spotAt(place));
    },
    [hunt],
  );
  const readings = useMemo(
    () => steps.flatMap((step) => ('probe' in step ? [readPlace(hunt, step.probe)] : [])),
    [hunt, steps],
  );
  const probed = useMemo(() => readings.map(({ place }) => place), [readings]);
  const isHunting = snapshot.matches('hunting');
  return (
    <div class="hunt" ref={root}>
      <blockquote class="hunt-complaint">
        <p>{complainerWords(rig, complaint)}</p>
        <p>“{complaintWords(rig, complaint)}”</p>
      </blockquote>
      <p class="prose">
        One thing in the room is not as the drawing shows it. The meter reads{' '}
        {playerNames(rig, [source])} alone, one place at a time.
      </p>
      {snapshot.matches('briefing') && (
        <p>
          <button type="button" class="button-main" onClick={() => send({ type: 'begin' })}>
            Take the meter
          </button>
        </p>
      )}
      {isHunting && <HuntTools hunt={hunt} spot={spot} onSpot={setSpot} send={send} />}
      {/* It is there before the first word: a region that comes with its text may not be read out. */}
      <p class="hunt-word" role="status">
        {wordOf()}
      </p>
      {snapshot.matches('found') && (
        <p>
          <button type="button" class="button-main" onClick={() => send({ type: 'look-back' })}>
            Look back
          </button>
        </p>
      )}
      <KeptHunt hunt={hunt} snapshot={snapshot} onTakeUp={takeUp} />
      {snapshot.matches('debriefing') && <HuntDebrief hunt={hunt} steps={steps} scale={scale} />}
      <div class="hunt-work">
        <HuntPicture
          hunt={hunt}
          probed={probed}
          selected={spot.owner}
          isNarrow={isNarrow}
          scale={scale}
          onTouch={touch}
        />
        {!snapshot.matches('briefing') && (
          <section aria-labelledby="hunt-readings">
            <h3 id="hunt-readings">Readings</h3>
            <HuntReadings hunt={hunt} readings={readings} scale={scale} />
            {isHunting && (
              <p>
                <button type="button" onClick={() => send({ type: 'give-up' })}>
                  Give up and see what it was
                </button>
              </p>
            )}
          </section>
        )}
      </div>
    </div>
  );

  /** What is said of the last step. */
  function wordOf(): string {
    const last = steps.at(-1);
    if (!last || snapshot.matches('debriefing')) return '';
    if (snapshot.matches('found')) return 'That is it. The room works again.';
    const reading = readings.at(-1);
    if ('probe' in last)
      return reading ? readingSentence(rig, reading, readings.length, scale) : '';
    const fault = hunt.faults.find((one) => faultId(one) === last.accuse);
    if (!fault) return '';
    const why = contradictionOf(hunt, fault, readings);
    return `That is not it. ${contradictionSentence(setup, why, complaint, scale)}`;
  }
}

const spotAt = (place: Address): Spot => ({ owner: ownerOf(place), place, fault: undefined });

/** Where the recording of a track comes in: the way begins there. */
const sourcePlace = (source: string): Address =>
  part(boxOwner(source.split('.')[0] ?? source), 'source');
