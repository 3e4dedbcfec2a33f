import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearSpace } from '../../../src/calc/before/clear-space.ts';
import { clearSpaces } from '../../../src/calc/before/clear-spaces-declaration.ts';
import { publishedRing, ringOfFlue } from '../../../src/calc/before/flue-rings.ts';
import { type HotThing, type HotThingKind, hotThings } from '../../../src/calc/before/hot-things.ts';
import { isLight } from '../../../src/calc/before/rings.ts';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { type Material, materials } from '../../../src/calc/fill/material.ts';
import { amountIn, type Quantity, quantity } from '../../../src/quantity/quantity.ts';
import { working } from '../../../src/quantity/working.ts';
import { changedRulebook } from '../../../src/rulebook/changed.ts';
import { openRulebook, type Rule } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { complaints, printed } from '../told.ts';

const { data } = theProject();
const rules = openRulebook(data);

interface Measured {
  readonly kind: HotThingKind;
  readonly across: number;
  readonly depth: number;
  readonly other?: number | undefined;
  readonly listed?: number | undefined;
  readonly old?: number | undefined;
  readonly cavity?: number | undefined;
}

/** In inches, or in another unit that so many of make an inch. */
function thing(
  { kind, across, depth, other, listed, cavity, old }: Measured,
  unit: 'in' | 'mm' = 'in',
): HotThing {
  const length = (inches: number) => quantity(unit === 'in' ? inches : inches * 25.4, unit);
  return {
    kind,
    across: length(across),
    depth: length(depth),
    other_side: other === undefined ? undefined : length(other),
    listed: listed === undefined ? undefined : length(listed),
    cavity: cavity === undefined ? undefined : length(cavity),
    old_depth: old === undefined ? undefined : length(old),
  };
}
const space = (of: Measured, material: Material = 'glass fibre') => clearSpace(thing(of), material, rules);
const inches = (q: Quantity<'length'> | undefined) => q && amountIn(q, 'in');
const feet3 = (q: Quantity<'volume'>) => amountIn(q, 'ft3');

/** As published: inches by kind, with glass fibre and with cellulose; the facts behind them are in the rules. */
const published: readonly [kind: HotThingKind, glass: number, cellulose: number][] = [
  ['listed double-wall vent or chimney', 2, 2],
  ['connector, listed gas with draft hood', 6, 6],
  ['connector, unlisted gas with draft hood', 9, 9],
  ['connector, gas without draft hood', 18, 18],
  ['connector, oil', 18, 18],
  ['connector, solid fuel', 18, 18],
  ['masonry chimney', 2, 2],
  ['light, not rated for contact', 3, 3],
  ['light, rated for contact and airtight', 0, 3],
  ['light, rated for contact, leakage not known', 0, 3],
];

describe('the ring', () => {
  test.each(published)('of a %s is %d in, with cellulose %d in', (kind, glass, cellulose) => {
    expect(inches(space({ kind, across: 6, depth: 10 }).ring)).toBe(glass);
    expect(inches(space({ kind, across: 6, depth: 10 }, 'mineral wool').ring)).toBe(glass);
    expect(inches(space({ kind, across: 6, depth: 10 }, 'cellulose').ring)).toBe(cellulose);
  });

  test('is published for every kind', () => {
    expect(published.map(([kind]) => kind)).toEqual([...hotThings]);
  });

  /** The listing governs a flue both ways; elsewhere the larger holds. */
  const listings: readonly [kind: HotThingKind, listed: number, material: Material, ring: number][] = [
    ['listed double-wall vent or chimney', 1, 'glass fibre', 1],
    ['listed double-wall vent or chimney', 3, 'glass fibre', 3],
    ['listed double-wall vent or chimney', 0, 'glass fibre', 0],
    ['connector, oil', 9, 'glass fibre', 9],
    ['masonry chimney', 1, 'glass fibre', 2],
    ['masonry chimney', 4, 'glass fibre', 4],
    ['light, not rated for contact', 1, 'glass fibre', 3],
    ['light, not rated for contact', 5, 'cellulose', 5],
    ['light, rated for contact and airtight', 0, 'cellulose', 3],
    ['light, rated for contact and airtight', 1, 'glass fibre', 1],
  ];
  test.each(listings)('of a %s listed for %d in, in %s, is %d in', (kind, listed, material, ring) => {
    expect(inches(space({ kind, across: 6, depth: 10, listed }, material).ring)).toBe(ring);
  });
});

