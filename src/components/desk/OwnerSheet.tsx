import { type Owner, ownerLabel } from '../../../simulator/index.ts';
import { elsewhereSentences } from '../../text/index.ts';
import { ControlField } from './ControlField.tsx';
import { JackField } from './JackField.tsx';
import type { Hands, Scene } from './scene.ts';
import { ownerGroups, sheetOf } from './sheet.ts';

interface Props {
  scene: Scene;
  hands: Hands;
}

/** Everything that can be set at one strip, bus, track or device, with the way to choose another. */
export function OwnerSheet({ scene, hands }: Props) {
  const { setup, selected } = scene;
  const groups = ownerGroups(setup.rig);
  const all = groups.flatMap(({ owners }) => owners.map(({ owner }) => owner));
  const index = selected ? all.indexOf(selected) : -1;
  const id = `${scene.id}-owner`;
  const go = (owner: Owner | undefined) => owner && hands.open(owner);
  return (
    <section class="sheet" aria-label="Controls">
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
        <select
          id={id}
          value={selected}
          onChange={({ currentTarget }) => hands.open(currentTarget.value)}
        >
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
      {selected &&
        elsewhereSentences(setup, selected).map((sentence) => (
          <p key={sentence} class="sheet-note">
            {sentence}
          </p>
        ))}
      <div class="sheet-groups">
        {selected &&
          sheetOf(setup.rig, selected).map(({ title, items }) => (
            <section
              key={title}
              class="sheet-group"
              aria-label={`${ownerLabel(setup.rig, selected)}: ${title}`}
            >
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
          ))}
      </div>
    </section>
  );
}
