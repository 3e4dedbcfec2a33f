import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { hoseMarkings } from '../../../src/calc/marks/declaration.ts';
import { FEWEST, MOST } from '../../../src/calc/marks/fewest.ts';
import { type HoseMark, hoseMarks } from '../../../src/calc/marks/marks.ts';
import type { Opening } from '../../../src/calc/marks/opening.ts';
import type { Ring } from '../../../src/calc/ways/flue-ring.ts';
import { amountIn, type Quantity, quantity } from '../../../src/quantity/quantity.ts';
import { complaints, type Entries, figure, printed, rules, worked } from '../told.ts';
import { type Box, edgeFrom, type Push, places, round, turnsOf, worst } from './brute-force.ts';

const inches = (amount: number) => quantity(amount, 'in');
const inInches = (q: Quantity<'length'>) => amountIn(q, 'in');
const HOSE = amountIn(rules.value('access.hose.diameter'), 'in');

interface Case extends Box {
  readonly stream: number;
  readonly standOff: number;
}

/** Stretches as they are filled, from a corner too; streams that can fill them, and some that can't. */
const anyCase: fc.Arbitrary<Case> = fc
  .record({
    left: fc.integer({ min: 0, max: 120 }),
    right: fc.integer({ min: 0, max: 120 }),
    up: fc.integer({ min: 0, max: 100 }),
    down: fc.integer({ min: 0, max: 100 }),
    stream: fc.integer({ min: 10, max: 90 }),
    share: fc.constantFrom(0, 0.25, 0.5, 1),
  })
  .filter(({ left, right, up, down }) => left + right >= 24 && up + down >= 24)
  .map(({ share, ...rest }) => ({ ...rest, standOff: rest.stream * share }));

const openingOf = ({ left, right, up, down, stream, standOff }: Case): Opening => ({
  along: inches(300),
  from: inches(300 - right),
  to: inches(300 + left),
  width: inches(up + down),
  across: inches(down),
  streamReach: inches(stream),
  standOff: inches(standOff),
});

const turned = ({ angle }: HoseMark): number => amountIn(angle, 'degree');

/** Places of the stretch are looked at this close, in inches. */
const STEP = 3;

