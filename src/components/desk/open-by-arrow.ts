/**
 * Opens the list of a select on an arrow key, as some systems do by themselves. Where a closed select
 * moves on at once, arrows would plug a cord into every jack on the way, and stop at the first one in use.
 */
export function openByArrow(event: KeyboardEvent): void {
  const select = event.currentTarget;
  const isArrow = event.key === 'ArrowDown' || event.key === 'ArrowUp';
  if (!isArrow || event.altKey || !(select instanceof HTMLSelectElement)) return;
  if (!('showPicker' in select)) return;
  event.preventDefault();
  select.showPicker();
}
