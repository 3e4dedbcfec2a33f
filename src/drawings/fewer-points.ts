/** A point in drawing units. Lines are drawn with what this file leaves, so it takes nothing from theirs. */
type Point = readonly [x: number, y: number];

/** How far a point lies from the straight line between two others; from the first, where both are one. */
function away([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const length = Math.hypot(dx, dy);
  return length === 0 ? Math.hypot(x - ax, y - ay) : Math.abs(dx * (y - ay) - dy * (x - ax)) / length;
}

/**
 * Which points of a line must be drawn, so that none of those left out lies farther from the line than `within`? The first and the last
 * always stay. In drawing units; by the method of Ramer (1972), and Douglas and Peucker (1973).
 * @example fewerPoints([[0, 0], [1, 0.01], [2, 0], [2, 5]], 0.1) // => [[0, 0], [2, 0], [2, 5]]
 */
export function fewerPoints(points: readonly Point[], within: number): readonly Point[] {
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last || points.length < 3) return points;
  let [farthest, place] = [within, 0];
  for (const [at, point] of points.slice(0, -1).entries()) {
    const far = away(point, first, last);
    // What is no number is not left out either: it must be seen that something is wrong.
    if (at > 0 && !(far <= farthest)) [farthest, place] = [far, at];
  }
  if (place === 0) return [first, last];
  return [
    ...fewerPoints(points.slice(0, place + 1), within).slice(0, -1),
    ...fewerPoints(points.slice(place), within),
  ];
}
