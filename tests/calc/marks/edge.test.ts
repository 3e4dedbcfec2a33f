import { describe, expect, test } from 'vitest';
import { loadProject } from '../../../src/rulebook/project.ts';
import { type Box, distance, type Push, round } from './brute-force.ts';

/**
 * The checks of the hose marks, worked again from their entries without the calculation: the pushes of the brute force, and every 0.05 in of the stretch's edge
 * measured against them. What the workings in rules/checks/hose-marks.yaml say was measured was measured here.
 */

/** Every place on the stretch's edge, no farther than a step from the next. */
function edge({ left, right, up, down }: Box, step: number): [number, number][] {
  const corners: [number, number][] = [
    [-left, up],
    [right, up],
    [right, -down],
    [-left, -down],
  ];
  return corners.flatMap(([x, y], side) => {
    const [toX, toY] = corners[(side + 1) % corners.length] ?? [x, y];
    const steps = Math.max(1, Math.ceil(Math.hypot(toX - x, toY - y) / step));
    return Array.from({ length: steps }, (_, at): [number, number] => [
      x + ((toX - x) * at) / steps,
      y + ((toY - y) * at) / steps,
    ]);
  });
}

/** A flue as the hose meets it: its middle from the opening, and how near to that the middle of the hose can come. */
interface Flue {
  readonly x: number;
  readonly y: number;
  readonly near: number;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** A push that a flue lies across ends where the hose touches its ring. */
function stoppedBy(push: Push, { x, y, near }: Flue): Push {
  const along = x * Math.sin(radians(push.turned)) + y * Math.cos(radians(push.turned));
  const aside = Math.abs(x * Math.cos(radians(push.turned)) - y * Math.sin(radians(push.turned)));
  if (along <= 0 || aside >= near) return push;
  const stop = along - Math.sqrt(near ** 2 - aside ** 2);
  return stop < push.length ? { ...push, length: Math.max(0, stop) } : push;
}

/** So many pushes, without those that would leave the stretch at once. */
const pushesOf = (box: Box, count: number, standOff: number): Push[] =>
  round(box, count, standOff).filter(({ length }) => length > 1e-6);

const nearest = (pushes: readonly Push[], [x, y]: readonly [number, number]): number =>
  Math.min(...pushes.map((push) => distance(x, y, push)));

/** How far from every push is the place on the edge that is served worst? */
const farthest = (pushes: readonly Push[], places: readonly (readonly [number, number])[]): number =>
  places.reduce((most, place) => Math.max(most, nearest(pushes, place)), 0);

/** A length as a check writes it, in inches. */
const inches = (text: unknown): number =>
  [...String(text).matchAll(/([\d.]+) (ft|in)/g)].reduce(
    (sum, [, amount, unit]) => sum + Number(amount) * (unit === 'ft' ? 12 : 1),
    0,
  );

const STEP = 0.05;
/** A ring stands off its flue by two inches, and the hose is two inches thick: three from the flue's side to the middle of the hose. */
const RING_AND_HOSE = 2 + 1;
/** Between these a flexible hose may reach or not. */
const REACH = [25 * 12, 35 * 12] as const;

interface Worked {
  /** As though there were no flue. */
  readonly whole: readonly Push[];
  readonly pushes: readonly Push[];
  readonly places: readonly [number, number][];
}

function workedAgain(given: Readonly<Record<string, unknown>>): Worked {
  const [along, from, to] = [inches(given.along), inches(given.from), inches(given.to)];
  const across = inches(given.across);
  const fromLeft = given.starting_end === 'left hand';
  const box: Box = {
    left: fromLeft ? along - from : to - along,
    right: fromLeft ? to - along : along - from,
    up: inches(given.width) - across,
    down: across,
  };
  const places = edge(box, STEP);
  const standOff = inches(given.stand_off ?? '0 in');
  const stream = inches(given.stream_reach);
  for (let count = 4; count <= 36; count++) {
    const pushes = pushesOf(box, count, standOff);
    if (places.some((place) => nearest(pushes, place) > stream + 1e-9)) continue;
    const flues = ((given.flues ?? []) as Readonly<Record<string, unknown>>[]).map((flue): Flue => {
      const aside = inches(flue.along) - along;
      return {
        x: fromLeft ? aside : -aside,
        y: inches(flue.at) - across,
        near: inches(flue.across) / 2 + RING_AND_HOSE,
      };
    });
    return { whole: pushes, pushes: pushes.map((push) => flues.reduce(stoppedBy, push)), places };
  }
  throw new Error('found no number of pushes that serves the stretch, expected 4 to 36');
}

const checks = loadProject('refused').files.checks.flatMap(({ entry }) =>
  entry.calculation === 'hose-marks' ? [entry] : [],
);

describe('the checks of the hose marks, measured all along the edge', () => {
  test('are all there', () => expect(checks.length).toBeGreaterThanOrEqual(8));

  test.each(checks)('$title', ({ given, expect: expected, tolerance }) => {
    const { whole, pushes, places } = workedAgain(given);
    const lengths = pushes.map(({ length }) => length);
    const reach = given.reach === undefined ? REACH : ([inches(given.reach), inches(given.reach)] as const);
    const stream = inches(given.stream_reach);
    const found: Readonly<Record<string, number>> = {
      pushes: pushes.length,
      longest: Math.max(...lengths),
      shortest: Math.min(...lengths),
      all: lengths.reduce((sum, length) => sum + length, 0),
      may_not_reach: lengths.filter((length) => length > reach[0] && length <= reach[1]).length,
      beyond_reach: lengths.filter((length) => length > reach[1]).length,
      stopped: pushes.filter(({ length }, place) => length < (whole[place]?.length ?? 0) - 1e-9).length,
      missed: places.filter((place) => nearest(pushes, place) > stream + 1e-9).length * STEP,
    };
    for (const [figure, text] of Object.entries(expected)) {
      if (figure in found) {
        const counted = / push$/.test(String(text));
        const wanted = counted ? Number.parseFloat(String(text)) : inches(text);
        // A figure is given to the last place of its tolerance, in feet; what is missed, in inches.
        const off = figure === 'missed' ? Number(tolerance ?? 0.1) : counted ? 0 : 1e-6;
        expect(Math.abs((found[figure] ?? Number.NaN) - wanted), figure).toBeLessThanOrEqual(off);
      }
    }
  });
});

/** What the workings tell of the place that is served worst, in inches. */
describe('the farthest place of the edge', () => {
  const square: Box = { left: 48, right: 48, up: 48, down: 48 };
  const corner: Box = { left: 120, right: 0, up: 120, down: 0 };
  const long: Box = { left: 360, right: 360, up: 96, down: 60 };
  const farthestOf: readonly [
    title: string,
    box: Box,
    count: number,
    standOff: number,
    flue: Flue | undefined,
    far: number,
  ][] = [
    ['of a square stretch of 8 ft with four pushes is its corner', square, 4, 0, undefined, 48],
    ['of the same stretch with five', square, 5, 0, undefined, 35.194],
    ['of the same five that stop 6 in short', square, 5, 6, undefined, 35.436],
    ['of a stretch seen from its corner with eight directions', corner, 8, 0, undefined, 49.7],
    ['of a stretch seen from its corner with nine', corner, 9, 0, undefined, 47.67],
    ['of a stretch of 60 ft with 17 pushes', long, 17, 0, undefined, 91.1],
    ['of a stretch of 60 ft with 18', long, 18, 0, undefined, 62.8],
    ['with a flue 40 in up the slope', square, 5, 0, { x: 0, y: 40, near: 6 }, 35.85],
  ];
  test.each(farthestOf)('%s', (_, box, count, standOff, flue, far) => {
    const pushes = pushesOf(box, count, standOff).map((push) => (flue ? stoppedBy(push, flue) : push));
    // To the last place that is told.
    const places = String(far).split('.')[1]?.length ?? 0;
    expect(Math.abs(farthest(pushes, edge(box, STEP)) - far)).toBeLessThanOrEqual(10 ** -places);
  });
});
