import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOut } from '../../../src/calc/holes/lay-out.ts';
import type { LayoutProblem, RuleName } from '../../../src/calc/holes/problem.ts';
import { bareRoof, every, smallRoofs } from './roofs.ts';

/** The same roof with only some of its rules: the others are loosened until they can't matter. */
function withOnly(roof: LayoutProblem, rules: readonly RuleName[]): LayoutProblem {
  const anywhere = { low: 0, high: roof.length };
  const has = (rule: RuleName) => rules.includes(rule);
  return {
    ...roof,
    first: has('first') ? roof.first : anywhere,
    last: has('last') ? roof.last : anywhere,
    spacing: has('spacing') ? roof.spacing : anywhere,
    trusses: has('trusses') ? roof.trusses : [],
    seams: has('seams') ? roof.seams : [],
    obstacles: has('obstacles') ? roof.obstacles : [],
  };
}

function expectIrreducible(roof: LayoutProblem, clash: readonly RuleName[], clashing: string): void {
  const alone = (['first', 'last', 'spacing', 'trusses', 'seams', 'obstacles'] as const).filter(
    (rule) => layOut(withOnly(roof, [rule])).outcome === clashing,
  );
  if (clashing === 'least-departure' && alone.length > 0) {
    expect(clash).toEqual(alone);
    return;
  }
  expect(layOut(withOnly(roof, clash)).outcome).toBe(clashing);
  for (const rule of clash) {
    const others = clash.filter((other) => other !== rule);
    expect(layOut(withOnly(roof, others)).outcome, `without ${rule}`).not.toBe(clashing);
  }
}

describe('the rules that clash', () => {
  test('can’t hold together, and can as soon as any one of them is let off, on 1,000 small roofs', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(smallRoofs([1, 1 / 8, 0.1], { least: 6, most: 26 }), (roof) => {
        const found = layOut(roof);
        if (found.outcome === 'meets-every-rule') return;
        seen.add(found.clash.join(' '));
        expectIrreducible(roof, found.clash, found.outcome);
      }),
      { numRuns: 1000, seed: 3 },
    );
    expect(seen.size).toBeGreaterThan(10);
  });

  test.each([10, 17, 20, 23.5, 33, 35])('are the ranges alone on a bare roof of %s ft', (feet) => {
    const found = layOut(bareRoof(feet));
    expect(found.outcome).toBe('least-departure');
    if (found.outcome === 'meets-every-rule') return;
    expect(found.clash.every((rule) => ['first', 'last', 'spacing'].includes(rule))).toBe(true);
    expectIrreducible(bareRoof(feet), found.clash, 'least-departure');
  });

  // By hand: a hole of 6 ft or more from an end, and half its own width of roof behind it, is on no roof that is shorter.
  test.each<[feet: number, clash: readonly RuleName[]]>([
    [3, ['first', 'last']],
    [6, ['first', 'last']],
    // Here either end would let the hole lie; the two of them don't.
    [7, ['first', 'last']],
    [11, ['first', 'last']],
    [17, ['first', 'last', 'spacing']],
  ])('of a roof of %s ft that is too short are those of both ends', (feet, clash) => {
    expect(layOut(bareRoof(feet))).toMatchObject({ clash });
  });

  test('are that of the one end alone where the other holds', () => {
    const roof = { ...bareRoof(5), last: { low: 12, high: 24 } };
    expect(layOut(roof)).toMatchObject({ clash: ['first'] });
    expect(layOut({ ...roof, first: roof.last, last: { low: 72, high: 96 } })).toMatchObject({
      clash: ['last'],
    });
  });

  test('are the ranges alone where they clash by themselves, however crowded the roof', () => {
    const roof = {
      ...bareRoof(20),
      trusses: every(24, 0, 240),
      seams: every(48, 0, 240),
      obstacles: [{ from: 100, to: 130, name: 'vent' }],
    };
    expect(layOut(roof)).toMatchObject({ clash: ['first', 'last', 'spacing'] });
  });

  test('are the ranges even where an obstacle would clash with one of them', () => {
    // By hand: the vent takes all of 72 to 96 in, so the first hole and it clash too; but on 20 ft the ranges clash without it.
    const roof = { ...bareRoof(20), obstacles: [{ from: 70, to: 98, name: 'vent' }] };
    expect(layOut(roof)).toMatchObject({ clash: ['first', 'last', 'spacing'] });
  });

  test('name the obstacle that stands where the only hole must go', () => {
    // By hand: on 16 ft one hole lies 96 in from either end, at 96 only; the flue takes it.
    const roof = { ...bareRoof(16), obstacles: [{ from: 90, to: 100, name: 'flue' }] };
    expect(layOut(roof)).toMatchObject({ clash: ['first', 'last', 'spacing', 'obstacles'] });
  });

  test('leave the spacing out where a single hole would do but for the obstacle', () => {
    // By hand: without the spacing rule two holes of the 16 ft roof may lie 10 in apart, at 86 and 96 or so; here the flue takes all
    // of the range of the first hole, and spacing has nothing to do with it.
    const roof = { ...bareRoof(16), obstacles: [{ from: 70, to: 100, name: 'flue' }] };
    expect(layOut(roof)).toMatchObject({ clash: ['first', 'obstacles'] });
  });
});