describe('whose the distance is', () => {
  const id = 'clearance.flue.to-combustibles';
  const agency = openRulebook({
    ...data,
    rules: { ...data.rules, [id]: { ...(data.rules[id] as Rule), by: 'Harrow Valley' } },
  });
  const vent = { kind: 'listed double-wall vent or chimney', across: 6, depth: 10 } as const;
  const fromOf = (of: Measured) => clearSpace(thing(of), 'glass fibre', agency).from;

  test('an agency’s where it set the value, and of nothing else', () => {
    expect(fromOf(vent)).toBe('Harrow Valley');
    expect(fromOf({ ...vent, listed: 3 })).not.toBe('Harrow Valley');
    expect(fromOf({ ...vent, kind: 'connector, oil' })).not.toBe('Harrow Valley');
    expect(space(vent).from).not.toBe('Harrow Valley');
  });
});

describe('volume and shield', () => {
  /** By hand: π/4 of the width squared, or side times side, times the depth, over 1728. */
  const worked: readonly [
    title: string,
    of: Measured,
    takenOff: number,
    ring: number,
    shield: number | undefined,
  ][] = [
    [
      'a round vent',
      { kind: 'listed double-wall vent or chimney', across: 4, depth: 10 },
      (Math.PI / 4) * 64 * 10,
      (Math.PI / 4) * 48 * 10,
      12,
    ],
    [
      'a rectangular chimney',
      { kind: 'masonry chimney', across: 12, other: 18, depth: 8 },
      16 * 22 * 8,
      16 * 22 * 8 - 12 * 18 * 8,
      10,
    ],
    [
      'a vent that is listed for contact takes up its own room',
      { kind: 'listed double-wall vent or chimney', across: 4, depth: 10, listed: 0 },
      (Math.PI / 4) * 16 * 10,
      0,
      undefined,
    ],
    [
      'a light that the fill may bury',
      { kind: 'light, rated for contact and airtight', across: 7, depth: 9 },
      0,
      0,
      undefined,
    ],
    ['no fill there', { kind: 'connector, oil', across: 8, depth: 0 }, 0, 0, 2],
    [
      'a cavity with no room above the fill',
      { kind: 'masonry chimney', across: 12, other: 12, depth: 10, cavity: 11 },
      16 * 16 * 10,
      112 * 10,
      11,
    ],
  ];
  test.each(worked)('%s', (_, of, takenOff, ring, shield) => {
    const found = space(of);
    expect(feet3(found.takenOff)).toBeCloseTo(takenOff / 1728, 12);
    expect(feet3(found.ringVolume)).toBeCloseTo(ring / 1728, 12);
    expect(inches(found.shield)).toBe(shield);
    expect(found.toTheRoof).toBe(of.cavity !== undefined && of.depth + 2 >= of.cavity);
  });
});

