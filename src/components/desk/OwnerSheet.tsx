import { useMemo } from 'preact/hooks';
import { type Owner, ownerLabel, type Rig } from '../../../simulator/index.ts';
import { elsewhereSentences } from '../../text/index.ts';
import { ControlField } from './ControlField.tsx';
import { madeWhenChanged, setWhenChanged } from './drawn-when-changed.ts';
import { JackField } from './JackField.tsx';
import type { Hands, Scene } from './scene.ts';
import { ownerGroups, type SheetGroup, sheetOf } from './sheet.ts';

interface Props {
  scene: Scene;
  hands: Hands;
}

/** Everything that can be set at one strip, bus, track or device, with the way to choose another. */
export function OwnerSheet({ scene, hands }: Props) {
  const { setup, selected } = scene;
  const { rig } = setup;
  const groups = useMemo(() => (selected ? sheetOf(rig, selected) : []), [rig, selected]);
  const owner = selected && ownerLabel(rig, selected);
  return (
    <section class="sheet" aria-label="Controls">
      <SheetHead rig={rig} selected={selected} id={`${scene.id}-owner`} open={hands.open} />
      {selected &&
        elsewhereSentences(setup, selected).map((sentence) => (
          <p key={sentence} class="sheet-note">
            {sentence}
          </p>
        ))}
      <div class="sheet-groups">
        {groups.map((group) => (
          <GroupView
            key={group.title}
            group={group}
            name={`${owner}: ${group.title}`}
            scene={scene}
            hands={hands}
          />
        ))}
      </div>
    </section>
  );
}

interface HeadProps {
  rig: Rig;
  selected: Owner | undefined;
  id: string;
  open: Hands['open'];
}

/** Whose controls they are, and the way to others. */
const SheetHead = madeWhenChanged(({ rig, selected, id, open }: HeadProps) => {
  const groups = ownerGroups(rig);
  const all = groups.flatMap(({ owners }) => owners.map(({ owner }) => owner));
  const index = selected ? all.indexOf(selected) : -1;
  const go = (owner: Owner | undefined) => owner && open(owner);
  return (
    <div class="sheet-head">
      <button
        type="button"
        aria-label="Previous"
        disabled={index <= 0}
        onClick={() => go(all[index - 1])}
      >
        ‹
      </button>
      <label class="visually-hidden" for={id}>
        Controls of
      </label>
      <select id={id} value={selected} onChange={({ currentTarget }) => open(currentTarget.value)}>
        {groups.map(({ title, owners }) => (
          <optgroup key={title} label={title}>
            {owners.map(({ owner, label }) => (
              <option key={owner} value={owner}>
                {label}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      <button
        type="button"
        aria-label="Next"
        disabled={index >= all.length - 1}
        onClick={() => go(all[index + 1])}
      >
        ›
      </button>
    </div>
  );
});

interface GroupProps extends Props {
  group: SheetGroup;
  name: string;
}

const GroupView = setWhenChanged<GroupProps>(Group, ({ group }) =>
  group.items.map((item) => (item.kind === 'control' ? item.control.address : item.jack)),
);

function Group({ group: { title, items }, name, scene, hands }: GroupProps) {
  return (
    <section class="sheet-group" aria-label={name}>
      <h4>{title}</h4>
      {items.map((item) =>
        item.kind === 'control' ? (
          <ControlField
            key={item.control.address}
            control={item.control}
            scene={scene}
            hands={hands}
          />
        ) : (
          <JackField key={item.jack} jack={item.jack} scene={scene} hands={hands} />
        ),
      )}
    </section>
  );
}
