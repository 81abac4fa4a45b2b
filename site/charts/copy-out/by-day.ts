/** Tokens of a picture that goes out: Day, on white. */
const white = ['--paper', '--sheet', '--on-control'] as const;

/**
 * What `read` finds while the page has the tokens of Day on white; the page is as before when it returns. All within one task,
 * so nothing of it is ever seen.
 */
export function byDay<T>(read: () => T): T {
  const root = document.documentElement;
  const theme = root.dataset.theme;
  root.dataset.theme = 'day';
  for (const name of white) root.style.setProperty(name, '#ffffff');
  try {
    return read();
  } finally {
    for (const name of white) root.style.removeProperty(name);
    if (theme === undefined) delete root.dataset.theme;
    else root.dataset.theme = theme;
    if (root.getAttribute('style') === '') root.removeAttribute('style');
  }
}
