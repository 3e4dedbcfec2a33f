/**
 * Moves places in rising order apart, each as little as need be, and keeps them between two ends if there is room.
 * @example spread([0, 1, 9], 2, 0, 10) // => [0, 2, 9]
 */
export function spread(wanted: readonly number[], apart: number, from: number, to: number): number[] {
  const gap = Math.min(apart, wanted.length > 1 ? (to - from) / (wanted.length - 1) : apart);
  const moved: number[] = [];
  for (const each of wanted)
    moved.push(Math.max(each, moved.length === 0 ? from : (moved.at(-1) ?? from) + gap));
  let limit = to;
  for (let place = moved.length - 1; place >= 0; place--) {
    moved[place] = Math.min(moved[place] ?? limit, limit);
    limit = (moved[place] ?? limit) - gap;
  }
  return moved;
}
