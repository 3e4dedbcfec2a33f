import fc from 'fast-check';
import { boards } from '../../src/calc/ceiling/fields.ts';
import { materials } from '../../src/calc/fill/material.ts';
import { obstacleKinds } from '../../src/calc/holes/fields.ts';
import { ways } from '../../src/calc/ways/compare.ts';
import type { JobEntries } from '../../src/job/job-file.ts';

/** A length in eighths of an inch, written in one of the ways people write it. */
const length = (least: number, most: number): fc.Arbitrary<string> =>
  fc
    .tuple(fc.integer({ min: Math.round(least * 8), max: Math.round(most * 8) }), fc.nat({ max: 3 }))
    .map(([eighths, way]) => {
      const inches = eighths / 8;
      if (way === 1) return `${eighths / 96} ft`;
      if (way === 2) return `${inches * 2.54} cm`;
      if (way === 3) return `${Math.floor(inches / 12)} ft ${inches % 12} in`;
      return `${inches} in`;
    });

const amount = (least: number, most: number, unit: string): fc.Arbitrary<string> =>
  fc
    .integer({ min: Math.round(least * 100), max: Math.round(most * 100) })
    .map((hundredths) => `${hundredths / 100} ${unit}`);

const maybe = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(of, { nil: undefined });

/** How far from what is built the sizes may go. */
interface Sizes {
  readonly roof: readonly [least: number, most: number];
  readonly width: readonly [least: number, most: number];
  readonly eave: readonly [least: number, most: number];
  readonly rise: readonly [least: number, most: number];
  readonly old: readonly [least: number, most: number];
  readonly spacing: readonly [least: number, most: number];
  readonly obstacle: readonly [least: number, most: number];
  readonly density: readonly [least: number, most: number];
}

const built: Sizes = {
  roof: [300, 960],
  width: [120, 190],
  eave: [2, 6],
  rise: [3, 18],
  old: [0, 2],
  spacing: [16, 48],
  obstacle: [2, 14],
  density: [0.5, 2.3],
};

const silly: Sizes = {
  roof: [0.125, 2400],
  width: [0.125, 480],
  eave: [0, 72],
  rise: [-1, 72],
  old: [0, 72],
  spacing: [0.125, 96],
  obstacle: [0.125, 120],
  density: [0.01, 8],
};

const jobOf = (sizes: Sizes): fc.Arbitrary<JobEntries> => {
  const obstacle = fc.record({
    what: fc.constantFrom(...obstacleKinds),
    along: length(0, sizes.roof[0] * 0.9),
    side: fc.constantFrom('back', 'front'),
    from_peak: length(0, 80),
    across: length(...sizes.obstacle),
  });
  const roof = fc.record({
    cover: fc.constantFrom('metal', 'shingles', 'membrane', 'other'),
    truss_spacing: maybe(length(...sizes.spacing)),
    first_truss: maybe(length(0, 24)),
    seam_spacing: maybe(length(...sizes.spacing)),
    first_seam: maybe(length(0, 48)),
    obstacles: fc.array(obstacle, { maxLength: 4 }),
  });
  return fc
    .record({
      sections: fc.constantFrom('single', 'double'),
      shape: fc.constantFrom('two-slope', 'bowed', 'one-slope', 'level', 'measured'),
      built: fc.integer({ min: 1950, max: 2025 }),
      length: length(...sizes.roof),
      width: length(...sizes.width),
      eave: fc.integer({ min: sizes.eave[0] * 8, max: sizes.eave[1] * 8 }),
      rise: fc.integer({ min: sizes.rise[0] * 8, max: sizes.rise[1] * 8 }),
      roof,
      board: fc.constantFrom(...boards),
      framing: length(1, 96),
      old: maybe(length(...sizes.old)),
      oldDensity: maybe(amount(0.1, 8, 'lb/ft3')),
      material: fc.constantFrom(...materials),
      density: amount(...sizes.density, 'lb/ft3'),
      bag: amount(1, 200, 'lb/bag'),
      ways: fc.record({
        chosen: maybe(fc.constantFrom(...ways)),
        gables: maybe(fc.constantFrom('one end', 'both ends')),
        edges: maybe(fc.constantFrom('one edge', 'both edges')),
      }),
      spread: maybe(length(6, 48)),
    })
    .map((job): JobEntries => {
      const [eave, ridge] = [`${job.eave / 8} in`, `${Math.max(0, job.eave + job.rise) / 8} in`];
      // A double-section home is told by one half of it, which neither a bow nor two slopes are.
      const half = job.sections === 'double' && (job.shape === 'two-slope' || job.shape === 'bowed');
      const shape = half ? 'one-slope' : job.shape;
      const points =
        shape === 'measured'
          ? [
              { from_eave: '0 in', depth: eave },
              { from_eave: job.width, depth: ridge },
            ]
          : undefined;
      return {
        name: 'A job',
        home: { built: job.built, sections: job.sections, length: job.length },
        cavity: {
          shape,
          width: job.width,
          eave,
          points,
          ...(shape === 'level' || shape === 'measured' ? {} : { ridge }),
        },
        roof: job.roof,
        ceiling: { board: job.board, framing: job.framing },
        old: { depth: job.old, density: job.oldDensity },
        fill: { material: job.material, density: job.density, bag_weight: job.bag },
        ways: job.ways,
        hose: { spread: job.spread },
      };
    });
};

/** A job on a home as they are built. */
export const builtJob = jobOf(built);

/** A job that reads well and is as odd as its fields allow. */
export const sillyJob = jobOf(silly);