describe('what is said', () => {
  const said: readonly [
    kind: HotThingKind,
    material: Material,
    cautions: readonly string[],
    above: boolean,
  ][] = [
    ['listed double-wall vent or chimney', 'glass fibre', ['caution.flue.keep-clear'], false],
    ['connector, oil', 'glass fibre', ['caution.flue.connector', 'caution.flue.keep-clear'], false],
    ['masonry chimney', 'glass fibre', ['caution.flue.keep-clear'], false],
    ['light, not rated for contact', 'glass fibre', ['caution.before.lights'], false],
    ['light, rated for contact and airtight', 'glass fibre', [], true],
    ['light, rated for contact and airtight', 'cellulose', ['caution.before.lights'], false],
    ['light, rated for contact, leakage not known', 'glass fibre', ['caution.before.seal-first'], true],
  ];
  test.each(said)('of a %s in %s: %j, fill above it: %s', (kind, material, cautions, above) => {
    const found = space({ kind, across: 6, depth: 10 }, material);
    expect(found.cautions).toEqual(cautions);
    expect(found.mayLieAbove).toBe(above);
  });

  test('nothing lies above a flue, whatever its listing lets the fill touch', () => {
    const found = space({ kind: 'listed double-wall vent or chimney', across: 6, depth: 10, listed: 0 });
    expect(inches(found.ring)).toBe(0);
    expect(found.mayLieAbove).toBe(false);
  });

  test('a light that the fill buries has no shield, and so none that runs up to the roof', () => {
    const rated = {
      kind: 'light, rated for contact and airtight',
      across: 6,
      depth: 10,
      cavity: 10,
    } as const;
    expect(space(rated).toTheRoof).toBe(false);
    expect(space(rated).shield).toBeUndefined();
    expect(space(rated, 'cellulose').toTheRoof).toBe(true);
  });

  const remarked: readonly [string, Measured, RegExp][] = [
    [
      'a listing below the published distance',
      { kind: 'connector, oil', across: 6, depth: 10, listed: 9 },
      /listing of the connector, oil gives less/,
    ],
    [
      'a chimney that is said to be listed for less',
      { kind: 'masonry chimney', across: 6, depth: 10, listed: 1 },
      /keeps the published 2 in/,
    ],
    [
      'a light whose leakage is not known',
      { kind: 'light, rated for contact, leakage not known', across: 6, depth: 10 },
      /2 cfm or less at 75 Pa/,
    ],
    [
      'a light that is not rated',
      { kind: 'light, not rated for contact', across: 6, depth: 10 },
      /None may lie above the light\. Anything that burns stays 1\/2 in or more/,
    ],
    [
      'a vent that its listing lets the fill touch',
      { kind: 'listed double-wall vent or chimney', across: 6, depth: 10, listed: 0 },
      /lets the fill touch it, so no shield is given here/,
    ],
    ['a low cavity', { kind: 'masonry chimney', across: 6, depth: 10, cavity: 10 }, /runs up to the roof/],
  ];
  test.each(remarked)('%s has its remark', (_, of, says) => {
    expect(space(of).remarks.map(remarkText).join(' ')).toMatch(says);
  });
});

describe('properties', () => {
  const eighths = (most: number) => fc.integer({ min: 1, max: most * 8 }).map((each) => each / 8);
  const anything: fc.Arbitrary<Measured> = fc.record({
    kind: fc.constantFrom(...hotThings),
    across: eighths(48),
    depth: fc.integer({ min: 0, max: 24 * 8 }).map((each) => each / 8),
    other: fc.option(eighths(48), { nil: undefined }),
    listed: fc.option(eighths(24), { nil: undefined }),
  });
  const material = fc.constantFrom(...materials);

  test('more flues and lights never leave more room for fill', () => {
    const entries = ({ kind, across, depth, other, listed }: Measured) => ({
      kind,
      across: `${across} in`,
      depth: `${depth} in`,
      ...(other === undefined ? {} : { other_side: `${other} in` }),
      ...(listed === undefined ? {} : { listed: `${listed} in` }),
    });
    const takenOff = (things: readonly Measured[], of: Material): number => {
      const read = answer(clearSpaces, { material: of, things: things.map(entries) }, rules);
      if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
      return feet3(read.value.figures.taken_off?.value as Quantity<'volume'>);
    };
    fc.assert(
      fc.property(
        fc.array(anything, { minLength: 1, maxLength: 5 }),
        anything,
        material,
        (things, more, of) => {
          const before = takenOff(things, of);
          return Number.isFinite(before) && before >= 0 && takenOff([...things, more], of) >= before;
        },
      ),
      { numRuns: 300 },
    );
  });

  test('without a listing the ring is never below the published one, and with cellulose never below its label', () => {
    fc.assert(
      fc.property(anything, material, (of, kind) => {
        const [, glass = 0, cellulose = 0] = published.find(([name]) => name === of.kind) ?? [];
        const least = kind === 'cellulose' ? cellulose : glass;
        const bare = inches(space({ ...of, listed: undefined }, kind).ring) ?? Number.NaN;
        const listed = inches(space(of, kind).ring) ?? Number.NaN;
        return bare >= least && (isLight(of.kind) || of.kind === 'masonry chimney' ? listed >= least : true);
      }),
    );
  });

  test('the ring is part of what is taken off; deeper fill or a wider thing takes off no less; the shield stands above the fill', () => {
    fc.assert(
      fc.property(anything, material, eighths(12), (of, kind, more) => {
        const found = space(of, kind);
        const deeper = space({ ...of, depth: of.depth + more }, kind);
        const wider = space({ ...of, across: of.across + more }, kind);
        const shield = inches(found.shield);
        return (
          feet3(found.ringVolume) >= -1e-12 &&
          feet3(found.ringVolume) <= feet3(found.takenOff) + 1e-12 &&
          feet3(deeper.takenOff) >= feet3(found.takenOff) &&
          feet3(wider.takenOff) >= feet3(found.takenOff) &&
          (shield === undefined || shield >= of.depth + 2)
        );
      }),
    );
  });

  test('the same in millimetres', () => {
    const near = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a));
    fc.assert(
      fc.property(anything, material, (of, kind) => {
        const [a, b] = [clearSpace(thing(of), kind, rules), clearSpace(thing(of, 'mm'), kind, rules)];
        return (
          near(feet3(a.takenOff), feet3(b.takenOff)) &&
          near(feet3(a.ringVolume), feet3(b.ringVolume)) &&
          near(inches(a.ring) ?? 0, inches(b.ring) ?? 0) &&
          near(inches(a.shield) ?? 0, inches(b.shield) ?? 0)
        );
      }),
    );
  });
});

