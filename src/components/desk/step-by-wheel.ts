/**
 * Steps a control by the wheel while it has the focus, and keeps the page where it is. Without the focus the wheel
 * scrolls the page.
 *
 * @param step is called with 1 for up, −1 for down.
 */
export function stepByWheel(event: WheelEvent, step: (up: 1 | -1) => void): void {
  if (event.currentTarget !== document.activeElement || event.deltaY === 0 || event.ctrlKey) return;
  event.preventDefault();
  step(event.deltaY < 0 ? 1 : -1);
}
