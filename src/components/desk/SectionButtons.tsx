import type { Sections } from '../../drawing/room-rows.ts';

const NAMES = [
  ['box', 'Box'],
  ['rack', 'Rack'],
] as const satisfies readonly (readonly [keyof Sections, string])[];

interface Props {
  sections: Sections;
  onChange: (sections: Sections) => void;
}

/** Which sections are drawn around the desk. A folded one stands in the drawing by the names of what it feeds. */
export const SectionButtons = ({ sections, onChange }: Props) => (
  <fieldset class="desk-bar-group sections">
    <legend>Also drawn</legend>
    {NAMES.map(([section, name]) => (
      <button
        key={section}
        type="button"
        aria-pressed={sections[section]}
        onClick={() => onChange({ ...sections, [section]: !sections[section] })}
      >
        {name}
      </button>
    ))}
  </fieldset>
);