describe('bad entries come back as sentences', () => {
  const one = { kind: 'masonry chimney', across: '12 in', depth: '10 in' };
  const bad: readonly [string, Readonly<Record<string, unknown>>, RegExp][] = [
    [
      'no flue at all',
      { things: [] },
      /^Flues and lights \(things\): found an empty list; expected one flue or light or more\.$/,
    ],
    [
      'fill deeper than the cavity',
      { things: [one, { ...one, cavity: '9 in' }] },
      /^Depth of the fill there \(flue or light 2\) \(things\.1\.depth\): found 10 in in a cavity of 9 in; expected a depth that the cavity has\.$/,
    ],
    [
      'a kind that there is not',
      { things: [{ ...one, kind: 'stove' }] },
      /^What it is \(flue or light 1\) \(things\.0\.kind\): found "stove"/,
    ],
    ['a width of nothing', { things: [{ ...one, across: '0 in' }] }, /expected more than 0, such as 5 in/],
    [
      'a single-wall connector listed for contact',
      { material: 'cellulose', things: [{ ...one, kind: 'connector, oil', listed: '0 in' }] },
      /^Clearance of its listing \(flue or light 1\) \(things\.0\.listed\): found 0 in for a single-wall connector, oil; expected more than 0/,
    ],
    ['a negative listing', { things: [{ ...one, listed: '-1 in' }] }, /expected an amount above 0/],
    ['a width in pounds', { things: [{ ...one, across: '5 lb' }] }, /found "5 lb" \(weight\)/],
  ];
  test.each(bad)('%s', (_, given, says) => {
    const read = answer(clearSpaces, { material: 'glass fibre', ...given }, rules);
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
  });
});

