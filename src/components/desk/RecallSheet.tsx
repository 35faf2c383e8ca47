import { type PatchLine, patchLines, type RecallGroup, recallGroups } from '../../text/index.ts';
import type { Scene } from './scene.ts';
import { shownAtRest } from './shown-at-rest.tsx';

/** What one writes down to have a setup again: every control off its default, every cord, and room for notes. */
export const RecallSheet = shownAtRest(Sheet);

function Sheet({ scene: { setup } }: { scene: Scene }) {
  const groups = recallGroups(setup);
  return (
    <section class="recall" aria-labelledby="recall-title">
      <div class="recall-head">
        <h2 id="recall-title">Recall sheet</h2>
        <button type="button" onClick={() => window.print()}>
          Print it
        </button>
      </div>
      <details>
        <summary>{countsText(groups)}</summary>
        <p class="print-only">{setup.rig.label}</p>
        {groups.length === 0 ? (
          <p>Every control stands at its default.</p>
        ) : (
          <div class="recall-groups">
            {groups.map((group) => (
              <RecallTable key={group.owner} group={group} />
            ))}
          </div>
        )}
        <PatchList lines={patchLines(setup)} />
        <div class="recall-notes print-only">
          <h3>Notes</h3>
        </div>
      </details>
    </section>
  );
}

function countsText(groups: readonly RecallGroup[]): string {
  const controls = groups.reduce((sum, { lines }) => sum + lines.length, 0);
  return controls === 1 ? '1 control off its default' : `${controls} controls off their defaults`;
}

const RecallTable = ({ group: { owner, lines } }: { group: RecallGroup }) => (
  <table>
    <caption>{owner}</caption>
    <tbody>
      {lines.map(({ control, value }) => (
        <tr key={control}>
          <th scope="row">{control}</th>
          <td>{value}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

const PatchList = ({ lines }: { lines: readonly PatchLine[] }) => (
  <table class="patch-list">
    <caption>Patch list</caption>
    <thead>
      <tr>
        <th scope="col">From</th>
        <th scope="col">To</th>
      </tr>
    </thead>
    <tbody>
      {lines.map(({ from, to }) => (
        <tr key={to}>
          <td>{from}</td>
          <td>{to}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
