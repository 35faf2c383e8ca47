import type { ComponentChildren, ComponentType } from 'preact';
import { useCallback, useMemo, useRef, useState } from 'preact/hooks';
import {
  type Address,
  type Board,
  DESK_MAIN,
  deskOwner,
  type Owner,
  outputPlace,
  type Rig,
  simulate,
} from '../../../simulator/index.ts';
import { layOut } from '../../drawing/lay-out.ts';
import { type Followed, lightOf } from '../../drawing/light.ts';
import type { Sections } from '../../drawing/room-rows.ts';
import { scaleIn } from '../../text/index.ts';
import { DeskBar } from './DeskBar.tsx';
import { DeskPicture } from './DeskPicture.tsx';
import type { Against } from './DifferencePanel.tsx';
import { laterView } from './later-view.tsx';
import { useLevelUnit } from './level-unit.ts';
import { OwnerSheet } from './OwnerSheet.tsx';
import { ownersOnWay, ownersToShow } from './owners-to-show.ts';
import { ReadOuts } from './ReadOuts.tsx';
import type { RoomProps } from './RoomPicture.tsx';
import type { SectionsProps } from './SectionButtons.tsx';
import { type Comparison, type Hands, type Scene, stillScene } from './scene.ts';
import { hasOwner } from './sheet.ts';
import type { RunningBoard } from './use-board.ts';
import { useNarrow } from './use-narrow.ts';

const Announcer = laterView(undefined, async () => (await import('./Announcer.tsx')).Announcer);
const Drawers = laterView(undefined, async () => (await import('./Drawers.tsx')).Drawers);
const LightScale = laterView(undefined, async () => (await import('./LightScale.tsx')).LightScale);
const PathTable = laterView('The ways', async () => (await import('./PathTable.tsx')).PathTable);

/** How a desk is drawn with what is around it, and what chooses what of that is drawn. */
export interface Room {
  readonly Picture: ComponentType<RoomProps>;
  readonly Buttons: ComponentType<SectionsProps>;
  /** The owners that are open, of the desk. */
  readonly openOwners: (rig: Rig, folded: readonly string[]) => readonly Owner[];
}

interface Props {
  /** Sets this desk apart from others on the page. */
  id: string;
  board: RunningBoard;
  follow: string;
  onFollow: (source: string) => void;
  /** Owners to draw; all of the desk when left out. */
  show?: readonly Owner[] | undefined;
  /** Where “Start again” leads; to where the desk stood at first when left out. */
  home?: Board | undefined;
  /** Draws the desk with box and rack around it, and lets parts be folded. Left out, it is drawn alone. */
  room?: Room | undefined;
  /** What it can be compared with, besides what stood before. */
  others?: readonly Against[] | undefined;
  /** More to stand below the levels at the outputs. */
  below?: ((scene: Scene, hands: Hands) => ComponentChildren) | undefined;
  /** More for the bar above the drawing. */
  children?: ComponentChildren;
}