describe('the pushes from an opening, whatever its stretch', () => {
  test('are sorted, the farthest first, and numbered so', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        const { marks } = hoseMarks(openingOf(each), rules);
        expect(marks.map(({ order }) => order)).toEqual(marks.map((_, place) => place + 1));
        for (const [place, { mark }] of marks.entries())
          expect(inInches(mark)).toBeLessThanOrEqual(inInches(marks[place - 1]?.mark ?? mark) + 2e-6);
      }),
    );
  });

  test('go to the edge of the stretch less the stand-off, and no farther; none of no length is told', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        for (const one of hoseMarks(openingOf(each), rules).marks) {
          const edge = edgeFrom(each, turned(one));
          expect(inInches(one.mark)).toBeCloseTo(edge - each.standOff, 9);
          expect(inInches(one.distance)).toBeCloseTo(edge, 9);
          expect(inInches(one.mark)).toBeGreaterThan(0);
          const [x, y] = [one.ray.x * one.ray.length, one.ray.y * one.ray.length];
          expect(x).toBeGreaterThanOrEqual(-each.left - 1e-9);
          expect(x).toBeLessThanOrEqual(each.right + 1e-9);
          expect(y).toBeGreaterThanOrEqual(-each.down - 1e-9);
          expect(y).toBeLessThanOrEqual(each.up + 1e-9);
        }
      }),
    );
  });

  test('are the fewest that bring the stream to every place, found again by looking at all of the stretch', () => {
    let [covered, not] = [0, 0];
    fc.assert(
      fc.property(anyCase, (each) => {
        const found = hoseMarks(openingOf(each), rules);
        // A place between those looked at is off by half the diagonal of a step; what is nearer the limit may be told either way.
        const all = places(each, STEP);
        const known = new Map<number, number>();
        const at = (count: number): number => {
          const found = known.get(count) ?? worst(round(each, count, each.standOff), all);
          known.set(count, found);
          return found;
        };
        const shown = found.marks.map(turned).sort((a, b) => a - b);
        const asShown = (count: number) =>
          round(each, count, each.standOff)
            .filter(({ length }) => length > 1e-6)
            .map((push) => push.turned)
            .sort((a, b) => a - b);
        const counts = Array.from({ length: MOST - FEWEST + 1 }, (_, step) => FEWEST + step);
        const surely = counts.find((count) => at(count) <= each.stream - STEP * Math.SQRT1_2);
        const perhaps = counts.find((count) => at(count) <= each.stream + 1e-9);
        if (found.covers) {
          covered += 1;
          const count = counts.find(
            (one) => asShown(one).join() === shown.join() && one >= (perhaps ?? MOST),
          );
          expect(count).toBeDefined();
          expect(count ?? 0).toBeLessThanOrEqual(surely ?? MOST);
          expect(at(count ?? 0)).toBeLessThanOrEqual(each.stream + 1e-6);
          expect(found.missed.amount).toBe(0);
        } else {
          not += 1;
          expect(surely).toBeUndefined();
          expect(found.missed.amount).toBeGreaterThan(0);
        }
      }),
      { numRuns: 60 },
    );
    expect(Math.min(covered, not)).toBeGreaterThan(0);
  });

  test('are never fewer for a shorter stream', () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 40 }), (each, less) => {
        const stream = Math.max(5, each.stream - less);
        const of = (reach: number) => {
          const { covers, marks } = hoseMarks(openingOf({ ...each, stream: reach, standOff: 0 }), rules);
          return covers ? marks.length : Number.POSITIVE_INFINITY;
        };
        // Pushes of no length fall out of the count where the opening lies at the edge of its stretch.
        if (Math.min(each.left, each.right, each.up, each.down) === 0) return;
        expect(of(stream)).toBeGreaterThanOrEqual(of(each.stream));
      }),
    );
  });

  test('mirror each other where the stretch does', () => {
    fc.assert(
      fc.property(anyCase, (each) => {
        const seen = (opening: Opening) =>
          hoseMarks(opening, rules)
            .marks.map((one) => `${turned(one) % 360} ${inInches(one.mark).toFixed(5)}`)
            .sort();
        const mirrored = { ...each, left: each.right, right: each.left };
        const turnedOver = hoseMarks(openingOf(mirrored), rules)
          .marks.map((one) => `${(360 - turned(one)) % 360} ${inInches(one.mark).toFixed(5)}`)
          .sort();
        expect(turnedOver).toEqual(seen(openingOf(each)));
        const leftHand: Opening = {
          ...openingOf(each),
          from: inches(300 - each.left),
          to: inches(300 + each.right),
          startingEnd: 'left hand',
        };
        expect(seen(leftHand)).toEqual(seen(openingOf(each)));
      }),
    );
  });

  test('stop before the ring about a flue, wherever it stands', () => {
    fc.assert(
      fc.property(
        anyCase,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 4, max: 30 }),
        (each, alongShare, acrossShare, across) => {
          const [x, y] = [
            -each.left + alongShare * (each.left + each.right),
            -each.down + acrossShare * (each.up + each.down),
          ];
          if (Math.hypot(x, y) <= (across + HOSE) / 2 + 1e-6) return;
          const ring: Ring = { along: inches(300 - x), at: inches(each.down + y), across: inches(across) };
          const plain = hoseMarks(openingOf(each), rules);
          const found = hoseMarks({ ...openingOf(each), rings: [ring] }, rules);
          for (const { ray, stopsAtRing, mark } of found.marks) {
            const foot = Math.min(ray.length, Math.max(0, x * ray.x + y * ray.y));
            const nearest = Math.hypot(x - foot * ray.x, y - foot * ray.y);
            expect(nearest).toBeGreaterThanOrEqual((across + HOSE) / 2 - 1e-6);
            const same = plain.marks.find((one) => one.ray.minutes === ray.minutes);
            if (!stopsAtRing) expect(inInches(mark)).toBeCloseTo(inInches(same?.mark ?? inches(0)), 9);
            else expect(inInches(mark)).toBeLessThanOrEqual(inInches(same?.mark ?? inches(0)) + 1e-9);
          }
          expect(found.missed.amount).toBeGreaterThanOrEqual(plain.missed.amount);
        },
      ),
    );
  });
});

describe('the directions', () => {
  test('of the brute force are 0, 72.5, 145, 215 and 287.5 degrees for five', () => {
    expect(turnsOf(5)).toEqual([0, 72.5, 145, 215, 287.5]);
  });
  test('four of them serve a stretch that the stream fills from its middle', () => {
    const { marks } = hoseMarks(
      openingOf({ left: 36, right: 36, up: 36, down: 36, stream: 60, standOff: 0 }),
      rules,
    );
    expect(marks.map(({ clock }) => clock)).toEqual(['12:00', '3:00', '6:00', '9:00']);
  });
});

