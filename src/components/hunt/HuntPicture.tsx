import { useMemo, useRef } from 'preact/hooks';
import type { Address, Hunt, Owner } from '../../../simulator/index.ts';
import type { Point } from '../../drawing/drawing.ts';
import { layOut } from '../../drawing/lay-out.ts';
import { unlit } from '../../drawing/light.ts';
import { drawRoom } from '../../drawing/room.ts';
import { type LevelScale, playerNames } from '../../text/index.ts';
import { DeskDrawing } from '../desk/DeskDrawing.tsx';
import { ownersToShow } from '../desk/owners-to-show.ts';
import { Pane } from '../desk/Pane.tsx';
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
    () => drawRoom(setup, desk, { box: !isNarrow, rack: !isNarrow, folded: [] }),
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
      compare: () => {},
    }),
    [],
  );
  const columns = [...room.desk.columns, ...room.box.map(({ column }) => column), ...room.devices];
  useInView(box, columns, selected);
  const marks = Map.groupBy(probed.keys(), (index) => probed[index] ?? '');
  const points = useMemo(() => pointsOf(room), [room]);
  return (
    <section ref={box} class="desk-scroll" tabIndex={0} aria-label="Drawing of the room">
      <DeskDrawing
        drawing={room.desk}
        scene={scene}
        hands={hands}
        name={`The room as it was written down, with marks where ${playerNames(setup.rig, [source])} was read. The readings stand as text beside it.`}
      >
        <RoomParts room={room} scene={scene} hands={hands} />
        <Pane drawing={room.desk}>
          <g class="hunt-marks">
            {[...marks].map(([place, numbers]) => {
              const at = points.get(place);
              return (
                at && (
                  <Mark
                    key={place}
                    at={at}
                    numbers={numbers.map((index) => index + 1).join(', ')}
                  />
                )
              );
            })}
          </g>
        </Pane>
      </DeskDrawing>
    </section>
  );
}

/** Which readings were made at a place, beside it. */
function Mark({ at: { x, y }, numbers }: { at: Point; numbers: string }) {
  const width = 12 + 7 * numbers.length;
  return (
    <>
      <path class="hunt-mark-line" d={`M${x} ${y}h12`} />
      <rect x={x + 10} y={y - 9} width={width} height={18} rx={9} />
      <text x={x + 10 + width / 2} y={y + 4}>
        {numbers}
      </text>
    </>
  );
}
