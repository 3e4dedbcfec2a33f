import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavitySection } from '../../../src/calc/cavity/section.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { edgeBays } from '../../../src/calc/ways/bays.ts';
import { bays } from '../../../src/calc/ways/bays-declaration.ts';
import type { Ring } from '../../../src/calc/ways/flue-ring.ts';
import { reachWord } from '../../../src/calc/ways/reach.ts';
import { stretches } from '../../../src/calc/ways/stretches.ts';
import { freeStrip } from '../../../src/calc/ways/strip.ts';
import { amountIn, type Quantity, quantity } from '../../../src/quantity/quantity.ts';
import { complaints, type Entries, figure, rules, within, worked } from '../told.ts';

const level: Entries = {
  length: '8 ft',
  truss_spacing: '24 in',
  first_truss: '0 in',
  edges: 'one edge',
  shape: 'level',
  width: '12 ft',
  eave: '10 in',
  density: '1.5 lb/ft3',
  bag_weight: '30 lb/bag',
};

const inches = (amount: number) => quantity(amount, 'in');
const inInches = (q: Quantity<'length'>) => amountIn(q, 'in');
const MEMBER = amountIn(rules.value('framing.truss.member-width'), 'in');

describe('the stretches between trusses', () => {
  /** By hand, a member 1.5 in wide: clear from 0.75 in past one to 0.75 in before the next. */
  const worked: readonly [
    title: string,
    trusses: readonly number[],
    length: number,
    clear: readonly (readonly [number, number])[],
  ][] = [
    [
      'trusses at both ends',
      [0, 24, 48],
      48,
      [
        [0.75, 23.25],
        [24.75, 47.25],
      ],
    ],
    [
      'none at the ends',
      [12, 36],
      50,
      [
        [0, 11.25],
        [12.75, 35.25],
        [36.75, 50],
      ],
    ],
    ['a last truss that leaves no clear width', [0, 24], 24.5, [[0.75, 23.25]]],
    [
      'a truss beyond the end',
      [0, 24, 48],
      30,
      [
        [0.75, 23.25],
        [24.75, 30],
      ],
    ],
    ['none at all', [], 30, [[0, 30]]],
    [
      'trusses that touch',
      [10, 11],
      30,
      [
        [0, 9.25],
        [11.75, 30],
      ],
    ],
  ];
  test.each(worked)('%s', (_, trusses, length, clear) => {
    const found = stretches(trusses, length, 1.5);
    expect(found.map(({ clearFrom, clearTo }) => [clearFrom, clearTo])).toEqual(clear);
    expect([found[0]?.from, found.at(-1)?.to]).toEqual([0, length]);
  });
});

const anyCase = fc.record({
  shape: fc.constantFrom('two-slope' as const, 'one-slope' as const, 'bowed' as const),
  width: fc.integer({ min: 80, max: 200 }),
  eave: fc.integer({ min: 0, max: 64 }).map((eighths) => eighths / 8),
  rise: fc.integer({ min: 1, max: 160 }).map((eighths) => eighths / 8),
  length: fc.integer({ min: 60, max: 900 }),
  spacing: fc.integer({ min: 12, max: 60 }),
  first: fc.integer({ min: 0, max: 40 }),
  old: fc.integer({ min: 0, max: 32 }).map((eighths) => eighths / 8),
  tube: fc.integer({ min: 1, max: 32 }).map((eighths) => eighths / 8),
  reach: fc.integer({ min: 12, max: 400 }),
  both: fc.boolean(),
});
type Case = typeof anyCase extends fc.Arbitrary<infer T> ? T : never;

const sectionOf = ({ shape, width, eave, rise }: Case) =>
  cavitySection({
    shape,
    width: inches(width),
    eave: inches(eave),
    ridge: inches(eave + rise),
    points: [],
  } as unknown as Parameters<typeof cavitySection>[0]);

const trussesOf = ({ first, spacing, length }: Case): number[] =>
  Array.from(
    { length: Math.max(0, Math.floor((length - first) / spacing) + 1) },
    (_, n) => first + n * spacing,
  );

