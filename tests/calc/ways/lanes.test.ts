import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavitySection } from '../../../src/calc/cavity/section.ts';
import { type Ring, runsInto } from '../../../src/calc/ways/flue-ring.ts';
import { gableLanes } from '../../../src/calc/ways/lanes.ts';
import { lanes } from '../../../src/calc/ways/lanes-declaration.ts';
import { amountIn, quantity } from '../../../src/quantity/quantity.ts';
import { integralOver } from '../quadrature.ts';
import { complaints, type Entries, figure, rules, within, worked } from '../told.ts';

const level: Entries = {
  length: '40 ft',
  ends: 'both ends',
  shape: 'level',
  width: '12 ft',
  eave: '10 in',
  spread: '2 ft',
  density: '1.5 lb/ft3',
  bag_weight: '30 lb/bag',
};

const inches = (amount: number) => quantity(amount, 'in');
const HOSE = amountIn(rules.value('access.hose.diameter'), 'in');
const CHORD = amountIn(rules.value('framing.truss.chord-depth'), 'in');
const MEMBER = amountIn(rules.value('framing.truss.member-width'), 'in');

interface Roof {
  readonly shape: 'two-slope' | 'one-slope' | 'bowed';
  readonly width: number;
  readonly eave: number;
  readonly rise: number;
}

/** The height of the roof by its own geometry: straight lines, or an arc by Pythagoras from its centre. */
function heightAt({ shape, width, eave, rise }: Roof, x: number): number {
  if (shape === 'one-slope') return eave + (rise * x) / width;
  const u = Math.abs(x - width / 2);
  if (shape === 'two-slope') return eave + rise * (1 - u / (width / 2));
  const r = ((width / 2) ** 2 + rise ** 2) / (2 * rise);
  return eave + rise - (r - Math.sqrt(Math.max(0, r * r - u * u)));
}

const sectionOf = ({ shape, width, eave, rise }: Roof) =>
  cavitySection({
    shape,
    width: inches(width),
    eave: inches(eave),
    ridge: inches(eave + rise),
    points: [],
  } as unknown as Parameters<typeof cavitySection>[0]);

const anyRoof: fc.Arbitrary<Roof> = fc.record({
  shape: fc.constantFrom('two-slope', 'one-slope', 'bowed'),
  width: fc.integer({ min: 80, max: 200 }),
  eave: fc.integer({ min: 0, max: 48 }).map((eighths) => eighths / 8),
  rise: fc.integer({ min: 8, max: 160 }).map((eighths) => eighths / 8),
});

const anyCase = fc.record({
  roof: anyRoof,
  length: fc.integer({ min: 100, max: 1000 }),
  spread: fc.integer({ min: 8, max: 60 }),
  old: fc.integer({ min: 0, max: 32 }).map((eighths) => eighths / 8),
  spacing: fc.option(fc.integer({ min: 16, max: 48 }), { nil: undefined }),
  ends: fc.constantFrom('both ends' as const, 'one end' as const),
  reach: fc.option(fc.integer({ min: 24, max: 800 }), { nil: undefined }),
});

type Case = typeof anyCase extends fc.Arbitrary<infer T> ? T : never;

const run = ({ roof, length, spread, old, spacing, ends, reach }: Case, rings: Ring[] = []) =>
  gableLanes(
    {
      section: sectionOf(roof),
      length: inches(length),
      spread: inches(spread),
      ends,
      oldDepth: inches(old),
      trussSpacing: spacing === undefined ? undefined : inches(spacing),
      reach: reach === undefined ? undefined : inches(reach),
      rings,
      density: quantity(1.5, 'lb/ft3'),
      bagWeight: quantity(30, 'lb/bag'),
    },
    rules,
  );

