/**
 * The integral of a smooth function by Simpson's rule, independent of every closed form. The places are bunched towards both ends
 * (x = middle + half · sin t), so that a curve that ends upright, as a half circle does, is followed just as well.
 */
export function integral(f: (x: number) => number, from: number, to: number, panels = 20_000): number {
  if (!(to > from)) return 0;
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  const step = Math.PI / panels;
  let sum = 0;
  for (let place = 0; place <= panels; place++) {
    const t = -Math.PI / 2 + place * step;
    const weight = place === 0 || place === panels ? 1 : place % 2 === 1 ? 4 : 2;
    sum += weight * f(middle + half * Math.sin(t)) * half * Math.cos(t);
  }
  return (sum * step) / 3;
}

/** The integral over pieces, the function being smooth inside each. */
export const integralOver = (f: (x: number) => number, ends: readonly number[]): number =>
  ends.slice(1).reduce((sum, end, place) => sum + integral(f, ends[place] ?? 0, end), 0);

/** Is a number within a share of another? */
export const within = (share: number, found: number, expected: number): boolean =>
  Math.abs(found - expected) <= share * Math.abs(expected);
