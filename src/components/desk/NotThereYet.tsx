import type { LaterState } from './later.ts';

interface Props {
  later: LaterState<unknown>;
  /** What is missing, as the start of a sentence with a plural verb: `The ways`. */
  what: string;
}

/** Stands where something cannot be shown yet: that it comes, or that it could not be fetched and what to do. */
export function NotThereYet({ later: { hasFailed, fetch }, what }: Props) {
  if (!hasFailed) return <p>{what} come in a moment…</p>;
  return (
    <p class="problem" role="alert">
      <strong>{what} could not be fetched.</strong> Leave this page open, so that nothing you set is
      lost, and when you are online again:{' '}
      <button type="button" onClick={fetch}>
        Try again
      </button>
    </p>
  );
}
