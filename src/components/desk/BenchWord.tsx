/** What the bench has to say about a file or a link. */
export type Word =
  | { readonly code: 'bad'; readonly what: 'file' | 'link'; readonly lines: readonly string[] }
  | { readonly code: 'no-link'; readonly lines: readonly string[] }
  /** The link is for a rig of another page; or of none that this site has. */
  | { readonly code: 'other-room'; readonly rig: string; readonly href: string | undefined }
  | { readonly code: 'link'; readonly link: string; readonly isCopied: boolean };

/** A word about a file or a link that was opened or made, read out when it comes. */
export function BenchWord({ word }: { word: Word | undefined }) {
  if (!word) return null;
  if (word.code === 'link') {
    return (
      <section class="bench-word" role="status">
        <p>
          <strong>{word.isCopied ? 'The link is copied.' : 'This is the link.'}</strong> Whoever
          opens it finds the desk as it stands now.
        </p>
        <p>
          <a class="long-link" href={word.link}>
            {word.link}
          </a>
        </p>
      </section>
    );
  }
  return (
    <section class="problem" role="alert">
      <p>
        <strong>{titleOf(word)}</strong> The desk stays as it was.
      </p>
      {word.code === 'other-room' ? (
        word.href && (
          <p>
            <a href={word.href}>Open it in the room that it is for</a>
          </p>
        )
      ) : (
        <ul>
          {word.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

function titleOf(word: Exclude<Word, { code: 'link' }>): string {
  switch (word.code) {
    case 'bad':
      return `That ${word.what} cannot be used.`;
    case 'no-link':
      return 'There is no link to this setup.';
    case 'other-room':
      return word.href
        ? 'That link is for another room of the bench.'
        : `That link is for a rig called ${word.rig}, which this site does not have.`;
  }
}