describe('lanes from the gable end, whatever the roof', () => {
  test('share the width evenly, none wider than the fill spreads, and one fewer would be', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        const { lanes: all, laneWidth } = run(each);
        const wide = amountIn(laneWidth, 'in');
        expect(all.length * wide).toBeCloseTo(each.roof.width, 9);
        expect(wide).toBeLessThanOrEqual(2 * each.spread + 1e-9);
        if (all.length > 1) expect(each.roof.width / (all.length - 1)).toBeGreaterThan(2 * each.spread);
        for (const [place, one] of all.entries()) {
          expect(amountIn(one.from, 'in')).toBeCloseTo(place * wide, 9);
          expect(amountIn(one.middle, 'in')).toBeCloseTo((place + 0.5) * wide, 9);
        }
      }),
    );
  });

  test('hold what the section holds by Simpson’s rule: roof above the old, less the chords where they have room', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        const { roof, length, old, spacing } = each;
        const chords = CHORD + Math.max(0, CHORD - old);
        const free = (x: number): number => {
          const above = Math.max(0, heightAt(roof, x) - old);
          return above - (spacing === undefined ? 0 : (Math.min(above, chords) * MEMBER) / spacing);
        };
        // The kinks, where the roof passes the old insulation and the chords upon it, found by halving.
        const kinks = [old, old + chords].flatMap((height) => [
          whereHigh(roof, height, 0, roof.shape === 'one-slope' ? roof.width : roof.width / 2),
          ...(roof.shape === 'one-slope' ? [] : [whereHigh(roof, height, roof.width, roof.width / 2)]),
        ]);
        const ends = [0, roof.width / 2, roof.width, ...kinks].sort((a, b) => a - b);
        const volume = (integralOver(free, ends) * length) / 1728;
        return within(1e-9, amountIn(run(each).volume, 'ft3'), volume);
      }),
      { numRuns: 30 },
    );
  });

  test('leave over what no push covers: nothing, a stretch in the middle, or the whole lane', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        const { roof, length, old, spacing, ends, reach } = each;
        const [low, high] = reach === undefined ? [300, 420] : [reach, reach];
        const pushes = ends === 'both ends' ? 2 : 1;
        for (const one of run(each).lanes) {
          const height = heightAt(roof, amountIn(one.middle, 'in'));
          const room = spacing === undefined ? height - old : height - CHORD - Math.max(old, CHORD);
          // A room within a hair of the hose may be told either way.
          if (Math.abs(room - HOSE) < 1e-6) continue;
          const left = (to: number) => (room > HOSE ? Math.max(0, length - pushes * to) : length);
          expect(amountIn(one.left, 'in')).toBeCloseTo(left(low), 9);
          expect(amountIn(one.leftAtBest, 'in')).toBeCloseTo(left(high), 9);
          const behind = amountIn(one.area, 'in2') * amountIn(one.left, 'in');
          expect(within(1e-9, amountIn(one.leftVolume, 'in3'), behind)).toBe(true);
        }
      }),
    );
  });

  test('never leave less over for a shorter reach, nor take fewer bags at a higher density', () => {
    fc.assert(
      fc.property(
        anyCase,
        fc.integer({ min: 1, max: 300 }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (each, more, times) => {
          const reach = each.reach ?? 300;
          const near = run({ ...each, reach });
          const far = run({ ...each, reach: reach + more });
          expect(far.left.amount).toBeLessThanOrEqual(near.left.amount + 1e-9);
          expect(far.leftVolume.amount).toBeLessThanOrEqual(near.leftVolume.amount + 1e-9);
          const entries = (density: number): Entries => ({
            ...level,
            density: `${density.toFixed(6)} lb/ft3`,
          });
          expect(figure(lanes, entries(1.5 * times), 'bags', 'bag')).toBeGreaterThanOrEqual(
            figure(lanes, entries(1.5), 'bags', 'bag'),
          );
        },
      ),
    );
  });

  test('more depth never holds less, more old insulation never more', () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 40 }), (each, eighths) => {
        const more = eighths / 8;
        const deeper = { ...each, roof: { ...each.roof, eave: each.roof.eave + more } };
        const volume = (of: Case) => amountIn(run(of).volume, 'ft3');
        expect(volume(deeper)).toBeGreaterThanOrEqual(volume(each) - 1e-9);
        expect(volume({ ...each, old: each.old + more })).toBeLessThanOrEqual(volume(each) + 1e-9);
      }),
    );
  });
});

/** Where between two places is the roof so high, by halving; an end where it never is. */
function whereHigh(roof: Roof, height: number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (heightAt(roof, middle) < height) low = middle;
    else high = middle;
  }
  return low;
}

