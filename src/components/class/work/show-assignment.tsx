import { render } from 'preact';
import { AssignmentPage } from './AssignmentPage.tsx';

/** Shows where an assignment is done in an element of the page. */
export function showAssignment(place: HTMLElement): void {
  place.replaceChildren();
  render(<AssignmentPage />, place);
}
