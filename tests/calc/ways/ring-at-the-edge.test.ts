import { expect, test } from 'vitest';
import { cavitySection } from '../../../src/calc/cavity/section.ts';
import { edgeBays } from '../../../src/calc/ways/bays.ts';
import { inches, quantity } from '../../../src/quantity/quantity.ts';
import { rules } from '../told.ts';

test('a tube is pushed in by nothing, and not by less, where the ring about a flue reaches over the lifted edge', () => {
  const { bays } = edgeBays(
    {
      section: cavitySection({
        shape: 'level',
        width: quantity(10, 'ft'),
        eave: quantity(12, 'in'),
        ridge: undefined,
        points: undefined,
      }),
      oldDepth: undefined,
      length: quantity(4, 'ft'),
      trussSpacing: quantity(2, 'ft'),
      trusses: [0, 24, 48],
      trussesTold: [],
      edges: 'one edge',
      // In the middle of the first bay, 3 in from the eave: its ring begins 5 in outside, and half of the tube more.
      rings: [{ along: quantity(12, 'in'), at: quantity(3, 'in'), across: quantity(16, 'in') }],
      density: quantity(1.5, 'lb/ft3'),
      bagWeight: quantity(30, 'lb/bag'),
    },
    rules,
  );
  expect(bays.map(({ pushed }) => pushed.map(inches))).toEqual([[0], [120]]);
  // All of the first bay is left over then: what it takes, and no more.
  expect(bays[0]?.leftVolume.amount).toBeCloseTo(bays[0]?.volume.amount ?? Number.NaN, 9);
});