describe('a flue in the cavity', () => {
  const ring = (along: number, at: number, across = 10): Ring => ({
    along: inches(along),
    at: inches(at),
    across: inches(across),
  });
  const bare: Case = {
    roof: { shape: 'one-slope', width: 144, eave: 10, rise: 4 },
    length: 480,
    spread: 24,
    old: 0,
    spacing: undefined,
    ends: 'both ends',
    reach: 400,
  };

  test('is never come nearer than its ring, at any place of any push', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 480 }),
        fc.integer({ min: 0, max: 144 }),
        fc.integer({ min: 4, max: 60 }),
        fc.constantFrom('both ends' as const, 'one end' as const),
        (along, at, across, ends) => {
          for (const one of run({ ...bare, ends }, [ring(along, at, across)]).lanes) {
            const middle = amountIn(one.middle, 'in');
            const pushes = [
              [0, amountIn(one.fromStart, 'in')],
              [480 - amountIn(one.fromFarEnd, 'in'), 480],
            ] as const;
            for (const [from, to] of pushes) {
              if (to - from < 1e-9) continue;
              const nearest = Math.hypot(Math.min(to, Math.max(from, along)) - along, middle - at);
              expect(nearest).toBeGreaterThanOrEqual((across + HOSE) / 2 - 1e-6);
            }
            expect(one.left.amount).toBeGreaterThanOrEqual(0);
            expect(one.leftVolume.amount).toBeGreaterThanOrEqual(0);
            expect(one.leftVolume.amount).toBeLessThanOrEqual(one.volume.amount + 1e-9);
          }
        },
      ),
    );
  });

  test('keeps a hose short only of its own ring: what is left between two pushes, neither could still take', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 480 }),
        fc.integer({ min: 4, max: 60 }),
        fc.integer({ min: 24, max: 480 }),
        (along, across, reach) => {
          // Its ring stands on the line of the middle lane of three, at 72 in.
          const one = run({ ...bare, reach }, [ring(along, 72, across)]).lanes[1];
          if (!one) throw new Error('expected three lanes');
          const [start, far] = [amountIn(one.fromStart, 'in'), amountIn(one.fromFarEnd, 'in')];
          const keptOff = (across + HOSE) / 2;
          // By hand: each end as far as its reach and the ring; where they would meet, the lane is full.
          const most = [
            Math.min(reach, Math.max(0, along - keptOff)),
            Math.min(reach, Math.max(0, 480 - along - keptOff)),
          ];
          expect(amountIn(one.left, 'in')).toBeCloseTo(480 - (most[0] ?? 0) - (most[1] ?? 0), 6);
          expect(start).toBeCloseTo(most[0] ?? 0, 6);
          expect(far).toBeCloseTo(most[1] ?? 0, 6);
        },
      ),
    );
  });

  test('takes its column out of the lanes it stands in, each its part', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 124 }), fc.integer({ min: 4, max: 40 }), (at, across) => {
        const without = amountIn(run(bare).volume, 'in3');
        const taken = without - amountIn(run(bare, [ring(200, at, across)]).volume, 'in3');
        return within(1e-9, taken, (Math.PI / 4) * across * across * heightAt(bare.roof, at));
      }),
    );
  });

  /** A circle of radius 5 met 3 aside is 4 before and 4 behind its middle: 3-4-5. */
  test.each([
    [10, 3, 5, { from: 6, to: 14 }],
    [10, -3, 5, { from: 6, to: 14 }],
    [10, 5, 5, undefined],
    // 10 in less 5 in, reckoned in feet and back: it touches, and floating noise makes no stop of that.
    [10, 5 - 1e-15, 5, undefined],
    [-10, 0, 5, undefined],
    [-4.5, 0, 5, { from: -9.5, to: 0.5 }],
    [0, 0, 5, { from: -5, to: 5 }],
  ])('%d ahead, %d aside, radius %d', (ahead, aside, radius, expected) => {
    expect(runsInto(ahead, aside, radius)).toEqual(expected);
  });

  test('trips its own caution, first of all', () => {
    const cautions = (at: string) =>
      worked(lanes, { ...level, flues: [{ along: '10 ft', at, across: '6 in' }] }).cautions;
    expect(cautions('6 ft')[0]).toBe('caution.hose.flue-ahead');
    expect(cautions('5 ft 6 in')[0]).toBe('caution.flue.keep-clear');
    expect(worked(lanes, level).cautions).not.toContain('caution.flue.keep-clear');
  });
});

