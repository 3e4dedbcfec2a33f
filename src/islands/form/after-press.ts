/** Is a finger or a mouse down? */
let pressed = false;

if (typeof document !== 'undefined') {
  const note = (down: boolean) => () => {
    pressed = down;
  };
  addEventListener('pointerdown', note(true), true);
  for (const up of ['pointerup', 'pointercancel']) addEventListener(up, note(false), true);
}

/**
 * Does something once a press has done its work: a field is left as the press begins, and what is then told under it would move a button away
 * from under the finger, which would press nothing.
 */
export function afterPress(act: () => void): void {
  // A finger is up again before the field is left, but its click is still to come.
  if (!pressed) {
    setTimeout(act);
    return;
  }
  const ends = ['pointerup', 'pointercancel'];
  const done = (): void => {
    for (const end of ends) removeEventListener(end, done, true);
    setTimeout(act);
  };
  for (const end of ends) addEventListener(end, done, true);
}
