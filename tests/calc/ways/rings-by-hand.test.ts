import { describe, expect, test } from 'vitest';
import { cavitySection } from '../../../src/calc/cavity/section.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { type BayProblem, edgeBays, misfit } from '../../../src/calc/ways/bays.ts';
import type { Ring } from '../../../src/calc/ways/flue-ring.ts';
import { gableLanes, type LaneProblem } from '../../../src/calc/ways/lanes.ts';
import { amountIn, type Quantity, quantity } from '../../../src/quantity/quantity.ts';
import { rules } from '../told.ts';

const feet = (amount: number) => quantity(amount, 'ft');
const inches = (amount: number) => quantity(amount, 'in');
const cubicFeet = (q: Quantity<'volume'> | undefined): number => (q ? amountIn(q, 'ft3') : Number.NaN);
const blown = { density: quantity(1.5, 'lb/ft3'), bagWeight: quantity(30, 'lb/bag') };

/** 10 ft wide and 12 in high everywhere. */
const level = cavitySection({ shape: 'level', width: feet(10), eave: inches(12) } as Parameters<
  typeof cavitySection
>[0]);

describe('what a ring takes off what is left over in a lane', () => {
  /** One lane, 60 ft long, which a hose of 20 ft is pushed along from both ends: 20 ft in the middle are left over, 10 ft2 of them. */
  const lanes = (more: Partial<LaneProblem>) =>
    gableLanes(
      {
        section: level,
        length: feet(60),
        ends: 'both ends',
        spread: feet(5),
        reach: feet(20),
        oldDepth: undefined,
        trussSpacing: undefined,
        ...blown,
        ...more,
      },
      rules,
    );
  // 10 in wide, far to the side of the hose.
  const ring = (along: number): Ring => ({ along: feet(along), at: inches(20), across: inches(10) });
  const column = ((Math.PI / 4) * 10 ** 2 * 12) / 1728;
  test.each<[title: string, along: number, left: number]>([
    ['one before it, nothing', 10, 200],
    ['one in it, its column', 30, 200 - column],
    ['one behind it, nothing', 50, 200],
  ])('%s', (_, along, left) => {
    const found = lanes({ rings: [ring(along)] });
    expect(cubicFeet(found.leftVolume)).toBeCloseTo(left, 9);
    expect(cubicFeet(found.volume)).toBeCloseTo(600 - column, 9);
    expect(found.lanes[0]?.stopsAtRing).toBe(false);
  });

  test('a hose that does not go in is stopped by no ring', () => {
    // 3 in between two chords of 1 1/2 in are no room at all.
    const low = cavitySection({ shape: 'level', width: feet(10), eave: inches(3) } as Parameters<
      typeof cavitySection
    >[0]);
    const found = lanes({
      section: low,
      trussSpacing: feet(2),
      rings: [{ along: feet(30), at: feet(5), across: inches(10) }],
    });
    expect(found.lanes.map(({ feedable, stopsAtRing }) => [feedable, stopsAtRing])).toEqual([[false, false]]);
  });

  test('a width that the spread goes into to the last place makes no lane more, in meters too', () => {
    const counts = [1, 2, 3, 4, 5, 6, 7].flatMap((count) =>
      [0.3, 0.7, 1.1].map((spread) => {
        const section = cavitySection({
          shape: 'level',
          width: quantity(2 * spread * count, 'm'),
          eave: inches(12),
        } as Parameters<typeof cavitySection>[0]);
        return [count, lanes({ section, spread: quantity(spread, 'm') }).lanes.length];
      }),
    );
    expect(counts.filter(([count, found]) => count !== found)).toEqual([]);
  });
});

const edgeProblem: BayProblem = {
  section: level,
  length: feet(4),
  trussSpacing: feet(2),
  trusses: [0, 24, 48],
  trussesTold: [],
  edges: 'one edge',
  tube: inches(2),
  oldDepth: undefined,
  ...blown,
};
const bays = (more: Partial<BayProblem>) => edgeBays({ ...edgeProblem, ...more }, rules);

