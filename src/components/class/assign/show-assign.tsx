import { render } from 'preact';
import { AssignPage } from './AssignPage.tsx';
import type { Catalogue } from './catalogue.ts';

/** Shows where an assignment is made in an element of the page. @param catalogue as the page was built with it. */
export function showAssign(place: HTMLElement, catalogue: Catalogue): void {
  place.replaceChildren();
  render(<AssignPage catalogue={catalogue} />, place);
}
