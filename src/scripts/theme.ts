/** Which colours the site is shown in: the system's choice, or always one of the two. */
export type Theme = 'system' | 'light' | 'dark';

/** Where the choice is kept. `src/public/theme.js` reads the same key before the first paint. */
const STORAGE_KEY = 'tap-and-sum.theme';

export function isTheme(value: unknown): value is Theme {
  return value === 'system' || value === 'light' || value === 'dark';
}

/** The stored choice; `system` when there is none, or when storage is refused. */
export function chosenTheme(): Theme {
  try {
    const stored = localStorage.getItem(STORAGE_KEY);
    return isTheme(stored) ? stored : 'system';
  } catch {
    return 'system';
  }
}

/** Shows the site in a theme and keeps the choice, where storage allows it. */
export function applyTheme(theme: Theme): void {
  const root = document.documentElement;
  if (theme === 'system') delete root.dataset['theme'];
  else root.dataset['theme'] = theme;
  try {
    if (theme === 'system') localStorage.removeItem(STORAGE_KEY);
    else localStorage.setItem(STORAGE_KEY, theme);
  } catch {
    // Refused storage costs the memory of the choice, not the choice.
  }
}