describe('a ring in a bay', () => {
  test.each<[title: string, along: number, first: number, second: number]>([
    ['at an end of the roof, half of its column', 0, 0.5, 0],
    ['at a truss, half of it in either bay', 24, 0.5, 0.5],
    ['in a bay, all of it there', 12, 1, 0],
    ['at the far end, half of it', 48, 0, 0.5],
  ])('%s', (_, along, first, second) => {
    const ring: Ring = { along: inches(along), at: feet(5), across: inches(12) };
    const column = ((Math.PI / 4) * 12 ** 2 * 12) / 1728;
    const [without, with_] = [bays({}).bays, bays({ rings: [ring] }).bays];
    const taken = without.map(({ volume }, place) => cubicFeet(volume) - cubicFeet(with_[place]?.volume));
    expect(taken).toEqual([
      expect.closeTo(first * column, 9) as number,
      expect.closeTo(second * column, 9) as number,
    ]);
  });

  /*
   * The home of 66 ft and 13 ft 10 in, bowed from 5 to 15 in, over old insulation of 1 1/2 in, with a flue of 12 in and 18 in kept clear about it
   * at 47 ft and 65 in across: bags by an independent integration over the ring, cut at the trusses, to the third place; of its own bay, from the back edge.
   */
  test('one wider than its bay takes from its neighbours too', () => {
    const section = cavitySection({
      shape: 'bowed',
      width: inches(166),
      eave: inches(5),
      ridge: inches(15),
    } as Parameters<typeof cavitySection>[0]);
    const found = edgeBays(
      {
        ...edgeProblem,
        section,
        length: feet(66),
        trusses: Array.from({ length: 34 }, (_, place) => 24 * place),
        edges: 'both edges',
        oldDepth: inches(1.5),
        rings: [{ along: feet(47), at: inches(65), across: inches(48) }],
      },
      rules,
    );
    const [before, its, after] = found.bays.slice(22, 25);
    const bagsIn = (bags: Quantity<'pieces'> | undefined) => amountIn(bags ?? quantity(0, 'bag'), 'bag');
    expect([bagsIn(before?.bags), bagsIn(its?.bagsBySide[0]), bagsIn(after?.bags)]).toEqual([
      expect.closeTo(1.03, 3) as number,
      expect.closeTo(0.211, 3) as number,
      expect.closeTo(1.03, 3) as number,
    ]);
    expect(Math.abs(cubicFeet(found.volume) - 754.2)).toBeLessThan(0.05);
  });

  // The middle of the first bay is 12 in along. A ring of 12 in stops a tube of 2 in 7 in before its own middle.
  const inBay = (at: number): Ring => ({ along: inches(12), at: inches(at), across: inches(12) });

  test('one on either side of the ridge leaves each side its own half, filled as far as its ring', () => {
    const [bay] = bays({ edges: 'both edges', rings: [inBay(30), inBay(90)], reach: feet(20) }).bays;
    expect(bay?.pushed.map((q) => amountIn(q, 'in'))).toEqual([
      expect.closeTo(23, 9) as number,
      expect.closeTo(23, 9) as number,
    ]);
    const [back, front] = bay?.volumeBySide ?? [];
    expect(cubicFeet(back)).toBeCloseTo(cubicFeet(front), 9);
    expect(bay?.stopsAtRing).toBe(true);
  });

  test('one past the ridge stops the tube of the other edge short, and the tube of the back goes on to it', () => {
    const [bay] = bays({ edges: 'both edges', rings: [inBay(90)], reach: feet(20) }).bays;
    // 120 - 90 - 7 = 23 from the front, and 120 - 23 = 97 would be filled from the back, whose tube stops at 90 - 7 = 83.
    expect(bay?.pushed.map((q) => amountIn(q, 'in'))).toEqual([
      expect.closeTo(83, 9) as number,
      expect.closeTo(23, 9) as number,
    ]);
  });

  describe('where the tube does not go in at the front, whose eave is 1 in high', () => {
    const lopsided = {
      edges: 'both edges' as const,
      reach: feet(20),
      section: cavitySection({
        shape: 'measured',
        width: feet(10),
        points: [
          { from_eave: inches(0), depth: inches(10) },
          { from_eave: inches(60), depth: inches(14) },
          { from_eave: inches(120), depth: inches(1) },
        ],
      } as unknown as Parameters<typeof cavitySection>[0]),
    };
    const [empty] = bays(lopsided).bays;

    test('a ring on the back side hands nothing on to the front', () => {
      const [bay] = bays({ ...lopsided, rings: [inBay(40)] }).bays;
      expect(bay?.pushed.map((q) => amountIn(q, 'in'))).toEqual([expect.closeTo(33, 9) as number, 0]);
      expect(cubicFeet(bay?.volumeBySide[1])).toBeCloseTo(cubicFeet(empty?.volumeBySide[1]), 9);
    });

    test('a ring on the front side stops no tube', () => {
      const [bay] = bays({ ...lopsided, rings: [inBay(90)] }).bays;
      expect(bay?.stopsAtRing).toBe(false);
      expect(bay?.pushed.map((q) => amountIn(q, 'in'))).toEqual([expect.closeTo(60, 9) as number, 0]);
    });
  });
});