describe('the marks', () => {
  test('stand in the order of their pushes, the longest first, and of two as long the first round the clock', () => {
    const { marks } = hoseMarks(
      openingOf({ left: 48, right: 48, up: 48, down: 48, stream: 36, standOff: 0 }),
      rules,
    );
    // To the edge, 48 in off: 48/cos 35° = 58.6 in at 4:50 and 7:10, 48/cos 17.5° = 50.3 in at 2:25 and 9:35, and 48 in straight up.
    expect(marks.map(({ order, mark }) => [order, mark.symbol, mark.label])).toEqual([
      [1, 'm1', 'Mark 1, at 4:50'],
      [2, 'm2', 'Mark 2, at 7:10'],
      [3, 'm3', 'Mark 3, at 2:25'],
      [4, 'm4', 'Mark 4, at 9:35'],
      [5, 'm5', 'Mark 5, at 12:00'],
    ]);
  });
});

const home: Entries = {
  along: '30 ft',
  from: '0 ft',
  to: '60 ft',
  width: '13 ft',
  across: '5 ft',
  stream_reach: '5 ft 4 in',
};

describe('what is said of a push', () => {
  const rows = (more: Entries) => worked(hoseMarkings, { ...home, ...more }).tables?.marks?.rows ?? [];

  test('past the usual reach it may not reach; past its own it is beyond', () => {
    expect(
      rows({})
        .map(({ reach }) => reach)
        .slice(0, 5),
    ).toEqual(['may not reach', 'may not reach', 'may not reach', 'may not reach', 'reaches']);
    expect(
      rows({ reach: '20 ft' })
        .map(({ reach }) => reach)
        .slice(3, 5),
    ).toEqual(['beyond reach', 'reaches']);
    expect(rows({ reach: '31 ft' }).every(({ reach }) => reach === 'reaches')).toBe(true);
    expect(worked(hoseMarkings, home).remarks.map(remarkText).join(' ')).toMatch(
      /^4 of the pushes may not get there: the hose reaches 25 ft to 35 ft/,
    );
  });

  test('it crosses the trusses that stand between: at 30 ft none, and every 2 ft one to either side', () => {
    // The longest go 360 in to the side, from the truss at 360 in to those at 24, 48, ... 336 in, the last one at the end itself.
    const [first] = rows({ truss_spacing: '24 in', first_truss: '0 in' });
    expect(first?.trusses).toBe('14');
    expect(Object.keys(rows({})[0] ?? {})).not.toContain('trusses');
  });

  test('more than the most directions can’t fill is told', () => {
    const entries = { ...home, stream_reach: '1 ft' };
    const { remarks } = worked(hoseMarkings, entries);
    expect(remarks.map(remarkText)[0]).toMatch(
      /^Even 36 directions leave a part of the stretch farther than 1 ft from every push\./,
    );
    expect(figure(hoseMarkings, entries, 'missed', 'in')).toBeGreaterThan(0);
  });

  /** A stream of 5 ft 4 in; the marks of a stretch 10 ft long lie within any reach. */
  const near: Entries = { ...home, from: '25 ft', to: '35 ft' };
  const said = (more: Entries) => printed(hoseMarkings, { ...near, ...more }).remarks;
  const last = expect.stringMatching(/^Tape the hose before it is fed/);

  test('nothing but how to tape the hose where all is within reach', () => {
    expect(said({})).toEqual([last]);
  });

  test('a push that crosses trusses is told of, one that meets none is not', () => {
    expect(said({ truss_spacing: '24 in', first_truss: '0 in' })).toEqual([
      expect.stringMatching(/^A push that crosses trusses/),
      last,
    ]);
    // Trusses at 12, 20, 28 and 36 ft... from the opening at 24 ft the stretch from 21 to 27 ft meets none.
    expect(
      said({ along: '24 ft', from: '21 ft', to: '27 ft', truss_spacing: '8 ft', first_truss: '12 ft' }),
    ).toEqual([last]);
  });

  test('a reach of one length is told as one', () => {
    expect(said({ ...home, reach: '20 ft' })[0]).toMatch(
      /^4 of the pushes may not get there: the hose reaches 20 ft\. /,
    );
  });

  test('what a ring leaves out of reach is told, and cautioned of', () => {
    const flues = [{ along: '30 ft', at: '9 ft', across: '6 in' }];
    const { remarks, cautions, figures } = printed(hoseMarkings, { ...near, stream_reach: '2 ft', flues });
    expect(figures.stopped).not.toBe('0 pushes');
    expect(remarks[0]).toMatch(/^Behind the ring .* % of the stretch stay out of the stream’s reach/);
    expect(cautions).toEqual([
      'caution.hose.flue-ahead',
      'caution.layout.framing',
      'caution.hose.blind',
      'caution.ceiling.trapped-air',
      'caution.before.wear',
    ]);
  });

  test.each([
    // Kept off by 3 in of flue, 2 in of clearance and 1 in of half a hose: 6 in. At 7 in up the slope one inch is left, less than a hose.
    ['an inch before its ring is no push', '5 ft 7 in', true],
    ['ten inches before its ring is one', '6 ft 4 in', false],
  ])('%s', (_, at, unpushed) => {
    const flues = [{ along: '30 ft', at, across: '6 in' }];
    const { remarks, tables } = printed(hoseMarkings, { ...home, flues });
    expect(
      remarks.some((each) =>
        /^Nothing is pushed in at 12:00.*: the ring is nearer than the hose is wide, 2 in\./.test(each),
      ),
    ).toBe(unpushed);
    const tape =
      worked(hoseMarkings, { ...home, flues }).tables?.marks?.rows.map(({ mark }) =>
        amountIn(mark as Quantity<'length'>, 'in'),
      ) ?? [];
    expect(Math.min(...tape)).toBeGreaterThan(2);
    expect(tables.marks?.some((row) => row.includes(' | 12:00 | '))).toBe(!unpushed);
  });

  test('a flue that no push meets is kept clear of, and leaves nothing out of reach', () => {
    // The flue stands far outside the stretch.
    const { remarks, cautions } = printed(hoseMarkings, {
      ...near,
      flues: [{ along: '60 ft', at: '9 ft', across: '6 in' }],
    });
    expect(remarks).toEqual([last]);
    expect(cautions[0]).toBe('caution.flue.keep-clear');
  });

  test('a flue ahead is cautioned of first of all', () => {
    const flues = (at: string) => [{ along: '30 ft', at, across: '6 in' }];
    expect(worked(hoseMarkings, { ...home, flues: flues('8 ft') }).cautions[0]).toBe(
      'caution.hose.flue-ahead',
    );
    expect(worked(hoseMarkings, home).cautions).not.toContain('caution.flue.keep-clear');
  });
});