const bad: readonly [title: string, more: Entries, says: RegExp][] = [
  ['no spread', { spread: '' }, /^Spread to each side \(spread\): found nothing; expected text with a unit/],
  [
    'a spread of nothing',
    { spread: '0 in' },
    /^Spread to each side \(spread\): found "0 in"; expected more than 0/,
  ],
  [
    'a spread that makes a hundred lanes',
    { spread: '0.72 in' },
    /^Spread to each side \(spread\): found a spread that makes 100 lanes; expected 40 lanes at most\.$/,
  ],
  [
    'ends that nobody has',
    { ends: 'three' },
    /^Ends that are opened \(ends\): found "three"; expected one of: both ends; one end\.$/,
  ],
  [
    'a level cavity without its depth',
    { eave: '' },
    /^Depth at the eave \(eave\): found nothing; expected a depth, since the shape is level\.$/,
  ],
  [
    'a flue beyond the end of the roof',
    { flues: [{ along: '41 ft', at: '6 ft', across: '6 in' }] },
    /^Hot flues \(flues\): found one 41 ft along; expected a place inside the cavity, 40 ft along\.$/,
  ],
  [
    'a flue beyond the other eave',
    { flues: [{ along: '4 ft', at: '13 ft', across: '6 in' }] },
    /^Hot flues \(flues\): found one 13 ft across; expected a place inside the cavity, 12 ft across\.$/,
  ],
  [
    'a flue of no width',
    { flues: [{ along: '4 ft', at: '6 ft', across: '0 in' }] },
    /^Width of the flue \(hot flue 1\) \(flues\.0\.across\): found "0 in"; expected more than 0/,
  ],
  [
    'a reach of nothing',
    { reach: '0 ft' },
    /^Reach of the hose or tube \(reach\): found "0 ft"; expected more than 0/,
  ],
  [
    'old insulation as deep as the cavity, which takes no bag',
    { old_depth: '10 in' },
    /^Depth of the old insulation \(old_depth\): found .*; expected less than the cavity holds: no room is left for new fill\.$/,
  ],
  [
    'trusses side by side in a cavity no deeper than their two chords of 1 1/2 in',
    { eave: '3 in', truss_spacing: '1 1/2 in' },
    /^Depth at the eave \(eave\): found no more than the trusses take; expected room for new fill\.$/,
  ],
  ['a density in feet', { density: '1.5 ft' }, /^Density wanted \(density\): found "1\.5 ft" \(length\)/],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, more, says) => {
    expect(complaints(lanes, { ...level, ...more })).toEqual([expect.stringMatching(says)]);
  });
});

describe('the hose to push in from each end', () => {
  // A level cavity 12 ft wide and 40 ft long in three lanes, their middles 2, 6 and 10 ft from the eave. The ring about the flue is 16 in across, and
  // with half of a hose of 2 in the hose stops 9 in from its middle.
  const flue = (along: number): Ring => ({ along: inches(along), at: inches(72), across: inches(18 - HOSE) });
  test.each<
    [title: string, ends: 'both ends' | 'one end', rings: readonly Ring[], start: number, far: number]
  >([
    ['from both, to the middle', 'both ends', [], 240, 240],
    ['from one, to the other', 'one end', [], 480, 0],
    [
      'from both, with a flue at 10 ft: 111 in, and from the other end on to 129 in',
      'both ends',
      [flue(120)],
      111,
      351,
    ],
    ['from both, with a flue at 30 ft', 'both ends', [flue(360)], 351, 111],
    ['from both, with a ring that ends in the middle', 'both ends', [flue(231)], 222, 240],
    ['from both, with a ring that begins in the middle', 'both ends', [flue(249)], 240, 222],
    ['from one, with a flue at 30 ft', 'one end', [flue(360)], 351, 0],
  ])('%s', (_, ends, rings, start, far) => {
    const { lanes: found, push } = gableLanes(
      {
        section: cavitySection({ shape: 'level', width: inches(144), eave: inches(12) } as Parameters<
          typeof cavitySection
        >[0]),
        length: inches(480),
        ends,
        spread: inches(24),
        oldDepth: undefined,
        trussSpacing: undefined,
        rings,
        density: quantity(1.5, 'lb/ft3'),
        bagWeight: quantity(30, 'lb/bag'),
      },
      rules,
    );
    expect(push.label).toBe(
      ends === 'both ends' ? 'Push from each end, to the middle' : 'Push from the one end, to the other',
    );
    const middle = found[1];
    expect(middle && amountIn(middle.hoseFromStart, 'in')).toBeCloseTo(start, 9);
    expect(middle && amountIn(middle.hoseFromFarEnd, 'in')).toBeCloseTo(far, 9);
    expect(middle?.stopsAtRing).toBe(rings.length > 0);
  });
});