describe('what is printed of the clear spaces', () => {
  test('a row each, numbered, with the shield or that it runs to the roof', () => {
    // Vent: 2 in all round; 6 + 4 = 10 in across. The shield, 2 in above 8 in of fill, reaches the 10 in of the cavity. Of the 8 in, 2 are old:
    // pi/4 x 10 x 10 x 6 / 1728 = 0.27271 ft3. Light: 3 in; 7 + 6 = 13 in; pi/4 x 13 x 13 x 9 / 1728 = 0.69131 ft3.
    const { figures, tables, remarks } = printed(clearSpaces, {
      material: 'glass fibre',
      things: [
        {
          kind: 'listed double-wall vent or chimney',
          across: '6 in',
          depth: '8 in',
          old_depth: '2 in',
          cavity: '10 in',
        },
        { kind: 'light, not rated for contact', across: '7 in', depth: '9 in' },
        { kind: 'light, rated for contact and airtight', across: '7 in', depth: '9 in' },
      ],
    });
    expect(tables.spaces).toEqual([
      '1: listed double-wall vent or chimney | 2 in | the federal work specifications | 10 in | to the roof | none | 0.273 ft³',
      '2: light, not rated for contact | 3 in | the electrical code | 13 in | 11 in | none | 0.691 ft³',
      '3: light, rated for contact and airtight | 0 in | nothing; the fill may touch it | none | none | may lie | 0 ft³',
    ]);
    expect(figures).toMatchObject({ widest_ring: '3 in', highest_shield: '11 in' });
    expect(remarks).toEqual([
      expect.stringMatching('gauge sheet steel or heavier'),
      expect.stringMatching('runs up to the roof'),
      expect.stringMatching('None may lie above the light'),
      expect.stringMatching('its label says it leaks'),
    ]);
  });

  test('the cautions of all of them, each once', () => {
    const flue = { kind: 'connector, oil', across: '6 in', depth: '8 in' };
    expect(
      printed(clearSpaces, {
        material: 'glass fibre',
        things: [
          flue,
          flue,
          { kind: 'light, rated for contact, leakage not known', across: '6 in', depth: '8 in' },
        ],
      }).cautions,
    ).toEqual(['caution.flue.connector', 'caution.flue.keep-clear', 'caution.before.seal-first']);
  });

  test.each([
    [
      'old insulation deeper than all of it',
      { old_depth: '9 in' },
      /^Of it, old insulation \(flue or light 2\) \(things.1.old_depth\): found 9 in of 8 in; expected no more than all of it/,
    ],
    [
      'fill deeper than the cavity',
      { cavity: '7 in' },
      /^Depth of the fill there \(flue or light 2\) \(things.1.depth\): found 8 in in a cavity of 7 in/,
    ],
  ])('%s is refused', (_, more, says) => {
    const flue = { kind: 'masonry chimney', across: '16 in', depth: '8 in' };
    expect(
      complaints(clearSpaces, { material: 'glass fibre', things: [flue, { ...flue, ...more }] }),
    ).toEqual([expect.stringMatching(says)]);
  });

  test('old insulation as deep as all of it leaves nothing to take off', () => {
    const all = { kind: 'masonry chimney', across: '16 in', depth: '8 in', old_depth: '8 in' };
    expect(printed(clearSpaces, { material: 'glass fibre', things: [all] }).figures.taken_off).toBe('0 ft³');
  });
});

describe('a flue that the fill may touch', () => {
  const vent = { kind: 'listed double-wall vent or chimney', across: 6, depth: 10, listed: 0 } as const;
  test('has no shield in glass fibre, and one in cellulose, whose label asks for a barrier', () => {
    expect(space(vent).shield).toBeUndefined();
    expect(inches(space(vent, 'cellulose').shield)).toBe(12);
  });
  test('is never a single-wall connector: where nothing refuses the entry, the published distance holds', () => {
    expect(ringOfFlue('connector, oil', quantity(0, 'in'), rules)).toMatchObject({
      from: publishedRing('connector, oil', rules).from,
    });
  });
});

describe('what a flue or light alone is told', () => {
  const remarks = (of: Partial<Measured> & Pick<Measured, 'kind'>, material?: Material) =>
    space({ across: 6, depth: 10, ...of }, material).remarks.map(remarkText);
  const gauge = 'gauge sheet steel or heavier';
  const vent = 'listed double-wall vent or chimney';
  const cases: readonly [
    what: string,
    of: Partial<Measured> & Pick<Measured, 'kind'>,
    material: Material,
    says: readonly string[],
  ][] = [
    ['a vent by its published distance', { kind: vent }, 'glass fibre', [gauge]],
    [
      'a listing that gives less',
      { kind: vent, listed: 1 },
      'glass fibre',
      [gauge, 'less than the published distance'],
    ],
    ['a listing that gives as much', { kind: vent, listed: 2 }, 'glass fibre', [gauge]],
    [
      'a vent listed for contact',
      { kind: vent, listed: 0 },
      'glass fibre',
      ['lets the fill touch it, so no shield', 'less than the published distance'],
    ],
    [
      'a vent listed for contact, in cellulose: the label asks for a barrier all the same',
      { kind: vent, listed: 0 },
      'cellulose',
      [gauge, 'less than the published distance', 'label of cellulose gives no distance'],
    ],
    ['a vent in cellulose', { kind: vent }, 'cellulose', [gauge, 'label of cellulose gives no distance']],
    [
      'a masonry chimney',
      { kind: 'masonry chimney' },
      'glass fibre',
      [gauge, 'air space about a masonry chimney'],
    ],
    [
      'a masonry chimney whose paper says less',
      { kind: 'masonry chimney', listed: 1 },
      'glass fibre',
      [gauge, 'no listing that makes it less', 'air space about a masonry chimney'],
    ],
    [
      'a light that may leak',
      { kind: 'light, rated for contact, leakage not known' },
      'glass fibre',
      ['may leak air'],
    ],
    [
      'a light that is kept clear',
      { kind: 'light, not rated for contact' },
      'glass fibre',
      ['None may lie above'],
    ],
    ['a vent in a cavity with room to spare', { kind: vent, cavity: 70 }, 'glass fibre', [gauge]],
    [
      'a vent in a cavity of just the height of its shield',
      { kind: vent, depth: 8, cavity: 10 },
      'glass fibre',
      [gauge, 'runs up to the roof'],
    ],
  ];
  test.each(cases)('%s', (_, of, material, says) => {
    expect(remarks(of, material)).toEqual(says.map((words) => expect.stringMatching(words)));
  });
});

