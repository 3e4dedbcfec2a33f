import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { hoseMarks } from '../../src/calc/marks/marks.ts';
import type { Ring } from '../../src/calc/ways/flue-ring.ts';
import { behindFlues } from '../../src/job/parts/behind-flue.ts';
import { marksPart } from '../../src/job/parts/marks.ts';
import { workPart } from '../../src/job/parts/part.ts';
import { quantity } from '../../src/quantity/quantity.ts';
import { exampleEntries, planOf, rules } from './entries.ts';

const inches = (amount: number) => quantity(amount, 'in');
/** A flue 8 in wide with 2 in about it, 120 in along, in the line of the openings. */
const ring: Ring = { along: inches(120), at: inches(80), across: inches(12) };

/** Openings 84 and 252 in along a cavity 160 in wide, each with the stretch to half way, and a stand-off of 6 in. */
const opening = (along: number, from: number, to: number, rings: readonly Ring[]) => ({
  name: `Opening ${along}`,
  bags: quantity(6, 'bag'),
  found: hoseMarks(
    {
      along: inches(along),
      from: inches(from),
      to: inches(to),
      width: inches(160),
      across: inches(80),
      streamReach: inches(24),
      standOff: inches(6),
      rings,
    },
    rules,
  ),
});

const saidAt = (row: Parameters<typeof behindFlues>[0]): readonly string[][] =>
  behindFlues(row).map((remarks) => remarks.map(remarkText));

describe('what lies behind a flue is blown from the next opening', () => {
  test('which is told where to push, and how much', () => {
    const [near = [], far = []] = saidAt([opening(84, 0, 168, [ring]), opening(252, 168, 336, [])]);
    expect(near).toEqual([
      expect.stringMatching(/^About .* bags of this opening’s fill .* opening 252 blows them\.$/),
    ]);
    // From 252 in the flue is 132 in off towards the starting end, which lies at 3 o'clock: less half of 12 in and of the hose of 2 in, and 6 in.
    expect(far).toEqual([
      expect.stringMatching(/^Push towards the flue of opening 84 as well: at 3:00, tape at 9 ft 11 in\./),
    ]);
  });

  test('in the other direction too', () => {
    const mirrored: Ring = { ...ring, along: inches(216) };
    const [near = []] = saidAt([opening(84, 0, 168, []), opening(252, 168, 336, [mirrored])]);
    expect(near).toEqual([
      expect.stringMatching(/^Push towards the flue of opening 252 as well: at 9:00, tape at 9 ft 11 in\./),
    ]);
  });

  test('and where none stands there, that is said', () => {
    const beforeAll: Ring = { ...ring, along: inches(48) };
    const [near = []] = saidAt([opening(84, 0, 168, [beforeAll]), opening(252, 168, 336, [])]);
    expect(near).toEqual([expect.stringMatching(/^No opening of the plan lies behind the flue\./)]);
  });

  test('a flue that leaves nothing in its shadow is no matter', () => {
    const low: Ring = { along: inches(84), at: inches(6), across: inches(6) };
    expect(saidAt([opening(84, 0, 168, [low]), opening(252, 168, 336, [])])).toEqual([[], []]);
  });
});

test('the example: 14.5 of 133.9 ft3 of opening 4 lie behind its flue, by a count of its volume in cubes', () => {
  const cards = workPart(marksPart, planOf(exampleEntries), rules);
  const texts = cards.map((card) => (card.state === 'answered' ? card.answer.remarks.map(remarkText) : []));
  const share = cards[3]?.state === 'answered' ? cards[3].answer.figures.unreached?.value : undefined;
  // The count was by volume, over old insulation of 2 in; the card counts squares.
  expect(typeof share === 'object' && share.amount).toBeGreaterThan(9);
  expect(typeof share === 'object' && share.amount).toBeLessThan(12);
  expect(texts[3]?.[0]).toMatch(/^About 0\.7/);
  expect(texts[4]?.[0]).toMatch(/^Push towards the flue of opening 4 as well/);
});
