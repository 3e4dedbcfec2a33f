/** Beyond this the places lie on the ends to the last bit, and their weights are nothing. */
const REACH = 3.6;
const MOST_HALVINGS = 12;
const SETTLED = 1e-13;

/**
 * The integral of a smooth function between two places, by double exponential quadrature: x = middle + half · tanh(π/2 · sinh t),
 * a trapezoid sum in t whose step is halved until the sum settles to a part in 10^13. A curve that ends upright, as a half circle
 * does, is followed as well as any other. The other way round or over nothing it is 0.
 * @example Math.abs(integral((x) => 1 / x, 1, Math.E) - 1) < 1e-12 // => true
 */
export function integral(f: (x: number) => number, from: number, to: number): number {
  if (!(to > from)) return 0;
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  const at = (t: number): number => {
    const s = (Math.PI / 2) * Math.sinh(t);
    const weight = ((Math.PI / 2) * Math.cosh(t)) / Math.cosh(s) ** 2;
    return weight * f(middle + half * Math.tanh(s));
  };
  let step = REACH / 4;
  let sum = at(0);
  for (let place = 1; place * step <= REACH; place++) sum += at(place * step) + at(-place * step);
  let last = sum * step * half;
  for (let halving = 0; halving < MOST_HALVINGS; halving++) {
    step /= 2;
    for (let place = 1; place * step <= REACH; place += 2) sum += at(place * step) + at(-place * step);
    const now = sum * step * half;
    if (Math.abs(now - last) <= SETTLED * Math.abs(now)) return now;
    last = now;
  }
  return last;
}
