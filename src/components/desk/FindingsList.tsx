import { findings, ownerOf } from '../../../simulator/index.ts';
import { findingSentence, mendingSentence, severityWord } from '../../text/index.ts';
import type { Hands, Scene } from './scene.ts';
import { shownAtRest } from './shown-at-rest.tsx';

interface Props {
  scene: Scene;
  hands: Hands;
  onFollow: (source: string) => void;
}

/** What an engineer would point at on a desk, how to mend it, and a button that shows where it is. */
export const FindingsList = shownAtRest(Findings);

function Findings({ scene, hands, onFollow }: Props) {
  const { id, setup, solution } = scene;
  const { rig } = setup;
  const found = findings(setup, solution);

  return (
    <section class="findings" aria-labelledby={`${id}-findings`}>
      <h2 id={`${id}-findings`}>What an engineer would point at</h2>
      {found.length === 0 ? (
        <p>Nothing.</p>
      ) : (
        <ul>
          {found.map((finding, index) => {
            const sentenceId = `${id}-finding-${index}`;
            return (
              <li
                key={`${finding.code} ${finding.mendAt}`}
                class={`finding finding-${finding.severity}`}
              >
                <p id={sentenceId}>
                  <strong>{severityWord(finding.severity)}.</strong> {findingSentence(rig, finding)}
                </p>
                <p>{mendingSentence(rig, finding)}</p>
                <button
                  type="button"
                  aria-describedby={sentenceId}
                  onClick={() => {
                    if (finding.follow !== undefined) onFollow(finding.follow);
                    hands.open(ownerOf(finding.mendAt), finding.mendAt);
                  }}
                >
                  Show me
                </button>
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}