describe('the working of a clear space', () => {
  const letters = (place?: number, more: Partial<Measured> = {}) => {
    const found = clearSpace(
      thing({ kind: 'masonry chimney', across: 16, other: 12, depth: 8, old: 2, ...more }),
      'glass fibre',
      rules,
      place,
    );
    return working(found.ringVolume);
  };
  test('of one alone has plain letters, and of the second in a list those with its number', () => {
    expect(letters().map(({ symbol }) => symbol)).toEqual(['Dk', 'dn', 'Vk', 'Vf', 'Vr']);
    expect(letters(1).map(({ symbol }) => symbol)).toEqual(['Dk2', 'dn2', 'Vk2', 'Vf2', 'Vr2']);
  });

  test('tells the column of a rectangular thing, and that of a round one, with all that went in', () => {
    // The masonry chimney keeps 2 in: 16 + 2 x 2 = 20 in.
    const told = (found: ReturnType<typeof letters>, symbol: string) => {
      const line = found.find((each) => each.symbol === symbol);
      return [line?.symbols, line?.numbers];
    };
    const chimney = letters();
    expect(told(chimney, 'Vk')).toEqual(['Dk · (Do + 2 · c) · dn', 'Dk = 20 in, 12 in, c = 2 in, dn = 6 in']);
    expect(told(chimney, 'Vf')).toEqual(['D · Do · dn', '16 in, 12 in, dn = 6 in']);
    const round = letters(undefined, { other: undefined, old: undefined });
    expect(told(round, 'Vk')).toEqual(['π/4 · Dk² · d', 'Dk = 20 in, 8 in']);
    expect(told(round, 'Vf')).toEqual(['π/4 · D² · d', '16 in, 8 in']);
  });
});

describe('of two distances that hold the larger one does, in a rulebook too where the other is the larger', () => {
  const withValue = (id: string, number: number) =>
    openRulebook(changedRulebook(data, { [id]: { kind: 'at-least', number, unit: 'in' } }));
  const vents = withValue('clearance.flue.to-combustibles', 12);
  const cellulose = withValue('clearance.light.cellulose', 6);
  // NFPA 211: 6 in about a connector of listed gas, 18 in about one of solid fuel. NEC 410.116(A)(2): 3 in about a light that is not rated.
  test.each<[title: string, kind: HotThingKind, material: Material, book: typeof rules, ring: number]>([
    [
      'a connector that may stand nearer than any vent',
      'connector, listed gas with draft hood',
      'glass fibre',
      vents,
      12,
    ],
    ['a connector that stays farther', 'connector, solid fuel', 'glass fibre', vents, 18],
    ['a light that is not rated, in cellulose', 'light, not rated for contact', 'cellulose', cellulose, 6],
    [
      'a light that is not rated, in glass fibre',
      'light, not rated for contact',
      'glass fibre',
      cellulose,
      3,
    ],
  ])('%s', (_, kind, material, book, ring) => {
    expect(inches(clearSpace(thing({ kind, across: 6, depth: 10 }), material, book).ring)).toBe(ring);
  });
});