const run = (each: Case, rings: Ring[] = []) =>
  edgeBays(
    {
      length: inches(each.length),
      trussSpacing: inches(each.spacing),
      trusses: trussesOf(each),
      trussesTold: [inches(each.spacing), inches(each.first)],
      section: sectionOf(each),
      edges: each.both && each.shape !== 'one-slope' ? 'both edges' : 'one edge',
      tube: inches(each.tube),
      reach: inches(each.reach),
      oldDepth: inches(each.old),
      rings,
      density: quantity(1.5, 'lb/ft3'),
      bagWeight: quantity(30, 'lb/bag'),
    },
    rules,
  );

describe('bays under the lifted edge, whatever the roof', () => {
  test('follow one another from end to end, and hold together what the whole width holds', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        const found = run(each);
        let at = 0;
        for (const one of found.bays) {
          expect(inInches(one.from)).toBeCloseTo(at, 9);
          at = inInches(one.to);
          expect(inInches(one.clear)).toBeLessThanOrEqual(at - inInches(one.from) + 1e-9);
          expect(inInches(one.clear)).toBeGreaterThan(0);
          if (inInches(one.from) > 0 && at < each.length)
            expect(inInches(one.clear)).toBeCloseTo(each.spacing - MEMBER, 9);
        }
        expect(at).toBeCloseTo(each.length, 9);
        const section = sectionOf(each);
        const strip = freeStrip(
          section,
          inches(0),
          section.width,
          { oldDepth: inches(each.old), trussSpacing: inches(each.spacing) },
          rules,
        );
        expect(within(1e-9, amountIn(found.volume, 'in3'), amountIn(strip, 'in2') * each.length)).toBe(true);
      }),
    );
  });

  test('leave over all where the tube does not fit, nothing where it reaches, and never more than there is', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        const found = run(each);
        const allWide = found.bays.every(({ clear }) => inInches(clear) >= each.tube);
        const [volume, left] = [amountIn(found.volume, 'ft3'), amountIn(found.leftVolume, 'ft3')];
        expect(left).toBeGreaterThanOrEqual(0);
        expect(left).toBeLessThanOrEqual(volume * (1 + 1e-9) + 1e-9);
        if (found.sides.every(({ tubeFits }) => !tubeFits)) expect(left).toBeCloseTo(volume, 9);
        if (allWide && found.sides.every(({ tubeFits, tube }) => tubeFits && inInches(tube) <= each.reach))
          expect(left).toBeCloseTo(0, 9);
        for (const side of found.sides) {
          const room = Math.max(0, each.eave - each.old);
          expect(inInches(side.room)).toBeCloseTo(
            each.shape === 'one-slope' && side.edge === 'front' ? room + each.rise : room,
            9,
          );
          if (Math.abs(room - each.tube) > 1e-6) expect(side.tubeFits).toBe(room > each.tube);
        }
      }),
    );
  });

  test('are each filled as far as the tube needs to go or can, whichever is less, and no farther', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        const found = run(each);
        for (const one of found.bays)
          for (const [place, side] of found.sides.entries())
            expect(inInches(one.pushed[place] ?? inches(Number.MAX_VALUE))).toBeCloseTo(
              side.tubeFits && inInches(one.clear) >= each.tube
                ? Math.min(inInches(side.tube), each.reach)
                : 0,
              9,
            );
      }),
    );
  });

  test('never leave more over for a longer tube, nor ask for one longer than the home is wide', () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 200 }), (each, more) => {
        const [near, far] = [run(each), run({ ...each, reach: each.reach + more })];
        expect(far.leftVolume.amount).toBeLessThanOrEqual(near.leftVolume.amount + 1e-9);
        expect(inInches(near.longest)).toBeLessThanOrEqual(each.width + 1e-9);
        expect(near.sides.reduce((sum, { tube }) => sum + inInches(tube), 0)).toBeCloseTo(each.width, 9);
      }),
    );
  });

  test('more density never takes fewer bags; more eave never holds less', () => {
    fc.assert(
      fc.property(
        anyCase,
        fc.integer({ min: 1, max: 32 }),
        fc.integer({ min: 10, max: 79 }),
        (each, eighths, tenths) => {
          const deeper = run({ ...each, eave: each.eave + eighths / 8 });
          expect(deeper.bags.amount).toBeGreaterThanOrEqual(run(each).bags.amount - 1e-9);
          const at = (density: number) =>
            figure(bays, { ...level, density: `${density} lb/ft3` }, 'bags', 'bag');
          expect(at(tenths / 10)).toBeGreaterThan(at(tenths / 10 - 0.1));
        },
      ),
    );
  });

  test('no tube comes into the ring about a flue, and its column is taken out once', () => {
    fc.assert(
      fc.property(
        anyCase,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.3, max: 0.7, noNaN: true }),
        (each, share, across) => {
          const ring: Ring = {
            along: inches(Math.round(share * each.length)),
            at: inches(each.width * across),
            across: inches(12),
          };
          const found = run({ ...each, reach: 400 }, [ring]);
          for (const one of found.bays)
            for (const [place, side] of found.sides.entries()) {
              const pushed = inInches(one.pushed[place] ?? quantity(0, 'in'));
              if (pushed === 0) continue;
              const at = side.edge === 'back' ? inInches(ring.at) : each.width - inInches(ring.at);
              const middle = clearMiddle(one, each);
              const nearest = Math.hypot(Math.max(0, at - pushed), inInches(ring.along) - middle);
              expect(nearest).toBeGreaterThanOrEqual(6 + each.tube / 2 - 1e-6);
            }
          const taken = amountIn(run({ ...each, reach: 400 }).volume, 'in3') - amountIn(found.volume, 'in3');
          const height = Math.max(0, sectionOf(each).profile.depthAt(inInches(ring.at)) - each.old);
          // Where the ring reaches over the ridge each side takes its part; a bay too low for its column gives what it has.
          expect(taken).toBeLessThanOrEqual(36 * Math.PI * height + 1e-6);
          expect(taken).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});

/** The middle of what is clear: half a member off each end that has a truss. */
function clearMiddle({ from, to }: { from: Quantity<'length'>; to: Quantity<'length'> }, each: Case): number {
  const found = stretches(trussesOf(each), each.length, MEMBER).find(
    (stretch) => Math.abs(stretch.from - inInches(from)) < 1e-9 && Math.abs(stretch.to - inInches(to)) < 1e-9,
  );
  if (!found) throw new Error('found no such stretch');
  return (found.clearFrom + found.clearTo) / 2;
}

describe('whether a tube reaches', () => {
  const reach = { low: quantity(25, 'ft'), high: quantity(35, 'ft') };
  test.each([
    [24, 'reaches'],
    [25, 'reaches'],
    [25.01, 'may not reach'],
    [35, 'may not reach'],
    [35.01, 'beyond reach'],
  ])('%d ft against 25 to 35 ft: %s', (feet, word) => {
    expect(reachWord(quantity(feet, 'ft'), reach)).toBe(word);
    expect(reachWord(quantity(feet * 0.3048, 'm'), reach)).toBe(word);
  });

  test('is told of the worse side, and a tube that does not fit has the last word', () => {
    const word = (more: Entries) => worked(bays, { ...level, ...more }).figures.reached?.value;
    expect(word({})).toBe('reaches');
    expect(word({ reach: '11 ft' })).toBe('beyond reach');
    expect(word({ tube: '10 1/8 in' })).toBe('does not fit');
    expect(word({ tube: '10 in' })).toBe('reaches');
    expect(word({ width: '30 ft' })).toBe('may not reach');
    // Trusses of 1 1/2 in every 3 in leave 1 1/2 in; those every 4 in leave 2 1/2.
    expect(word({ tube: '2 in', truss_spacing: '3 in' })).toBe('does not fit');
    expect(word({ tube: '2 in', truss_spacing: '4 in' })).toBe('reaches');
  });

  test('a bay narrower than the tube is not filled through it, and is told', () => {
    // Two trusses of 1 1/2 in, 3 in apart from middle to middle, leave 1 1/2 in between them; the tube is 2 in.
    const found = worked(bays, { ...level, trusses_measured: [{ at: '24 in' }, { at: '27 in' }] });
    const rows = found.tables?.bays?.rows ?? [];
    expect(rows.map(({ pushed_back }) => pushed_back === 'does not fit')).toEqual([false, true, false]);
    // Two chords of 1 1/2 in over half of the 3 in take 1 1/2 in of the 10: 3 x 144 x 8.5 = 3672 in3, 2.125 ft3.
    expect(rows[1]?.left_volume).toMatchObject({ amount: expect.closeTo(2.125, 9) });
    expect(found.remarks.map(remarkText)).toContain('The tube does not go into 1 bay, which is narrower.');
  });

  test('a tube that does not fit at the eave is told from where it would', () => {
    // The roof rises from 3 to 15 in over 84 in; above 2 in of old insulation 2 in are free where it is 4 in high, 7 in in.
    const { remarks } = worked(bays, {
      ...level,
      shape: 'two-slope',
      width: '14 ft',
      eave: '3 in',
      ridge: '15 in',
      old_depth: '2 in',
    });
    expect(remarks.map(remarkText)[0]).toBe(
      'At the lifted edge 1 in are free, and the tube is 2 in wide: it does not go in there. The cavity is deep enough for it from 7 in inside the edge.',
    );
  });
});

test('trusses that were measured make the bays, in any order, whatever the spacing says', () => {
  const measured = [{ at: '54 in' }, { at: '0 in' }, { at: '30 in' }];
  const found = worked(bays, { ...level, length: '7 ft', trusses_measured: measured });
  const clear = found.tables?.bays?.rows.map((row) => amountIn(row.clear as Quantity<'length'>, 'in'));
  // By hand, members 1.5 in wide at 0, 30 and 54 in on a roof of 84 in: 30 − 1.5, 24 − 1.5, and 30 − 0.75 to the end of the roof.
  expect(clear?.map((each) => Math.round(each * 1e6) / 1e6)).toEqual([28.5, 22.5, 29.25]);
  // What has no say is not told as if it had.
  const count = found.figures.bays?.value as Quantity | undefined;
  const told = count?.origin.from === 'method' ? count.origin.operands.map(({ label }) => label) : [];
  expect(told).toEqual(['Length of the roof', 'Place', 'Place', 'Place']);
});

const bad: readonly [title: string, more: Entries, says: RegExp][] = [
  [
    'no truss spacing',
    { truss_spacing: '' },
    /^Truss spacing \(truss_spacing\): found nothing; expected a spacing, or two trusses or more that you measured\.$/,
  ],
  [
    'one truss measured, and no spacing',
    { truss_spacing: '', trusses_measured: [{ at: '40 in' }] },
    /^Truss spacing \(truss_spacing\): found one truss, and no spacing; expected a spacing, or two/,
  ],
  [
    'trusses an inch apart',
    { truss_spacing: '1 in' },
    /^Truss spacing \(truss_spacing\): found 1 in; expected 2 in or more\.$/,
  ],
  [
    'trusses that fill the roof',
    { length: '3/4 in' },
    /^Length of the roof \(length\): found 0\.75 in with 1 trusses in it; expected room for a bay between two trusses\.$/,
  ],
  [
    'both edges of half a double-section home',
    { shape: 'one-slope', ridge: '16 in', edges: 'both edges' },
    /^Edges that are lifted \(edges\): found both edges of a one-slope roof; expected one edge, since the other side is the marriage line\.$/,
  ],
  [
    'a tube wider than a foot',
    { tube: '13 in' },
    /^Width of the tube \(tube\): found "13 in"; expected 1 ft at most: this entry takes no more\.$/,
  ],
  ['a tube of no width', { tube: '0 in' }, /^Width of the tube \(tube\): found "0 in"; expected more than 0/],
  [
    'an eave deeper than the ridge',
    { shape: 'two-slope', eave: '12 in', ridge: '4 in' },
    /^Depth at the eave \(eave\): found 12 in, deeper than the ridge at 4 in; expected an eave no deeper than the ridge: the two may be swapped\.$/,
  ],
  [
    'old insulation as deep as the cavity, which takes no bag',
    { old_depth: '10 in' },
    /^Depth of the old insulation \(old_depth\): found .*; expected less than the cavity holds: no room is left for new fill\.$/,
  ],
  [
    'a bag of no weight',
    { bag_weight: '0 lb/bag' },
    /^Net weight of a bag \(bag_weight\): found "0 lb\/bag"; expected more than 0/,
  ],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, more, says) => {
    expect(complaints(bays, { ...level, ...more })).toEqual([expect.stringMatching(says)]);
  });
});
