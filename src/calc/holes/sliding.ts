/**
 * For each place, the least of the values from `shortest` to `longest` steps further on; infinite where there are none.
 * A queue of places in rising order of value makes the walk linear.
 */
export function leastAhead(values: Float64Array, shortest: number, longest: number): Float64Array {
  const count = values.length;
  const result = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  if (longest < shortest) return result;
  const queue = new Int32Array(count);
  let [head, tail] = [0, 0];
  for (let place = count - 1; place >= 0; place--) {
    const entering = place + shortest;
    if (entering < count && entering >= 0) {
      const value = values[entering] ?? Number.POSITIVE_INFINITY;
      while (tail > head && (values[queue[tail - 1] ?? 0] ?? 0) >= value) tail--;
      queue[tail++] = entering;
    }
    while (tail > head && (queue[head] ?? 0) > place + longest) head++;
    if (tail > head) result[place] = values[queue[head] ?? 0] ?? Number.POSITIVE_INFINITY;
  }
  return result;
}
