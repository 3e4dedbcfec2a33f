import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { hoseMarks, type Opening } from '../../src/calc/marks/marks.ts';
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
const opening = (
  along: number,
  from: number,
  to: number,
  rings: readonly Ring[],
  more: Partial<Opening> = {},
) => ({
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
      ...more,
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

  test('the tape goes to the eighth below, or the hose would run into the ring', () => {
    // 132 in, less half of 12.1 in and of 2 in, and 6 in, are 118.95 in: 9 ft 10 7/8 in and a bit, though 9 ft 11 in is nearer.
    const wider: Ring = { ...ring, across: inches(12.1) };
    const [, far = []] = saidAt([opening(84, 0, 168, [wider]), opening(252, 168, 336, [])]);
    expect(far[0]).toContain('tape at 9 ft 10 7/8 in.');
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

  const bagsIn = (texts: readonly string[]) =>
    texts.map((text) => Number(/about ([\d.]+) bags/i.exec(text)?.[1]));

  test('two flues on one side hold back what lies behind both, once', () => {
    const two = [60, 100].map((at): Ring => ({ ...ring, at: inches(at) }));
    const alone = opening(84, 0, 168, two);
    const [near = [], far = []] = saidAt([alone, opening(252, 168, 336, [])]);
    expect(near).toEqual([expect.stringContaining('belong behind its 2 flues there.')]);
    expect(
      far.map((text) => /^Push towards the flue .* At its 2 flues together blow about/.test(text)),
    ).toEqual([true, true]);
    // Of 6 bags the share that is out of reach, whichever of the two it lies behind.
    const byHand = Number(((6 * alone.found.unreached.amount) / 100).toPrecision(2));
    expect(bagsIn([...near, ...far])).toEqual([byHand, byHand, byHand]);
  });

  test('flues on either side hold back for each neighbour its own part: of two that mirror each other the half', () => {
    const either = [120, 216].map((along): Ring => ({ ...ring, along: inches(along) }));
    const middle = opening(168, 84, 252, either);
    const [before = [], between = [], after = []] = saidAt([
      opening(42, 0, 84, []),
      middle,
      opening(294, 252, 336, []),
    ]);
    expect(between).toEqual([
      expect.stringContaining('Hold them back: opening 42 blows them.'),
      expect.stringContaining('Hold them back: opening 294 blows them.'),
    ]);
    const half = Number(((6 * middle.found.unreached.amount) / 100 / 2).toPrecision(2));
    expect(half).toBeGreaterThan(0);
    expect(bagsIn([...before, ...between, ...after])).toEqual([half, half, half, half]);
  });

  test('the larger part is held back for the neighbour behind the wider flue, on either hand', () => {
    const [narrow, wide] = [
      { ...ring, along: inches(120), across: inches(8) },
      { ...ring, along: inches(216), across: inches(40) },
    ];
    for (const startingEnd of ['right hand', 'left hand'] as const) {
      const { start, far } = opening(168, 84, 252, [narrow, wide], { startingEnd }).found.unreachedTowards;
      expect(far.amount).toBeGreaterThan(start.amount);
    }
  });

  test('what a short stream leaves out everywhere is not told as lying behind a flue that stops no push', () => {
    // Of 36 directions, 10° apart, two pass 100 · sin 5° = 8.7 in beside a flue that stands 100 in off between them; half of 6 in and of the hose of 2 in is 4.
    const between: Ring = {
      along: inches(84 + 100 * Math.SQRT1_2),
      at: inches(80 + 100 * Math.SQRT1_2),
      across: inches(6),
    };
    const short = opening(84, 0, 168, [between], { streamReach: inches(6) });
    expect(short.found.unreached.amount).toBeGreaterThan(0);
    expect(saidAt([short, opening(252, 168, 336, [])])).toEqual([[], []]);
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