test('a tube of which nobody told how far it goes is counted on for the lower end of the usual reach', () => {
  const width = feet(30);
  const section = cavitySection({ shape: 'level', width, eave: inches(12) } as Parameters<
    typeof cavitySection
  >[0]);
  const [bay] = bays({ section }).bays;
  const { low, high } = rules.range('access.hose.reach');
  expect(amountIn(low, 'ft')).toBeLessThan(amountIn(high, 'ft'));
  expect(amountIn(bay?.pushed[0] ?? width, 'ft')).toBeCloseTo(amountIn(low, 'ft'), 9);
  // The cavity is as high everywhere, so what is left over is the share of the width beyond.
  expect(cubicFeet(bay?.leftVolume) / cubicFeet(bay?.volume)).toBeCloseTo((30 - amountIn(low, 'ft')) / 30, 9);
});

describe('a tube stops where the cavity becomes too low for it', () => {
  const measured = (...points: readonly (readonly [at: number, depth: number])[]) =>
    cavitySection({
      shape: 'measured',
      width: feet(14),
      eave: undefined,
      ridge: undefined,
      points: points.map(([at, depth]) => ({ from_eave: inches(at), depth: inches(depth) })),
    });
  /*
   * By hand: from 15 in deep at 7 ft to 1 in at 14 ft, 2 in deep at 13/14 of the way, 162 in. From 6 in to 1 in over 3 ft, 2 in deep at 4/5 of
   * it, 28.8 in; and from 1 in to 15 in over 4 ft, at 1/14 of it, 39.43 in, which is 128.57 in from the other eave.
   */
  test.each<
    [
      title: string,
      section: ReturnType<typeof measured>,
      edges: BayProblem['edges'],
      pushed: number[],
      low: string[],
    ]
  >([
    [
      'before a far eave',
      measured([0, 6], [84, 15], [168, 1]),
      'one edge',
      [162],
      ['From 13 ft 6 in inside the lifted edge'],
    ],
    [
      'before a dip, and the tube from the other edge on past the ridge to it',
      measured([0, 6], [36, 1], [84, 15], [168, 6]),
      'both edges',
      [28.8, 168 - 39 - 3 / 7],
      ['From 2 ft 4 3/4 in inside the back edge'],
    ],
    ['nowhere, in one as deep as it is wide', measured([0, 2], [84, 15], [168, 2]), 'one edge', [168], []],
  ])('%s', (_, section, edges, pushed, low) => {
    const found = bays({ section, edges, reach: feet(20) });
    expect(found.bays[0]?.pushed.map((q) => amountIn(q, 'in'))).toEqual(
      pushed.map((amount) => expect.closeTo(amount, 6) as number),
    );
    const said = found.sides.flatMap((side) => misfit(side, found.tube)).map(remarkText);
    expect(said.map((remark) => remark.replace(/ the cavity is .*/, ''))).toEqual(low);
    expect(found.bays[0]?.stopsAtRing).toBe(false);
    expect(cubicFeet(found.leftVolume) > 0).toBe(low.length > 0);
  });
});
