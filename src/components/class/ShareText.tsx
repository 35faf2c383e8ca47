import { shareText } from '../../text/index.ts';

interface Props {
  share: number;
  claimed?: number | undefined;
}

/** Shares are typed to a whole percent. What differs by less looks alike. */
const ALIKE = 0.005;

/** What was computed; and what was claimed, where that is another figure. */
export function ShareText({ share, claimed }: Props) {
  if (claimed === undefined || Math.abs(claimed - share) < ALIKE) return <>{shareText(share)}</>;
  return (
    <>
      {shareText(share)} <span class="claimed">claimed {shareText(claimed)}</span>
    </>
  );
}
