import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { hoseMarks } from '../../src/calc/marks/marks.ts';
import type { Ring } from '../../src/calc/ways/flue-ring.ts';
import { behindFlues } from '../../src/job/parts/behind-flue.ts';
import { marksPart } from '../../src/job/parts/marks.ts';
import { workPart } from '../../src/job/parts/part.ts';
import { quantity } from '../../src/quantity/quantity.ts';
import { exampleEntries, exampleWith, planOf, rules } from './entries.ts';

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

  test('behind two flues each holds back its own, and no bag is told twice', () => {
    // As far to the right hand as the other to the left, so that half of what is out of reach lies behind either.
    const two = [inches(216), inches(288)].map((along): Ring => ({ ...ring, along }));
    const row = [opening(84, 0, 168, []), opening(252, 168, 336, two), opening(420, 336, 504, [])];
    const share = row[1]?.found.unreached.amount ?? 0;
    const half = (6 * share) / 100 / 2;
    expect(half).toBeGreaterThan(0.02);
    const [before = [], between = [], after = []] = saidAt(row);
    const told = [...between, ...before, ...after].map((each) =>
      Number(/bout ([\d.]+) bags/.exec(each)?.[1]),
    );
    expect(told).toEqual(Array(4).fill(Number(half.toPrecision(2))));
  });

  test('a ring that stops no push holds nothing back, and is not told', () => {
    const aside: Ring = { along: inches(288), at: inches(157), across: inches(2) };
    const [, between = [], after = []] = saidAt([
      opening(84, 0, 168, []),
      opening(252, 168, 336, [{ ...ring, along: inches(216) }, aside]),
      opening(420, 336, 504, []),
    ]);
    expect(between).toEqual([expect.stringMatching(/opening 84 blows them\.$/)]);
    expect(after).toEqual([]);
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

test('two chimneys about the third opening: what its neighbours are told to blow is what it holds back, and no more', () => {
  const chimney = (along: string) => ({
    what: 'other hot flue',
    kind: 'masonry chimney',
    along,
    side: 'back',
    from_peak: '1 ft 6 in',
    across: '12 in',
    listed: '1 ft',
  });
  const plan = planOf(
    exampleWith({ 'hose.stream_reach': '18 in', 'roof.obstacles': [chimney('29 ft'), chimney('36 ft')] }),
  );
  const cards = workPart(marksPart, plan, rules);
  const told = (words: RegExp) =>
    cards
      .flatMap((card) => (card.state === 'answered' ? card.answer.remarks.map(remarkText) : []))
      .flatMap((each) => words.exec(each)?.[1] ?? [])
      .reduce((sum, each) => sum + Number(each), 0);
  const share = cards[2]?.state === 'answered' ? cards[2].answer.figures.unreached?.value : undefined;
  const out =
    typeof share === 'object' ? (share.amount / 100) * (plan.rows[0]?.holes[2]?.bags.amount ?? 0) : 0;
  expect(out).toBeGreaterThan(0.1);
  expect(Math.abs(told(/^About ([\d.]+) bags/) - out)).toBeLessThan(0.02);
  expect(Math.abs(told(/Blow there about ([\d.]+) bags/) - out)).toBeLessThan(0.02);
});
