/** Is a finger or a mouse down? */
let pressed = false;

/** What waits until it is up again. */
const waiting: (() => void)[] = [];

if (typeof document !== 'undefined') {
  const down = (): void => {
    pressed = true;
  };
  const up = (): void => {
    pressed = false;
    for (const act of waiting.splice(0)) setTimeout(act);
  };
  addEventListener('pointerdown', down, true);
  for (const end of ['pointerup', 'pointercancel']) addEventListener(end, up, true);
}

/**
 * Does something once a press has done its work: a field is left as the press begins, and what is then told under it would move a button away
 * from under the finger, which would press nothing.
 */
export function afterPress(act: () => void): void {
  // A finger is up again before the field is left, but its click is still to come.
  if (pressed) waiting.push(act);
  else setTimeout(act);
}
