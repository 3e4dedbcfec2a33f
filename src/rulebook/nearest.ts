/**
 * Which of these names did somebody most likely mean? Undefined where none is near.
 * Counts the letters to change, add or drop (Levenshtein); two of them may differ, or a third of the name, but never all.
 * @example nearest('widht', ['width', 'length']) // => 'width'
 */
export function nearest(written: string, names: readonly string[]): string | undefined {
  let best: { name: string; changes: number } | undefined;
  for (const name of names) {
    // As many letters must be added or dropped, at least; so a text without end is not even compared.
    if (Math.abs(written.length - name.length) > allowed(name)) continue;
    const changes = changesBetween(written.toLowerCase(), name.toLowerCase());
    if (!best || changes < best.changes) best = { name, changes };
  }
  if (!best || best.changes >= Math.max(written.length, best.name.length)) return undefined;
  return best.changes <= allowed(best.name) ? best.name : undefined;
}

const allowed = (name: string): number => Math.max(2, name.length / 3);

function changesBetween(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const swap = (previous[column - 1] ?? 0) + (a[row - 1] === b[column - 1] ? 0 : 1);
      current.push(Math.min(swap, (previous[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1));
    }
    previous = current;
  }
  return previous[b.length] ?? 0;
}
