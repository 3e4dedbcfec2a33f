/** Where a host's own policy refuses the style that stands in a page, fetches it as the file that it also is. */
export function fetchRefusedStyle(): void {
  const held = document.querySelector<HTMLStyleElement>('style[data-file]');
  if (!held || held.sheet) return;
  const link = document.createElement('link');
  link.rel = 'stylesheet';
  link.href = held.dataset.file ?? '';
  held.replaceWith(link);
}
