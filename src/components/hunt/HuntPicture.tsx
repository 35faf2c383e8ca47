import { useMemo, useRef } from 'preact/hooks';
import type { Address, Hunt, Owner } from '../../../simulator/index.ts';
import { layOut } from '../../drawing/lay-out.ts';
import type { Glow } from '../../drawing/light.ts';
import { drawRoom } from '../../drawing/room.ts';
import { type LevelScale, sourceName } from '../../text/index.ts';
import { DeskDrawing } from '../desk/DeskDrawing.tsx';
import { ownersToShow } from '../desk/owners-to-show.ts';
import { RoomParts } from '../desk/RoomPicture.tsx';
import type { Hands, Scene } from '../desk/scene.ts';
import { useInView } from '../desk/use-in-view.ts';
import { pointsOf } from './probe-points.ts';

interface Props {
  hunt: Hunt;
  /** Where something was read, in order. */
  probed: readonly Address[];
  selected: Owner;
  /** Whether there is room for one strip only, and neither box nor rack. */
  isNarrow: boolean;
  scale: LevelScale;
  onTouch: (address: Address) => void;
}

/** Nothing is lit: light would show where the signal stops. */
const UNLIT: Glow = { brightness: 0, copies: 1, isLoop: false, isSilent: false };
const unlit = (): Glow => UNLIT;

/** The room as it was written down, unlit. Touching something in it takes the meter there; marks say where it was read. */
export function HuntPicture({ hunt, probed, selected, isNarrow, scale, onTouch }: Props) {
  const { setup, meantSolution, source } = hunt;
  const box = useRef<HTMLElement>(null);
  const only = isNarrow ? selected : undefined;
  const desk = useMemo(
    () => layOut(setup.rig, ownersToShow(setup.rig, undefined, only)),
    [setup.rig, only],
  );
  const room = useMemo(
    () => drawRoom(setup, desk, { box: !isNarrow, rack: !isNarrow }),
    [setup, desk, isNarrow],
  );
  const scene = useMemo(
    (): Scene => ({
      id: 'hunt',
      setup,
      solution: meantSolution,
      follow: source,
      followed: { kind: 'source', source },
      light: unlit,
      selected,
      locked: new Set(),
      scale,
    }),
    [setup, meantSolution, source, selected, scale],
  );
  const touch = useRef(onTouch);
  touch.current = onTouch;
  // Nothing moves here: whatever a hand does to something only takes the meter there.
  const hands = useMemo(
    (): Hands => ({
      open: (owner, control) => touch.current(control ?? owner),
      send: (event) => {
        if ('address' in event) touch.current(event.address);
      },
      light: () => {},
    }),
    [],
  );
  const columns = [...room.desk.columns, ...room.box.map(({ column }) => column), ...room.devices];
  useInView(box, columns, selected);
  const points = useMemo(() => pointsOf(room), [room]);
  return (
    <section ref={box} class="desk-scroll" tabIndex={0} aria-label="Drawing of the room">
      <DeskDrawing
        drawing={room.desk}
        scene={scene}
        hands={hands}
        name={`The room as it was written down, with marks where the ${sourceName(setup.rig, source)} was read. The readings stand as text beside it.`}
      >
        <RoomParts room={room} scene={scene} hands={hands} />
        <g class="hunt-marks">
          {probed.map((place, index) => {
            const at = points.get(place);
            return (
              at && (
                <g key={`${index} ${place}`}>
                  <circle cx={at.x} cy={at.y} r={9} />
                  <text x={at.x} y={at.y + 4}>
                    {index + 1}
                  </text>
                </g>
              )
            );
          })}
        </g>
      </DeskDrawing>
    </section>
  );
}
