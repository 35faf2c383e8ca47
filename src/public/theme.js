// Runs before the first paint, so that a chosen theme never flashes in from the other one.
// Storage may be refused (a private window, a strict setting): then the system decides.
(() => {
  const root = document.documentElement;
  root.dataset.scripted = '';
  try {
    const choice = localStorage.getItem('tap-and-sum.theme');
    if (choice === 'light' || choice === 'dark') root.dataset.theme = choice;
  } catch {}
})();
