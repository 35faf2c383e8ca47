import type { Rig } from '../../../simulator/index.ts';
import { deskParts } from '../../drawing/desk-parts.ts';
import type { Sections } from '../../drawing/room-rows.ts';

const AROUND = [
  ['box', 'Box'],
  ['rack', 'Rack'],
] as const satisfies readonly (readonly [keyof Sections, string])[];

export interface SectionsProps {
  rig: Rig;
  sections: Sections;
  onChange: (sections: Sections) => void;
}

/** Which sections are drawn. A folded one stands by the names of what it feeds, or as a row of levels. */
export function SectionButtons({ rig, sections, onChange }: SectionsProps) {
  const { folded } = sections;
  return (
    <fieldset class="desk-bar-group sections">
      <legend>Drawn</legend>
      {AROUND.map(([section, name]) => (
        <button
          key={section}
          type="button"
          aria-pressed={sections[section]}
          onClick={() => onChange({ ...sections, [section]: !sections[section] })}
        >
          {name}
        </button>
      ))}
      {deskParts(rig).map(({ name }) => {
        const isOpen = !folded.includes(name);
        const others = folded.filter((one) => one !== name);
        return (
          <button
            key={name}
            type="button"
            aria-pressed={isOpen}
            onClick={() => onChange({ ...sections, folded: isOpen ? [...others, name] : others })}
          >
            {name}
          </button>
        );
      })}
    </fieldset>
  );
}
