/** What the fragment of an address begins with that holds an assignment. It stands apart so that a page can look for it before it fetches what reads one. */
export const ASSIGNMENT_FRAGMENT = '#assignment=';

/** What of an address, or of a text that one pasted, is the link of an assignment; nothing when none is in it. */
export function assignmentFragment(address: string): string | undefined {
  const at = address.indexOf(ASSIGNMENT_FRAGMENT);
  return at < 0 ? undefined : address.slice(at).trim();
}
