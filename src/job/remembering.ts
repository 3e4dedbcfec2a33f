/**
 * Some pure work that remembers its newest results. What it is given must be plain data: what reads the same in JSON is the same.
 * @example remembering((side) => side * side, 2)(3) // => 9
 */
export function remembering<Given, Found>(
  work: (given: Given) => Found,
  most: number,
): (given: Given) => Found {
  const known = new Map<string, Found>();
  return (given) => {
    const key = JSON.stringify(given);
    const before = known.get(key);
    if (before !== undefined) return before;
    const found = work(given);
    const [oldest] = known.keys();
    if (known.size >= most && oldest !== undefined) known.delete(oldest);
    known.set(key, found);
    return found;
  };
}