/** A desk that one can turn: its drawing, a sheet with every control, the levels at the outputs, the ways as text. */
export function Desk(props: Props) {
  const { id, board, follow, onFollow, show, home, room, others, below, children } = props;
  const { snapshot, solution, send } = board;
  const { setup, locked, start } = snapshot.context;
  const root = useRef<HTMLDivElement>(null);
  const [since] = useState({ setup, solution });
  const isNarrow = useNarrow(root);
  const firstOnWay = () => ownersOnWay(setup, solution, follow)[0] ?? DESK_MAIN;
  const [chosen, setSelected] = useState<Owner>(firstOnWay);
  // Another rig that was loaded may be without it.
  const selected = hasOwner(setup.rig, chosen) ? chosen : firstOnWay();
  const lastStrip = useRef<Owner>(selected);
  if (isStripOf(setup.rig, selected)) lastStrip.current = selected;

  const [output, setOutput] = useState<string>();
  const [comparison, compare] = useState<Comparison>();
  const [way, setWay] = useState<ReadonlySet<Address>>();
  const open = useCallback((owner: Owner, control?: Address) => {
    setSelected(owner);
    if (control) requestAnimationFrame(() => focusControl(root.current, control));
  }, []);
  const followSource = useCallback(
    (source: string) => {
      setOutput(undefined);
      setWay(undefined);
      onFollow(source);
    },
    [onFollow],
  );
  const followBack = useCallback((id: string) => {
    setWay(undefined);
    setOutput(id);
  }, []);
  const unit = useLevelUnit();
  const scale = useMemo(() => scaleIn(setup.rig, unit), [setup.rig, unit]);
  // They stay the same until something changes, for what compares them.
  const hands = useMemo((): Hands => ({ send, open, light: setWay, compare }), [send, open]);
  const followed = useMemo((): Followed => {
    if (way) return { kind: 'way', source: follow, places: way };
    if (output) return { kind: 'output', output: outputPlace(output) };
    return { kind: 'source', source: follow };
  }, [follow, output, way]);
  const light = useMemo(() => lightOf(solution, followed), [solution, followed]);
  const scene = useMemo(
    (): Scene => ({
      id,
      setup,
      solution,
      follow,
      followed,
      light,
      selected,
      locked,
      scale,
      start: start.rig === setup.rig ? start : undefined,
    }),
    [id, setup, solution, follow, followed, light, selected, locked, scale, start],
  );
  const instead = comparison?.instead;
  const picture = {
    scene: useMemo(
      () =>
        instead ? stillScene({ ...scene, setup: instead, solution: simulate(instead) }) : scene,
      [instead, scene],
    ),
    hands: instead ? undefined : hands,
    marks: comparison?.marks,
  };
  // A bus that is opened leaves the strip that stands beside it where it is.
  const only = isNarrow ? lastStrip.current : undefined;
  // On a narrow screen they are folded until they are asked for.
  const [asked, setAsked] = useState<Partial<Sections>>({});
  const sections = useMemo(
    (): Sections => ({ box: !isNarrow, rack: !isNarrow, folded: [], ...asked }),
    [isNarrow, asked],
  );
  const { folded } = sections;
  const shown = useMemo(
    () => (room && folded.length > 0 ? room.openOwners(setup.rig, folded) : show),
    [room, setup.rig, folded, show],
  );
  const desk = useMemo(
    () => layOut(setup.rig, ownersToShow(setup.rig, shown, only)),
    [setup.rig, shown, only],
  );
  return (
    <div
      class="desk"
      ref={root}
      onKeyDown={(event) => {
        if (!isUndoKey(event)) return;
        event.preventDefault();
        send({ type: event.shiftKey ? 'redo' : 'undo' });
      }}
    >
      <DeskBar
        scene={scene}
        snapshot={snapshot}
        send={send}
        home={home}
        onFollow={followSource}
        onFollowBack={followBack}
      >
        {room && <room.Buttons rig={setup.rig} sections={sections} onChange={setAsked} />}
        {children}
      </DeskBar>
      <div
        class={
          !room && desk.width < WIDE ? 'desk-work desk-work-beside' : 'desk-work desk-work-under'
        }
      >
        <div>
          {instead && <p class="drawn-instead">The other setup is drawn. It cannot be turned.</p>}
          {room ? (
            <room.Picture desk={desk} sections={sections} {...picture} />
          ) : (
            <DeskPicture drawing={desk} {...picture} />
          )}
          <LightScale />
        </div>
        <OwnerSheet scene={scene} hands={hands} />
        <div class="heard-at-outputs">
          <ReadOuts scene={scene} />
          <Drawers
            scene={scene}
            hands={hands}
            drawing={desk}
            isMeasured={below !== undefined}
            last={snapshot.context.past.at(-1)}
            others={others}
          />
          <section class="ways" aria-label="Ways as text">
            <h4>Ways as text</h4>
            <PathTable scene={scene} hands={hands} />
          </section>
          {below?.(scene, hands)}
        </div>
      </div>
      <Announcer scene={scene} since={since} />
    </div>
  );
}

const isStripOf = ({ desk }: Rig, owner: Owner): boolean =>
  desk.strips.some(({ id }) => deskOwner(id) === owner);

/** A drawing from this width on, in its own units, takes the whole width; the sheet lies under it. */
const WIDE = 900;

function focusControl(root: HTMLElement | null, control: Address): void {
  const fields = root?.querySelectorAll<HTMLElement>('.sheet [data-address]') ?? [];
  const field = [...fields].find(({ dataset }) => dataset['address']?.startsWith(control));
  field?.focus();
}

/** Ctrl+Z or ⌘Z outside of a text field, which has an undo of its own. */
function isUndoKey(event: KeyboardEvent): boolean {
  const isText = event.target instanceof HTMLInputElement && event.target.type === 'text';
  return !isText && (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z';
}
