import { describe, expect, test } from 'vitest';
import {
  HIGHEST_GRADE,
  readingEase,
  sentencesIn,
  sentencesInCautions,
  tooHard,
} from '../../src/proofread/reading-ease.ts';

/**
 * Worked by hand from the formula of Kincaid and others (1975), 0.39 × words/sentences + 11.8 × syllables/words − 15.59. Syllables
 * counted by ear. Tolerance: half of the last figure shown.
 */
const byHand: readonly [sentences: string[], words: number, syllables: number, grade: number][] = [
  // 0.39 × 6 + 11.8 × 6/6 − 15.59
  [['The cat sat on the mat.'], 6, 6, -1.45],
  // 0.39 × 5/2 + 11.8 × 6/5 − 15.59: Lift the cap-tain. Sit down.
  [['Lift the captain.', 'Sit down.'], 5, 6, -0.455],
  // 0.39 × 8 + 11.8 × 15/8 − 15.59: In-su-la-tion set-tles if blow-ers de-liv-er too slow-ly.
  [['Insulation settles if blowers deliver too slowly.'], 7, 15, 12.42571],
];

describe('the grade of some sentences', () => {
  test.each(byHand)('%s', (sentences, words, syllables, grade) => {
    const found = readingEase(sentences);
    expect(found).toMatchObject({ words, syllables, sentences: sentences.length });
    expect(found.grade).toBeCloseTo(grade, 3);
  });

  test('where nothing is said there is none', () => {
    expect(readingEase([])).toEqual({ words: 0, sentences: 0, syllables: 0, grade: undefined });
  });
});

const read: readonly [what: string, page: string, sentences: string[]][] = [
  ['two sentences of one paragraph', 'Look up. Mark it.', ['Look up.', 'Mark it.']],
  ['one sentence over two lines', 'Look\nup.', ['Look up.']],
  ['an item of a list, even without a full stop', '- a lamp\n- a saw', ['a lamp', 'a saw']],
  ['a step and what good looks like', '1. Look up.\n\n   Good: it is dry.', ['Look up.', 'Good: it is dry.']],
  [
    'the value of a rule, as a short number with its unit',
    'Cut <Rule id="a.b.c" /> off.',
    ['Cut Six feet off.'],
  ],
  [
    'a sentence that begins with a value',
    'Tie it. <Rule id="a.b.c" /> will do.',
    ['Tie it.', 'Six feet will do.'],
  ],
  ['the words of a link and strong words', 'See [the **saw**](../saw/).', ['See the saw.']],
  ['no heading, no code block, no caution', '## Saw it\n\n```\nsaw\n```\n\n<Caution id="caution.a.b" />', []],
  ['no remark that nobody sees', 'Saw.\n\n{/* Plane. */}', ['Saw.']],
  [
    'the summary in the head, and nothing else of it',
    '---\ntitle: Saw\nsummary: How to saw.\n---\n\nSaw.',
    ['How to saw.', 'Saw.'],
  ],
];

describe('what is read of a page', () => {
  test.each(read)('%s', (_, page, sentences) => {
    expect(sentencesIn(page).map(({ text }) => text)).toEqual(sentences);
  });

  test('each sentence knows the line of its paragraph', () => {
    expect(
      sentencesIn('---\ntitle: Saw\nsummary: Saw it.\n---\n\nOne.\n\n1. Two.\n').map(({ line }) => line),
    ).toEqual([3, 6, 8]);
  });
});

test('a caution is read by what it says and what it asks to do, its values as short numbers', () => {
  const caution = 'edge:\n  level: warn\n  says: It falls {a.b.c}.\n  do: Tie it.\n';
  expect(sentencesInCautions('a.yaml', caution)).toEqual([
    { text: 'It falls Six feet.', line: 3 },
    { text: 'Tie it.', line: 4 },
  ]);
});

/** Its second sentence is the harder: long words, and more of them. */
const HARD =
  'Insulation settles if blowers deliver too slowly.\n\nConsequently the accumulated insulation eventually demonstrates considerable irregularities.\n';

describe('a page that is too hard', () => {
  test.each(Object.entries(HIGHEST_GRADE))(
    '%s: above grade %i it stops, at its hardest sentence',
    (kind, most) => {
      const told = tooHard(kind, 'content/en/a.mdx', sentencesIn(HARD));
      expect(told).toEqual([
        expect.objectContaining({
          line: 3,
          found: expect.stringMatching(/^words of grade \d\d\.\d, the hardest here: "Consequently/),
          expected: `grade ${most} or below: shorter sentences, shorter words`,
        }),
      ]);
    },
  );

  test('an explanation goes through', () => {
    expect(tooHard('know', 'content/en/a.mdx', sentencesIn(HARD))).toEqual([]);
  });

  test('a plain step goes through', () => {
    expect(tooHard('do', 'content/en/a.mdx', sentencesIn('1. Look up.\n\n   Good: it is dry.'))).toEqual([]);
  });
});
