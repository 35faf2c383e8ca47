import type { OwnWords } from '../../../class/own-edit.ts';
import type { Catalogue } from './catalogue.ts';
import type { StepProps } from './own-step.ts';

interface Props extends StepProps {
  concepts: Catalogue['concepts'];
}

/** What a scenario says: its title, what is wanted, hints, and what there was to learn. */
export function OwnWordFields({ own, rig, edit, concepts }: Props) {
  const set = (words: Partial<OwnWords>) => edit({ type: 'words.set', words });
  return (
    <div class="fields">
      <label class="field-wide">
        Title
        <input
          type="text"
          maxLength={160}
          value={own.title}
          onInput={({ currentTarget }) => set({ title: currentTarget.value })}
        />
      </label>
      <label class="field-wide">
        What is wanted (an empty line begins a paragraph)
        <textarea
          rows={4}
          maxLength={6000}
          value={own.brief}
          onInput={({ currentTarget }) => set({ brief: currentTarget.value })}
        />
      </label>
      <label class="field-wide">
        Hints, one a line, the weakest first
        <textarea
          rows={3}
          maxLength={4000}
          value={own.hints}
          onInput={({ currentTarget }) => set({ hints: currentTarget.value })}
        />
      </label>
      <label class="field-wide">
        Said after success: what there was to learn
        <textarea
          rows={3}
          maxLength={1200}
          value={own.debrief}
          onInput={({ currentTarget }) => set({ debrief: currentTarget.value })}
        />
      </label>
      <label>
        The one idea that it trains
        <select
          value={own.concept}
          onChange={({ currentTarget }) => set({ concept: currentTarget.value })}
        >
          {concepts.map(({ id, term }) => (
            <option key={id} value={id}>
              {term}
            </option>
          ))}
        </select>
      </label>
      <label>
        Lit at first
        <select
          value={own.follow}
          onChange={({ currentTarget }) => set({ follow: currentTarget.value })}
        >
          {rig.box.tracks.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
