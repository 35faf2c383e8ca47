import { render } from 'preact';
import { Gradebook } from './Gradebook.tsx';

/** Shows the gradebook in an element of the page. */
export function showGradebook(place: HTMLElement): void {
  place.replaceChildren();
  render(<Gradebook />, place);
}