const bad: readonly [title: string, more: Entries, says: RegExp][] = [
  [
    'a stretch that ends before it begins',
    { from: '40 ft', to: '20 ft' },
    /^Stretch to \(to\): found 20 ft; expected a place beyond the other end of the stretch at 40 ft\.$/,
  ],
  [
    'a stretch of no length',
    { from: '30 ft', to: '30 ft' },
    /^Stretch to \(to\): found 30 ft; expected a place beyond the other end of the stretch at 30 ft\.$/,
  ],
  [
    'an opening beyond its stretch',
    { to: '29 ft' },
    /^Place of the opening \(along\): found 30 ft; expected a place in its stretch, 0 in to 29 ft\.$/,
  ],
  [
    'an opening outside its stretch',
    { from: '31 ft' },
    /^Place of the opening \(along\): found 30 ft; expected a place in its stretch, 31 ft to 60 ft\.$/,
  ],
  [
    'an opening beyond the other eave',
    { across: '13 ft 1 in' },
    /^Opening, from the eave \(across\): found 13 ft 1 in; expected a place in the cavity, which is 13 ft wide\.$/,
  ],
  [
    'a stream of no reach',
    { stream_reach: '0 in' },
    /^Reach of the stream \(stream_reach\): found "0 in"; expected more than 0/,
  ],
  [
    'a stand-off that the stream does not make good',
    { stand_off: '5 ft 5 in' },
    /^Stand-off \(stand_off\): found 5 ft 5 in; expected no more than the stream’s reach of 5 ft 4 in, or the edge of the stretch is never filled\.$/,
  ],
  [
    'an opening inside the ring of a flue',
    { flues: [{ along: '30 ft', at: '5 ft 5 in', across: '6 in' }] },
    /^Place along the roof \(hot flue 1\) \(flues\.0\.along\): found the opening inside the ring kept open about it; expected a place clear of the opening\.$/,
  ],
  [
    'a flue beyond the other eave',
    { flues: [{ along: '30 ft', at: '14 ft', across: '6 in' }] },
    /^Hot flues \(flues\): found one 14 ft across; expected a place inside the cavity, 13 ft across\.$/,
  ],
  [
    'a hand that nobody has',
    { starting_end: 'third' },
    /\(starting_end\): found "third"; expected one of: right hand; left hand\.$/,
  ],
  [
    'trusses an inch apart',
    { truss_spacing: '1 in' },
    /^Truss spacing \(truss_spacing\): found 1 in; expected 2 in or more\.$/,
  ],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, more, says) => {
    expect(complaints(hoseMarkings, { ...home, ...more })).toEqual([expect.stringMatching(says)]);
  });
});

/** Keeps the brute force honest: a push straight up, a place beside it, beyond it and behind it. */
describe('the brute force', () => {
  const push: Push = { turned: 0, length: 10 };
  test.each([
    [3, 6, 3],
    [3, 14, 5],
    [3, -4, 5],
    [0, 10, 0],
  ])('%d, %d lies %d from it', (x, y, expected) => {
    expect(worst([push], [[x, y]])).toBeCloseTo(expected, 9);
  });
});
