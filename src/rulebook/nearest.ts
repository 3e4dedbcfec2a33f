/**
 * Which of these names did somebody most likely mean? Undefined where none is near.
 * Counts the letters to change, add or drop (Levenshtein); two of them may differ, or a third of the name, but never all.
 * @example nearest('widht', ['width', 'length']) // => 'width'
 */
export function nearest(written: string, names: readonly string[]): string | undefined {
  let best: { name: string; changes: number } | undefined;
  for (const name of names) {
    const changes = changesBetween(written.toLowerCase(), name.toLowerCase());
    if (!best || changes < best.changes) best = { name, changes };
  }
  if (!best || best.changes >= Math.max(written.length, best.name.length)) return undefined;
  return best.changes <= Math.max(2, best.name.length / 3) ? best.name : undefined;
}

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
