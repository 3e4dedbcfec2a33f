import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculationNamed } from '../../src/calc/calculations.ts';
import { entriesIn } from '../../src/calc/declare/address.ts';
import { readFields } from '../../src/calc/declare/read-fields.ts';
import type { RulebookData } from '../../src/rulebook/rulebook.ts';
import type { RuleValue } from '../../src/rulebook/schema.ts';
import type { Piece } from '../../src/rulebook/whose.ts';
import { projectQuestions, readQuestions } from '../../src/train/questions.ts';
import { theProject } from '../the-project.ts';

const { data } = theProject();

/** The rulebook with another value in one rule. */
function withValue(id: string, value: RuleValue): RulebookData {
  const rule = data.rules[id];
  if (!rule) throw new Error(`found no rule "${id}"`);
  return { ...data, rules: { ...data.rules, [id]: { ...rule, value } } };
}

/** One lesson with one question. */
const file = (answer: string, asks = 'What?', more = ''): string =>
  `first:\n  - asks: ${asks}\n    answer: ${answer}\n${more}`;

const only = (text: string, rules: RulebookData = data) => {
  const [question] = readQuestions('q.yaml', text, rules);
  if (!question) throw new Error('found no question');
  return question;
};

const textOf = (text: string, rules: RulebookData = data): string | undefined => {
  const { answer } = only(text, rules);
  return answer.from === 'caution' ? undefined : answer.text;
};

const words = (pieces: readonly Piece[]): string =>
  pieces.map((each) => (typeof each === 'string' ? each : each.text)).join('');

describe('an answer is what the rulebook says', () => {
  test.each([
    ['a rule', '{ rule: access.roof-holes.below-peak }', '16 in'],
    ['a bound, as a bound', '{ rule: safety.line.clearance }', 'at least 10 ft'],
    ['a range', '{ rule: access.roof-holes.spacing }', 'between 12 and 16 ft'],
    ['one end of a range', '{ rule: access.roof-holes.spacing, part: high }', '16 ft'],
    ['a choice', '{ rule: access.roof-holes.side }', 'back'],
    [
      'a cell of a table, by a row between two of it',
      '{ rule: ceiling.board.limit, row: { board: gypsum 1/2 in, framing: 19 in }, column: load }',
      '1.3 lb/ft²',
    ],
    // By hand: 140 ft3 times 1.5 lb/ft3 are 210 lb, seven bags of 30 lb.
    [
      'a calculation',
      '{ calculation: fill, given: { volume: 140 ft3, material: glass fibre, density: 1.5 lb/ft3, bag_weight: 30 lb/bag }, figure: bags }',
      '7 bags',
    ],
  ])('%s', (_, answer, expected) => {
    expect(textOf(file(answer))).toBe(expected);
  });

  test('a caution answers by its id', () => {
    expect(only(file('{ caution: caution.fill.too-full }')).answer).toEqual({
      from: 'caution',
      id: 'caution.fill.too-full',
    });
  });
});

describe('an answer follows a rule that is changed', () => {
  test('the rule’s own value', () => {
    const changed = withValue('access.roof-holes.below-peak', { kind: 'exact', number: 18, unit: 'in' });
    expect(textOf(file('{ rule: access.roof-holes.below-peak }'), changed)).toBe('18 in');
  });

  // By hand: 10 ft or more becomes 12 ft or more, so that 11 ft is far enough before and too near after.
  test('a calculation that asks for it', () => {
    const near = file(
      '{ calculation: line-clearance, given: { voltage: 7.2 kV, gap: 11 ft }, figure: verdict }',
    );
    const changed = withValue('safety.line.clearance', { kind: 'at-least', number: 12, unit: 'ft' });
    expect([textOf(near), textOf(near, changed)]).toEqual(['far enough', 'too near']);
  });

  test('a rule that stands in the question or its reason', () => {
    const text = file(
      '{ rule: patch.layers.overlap }',
      'Lap {patch.layers.overlap}?',
      '    because: Say {patch.layers.overlap}.\n',
    );
    const changed = withValue('patch.layers.overlap', { kind: 'exact', number: 3, unit: 'in' });
    const { asks, because = [] } = only(text, changed);
    expect([words(asks), words(because)]).toEqual(['Lap 3 in?', 'Say 3 in.']);
  });
});

describe('what is given stands in the question', () => {
  test('an entry, a length as typed and the rest as the site prints it', () => {
    const given =
      '{ volume: 140 ft3, density: 1.5 lb/ft3, bag_weight: 30 lb/bag, bags: 5 bags, state: full }';
    const { asks } = only(
      file(`{ calculation: opening-log, given: ${given}, figure: verdict }`, '"{volume}, {bags}, {state}?"'),
    );
    expect(words(asks)).toBe('140 ft³, 5 bags, full?');
  });

  test('an entry of a list', () => {
    const given =
      '{ length: 24 in, width: 24 in, height: 12 in, fills: [{ gross: 16 lb, tare: 10 lb }], target: 1.5 lb/ft3, allowed_spread: 15 % }';
    const { asks, answer } = only(
      file(`{ calculation: test-box, given: ${given}, figure: mean }`, '"{length}, {fills.0.gross}?"'),
    );
    expect(words(asks)).toBe('24 in, 16 lb?');
    // By hand: 6 lb in 2 by 2 by 1 ft.
    expect(answer).toMatchObject({ text: '1.5 lb/ft³' });
  });
});

const LADDER = '{ calculation: ladder, given: { height: 9 ft }, figure: foot }';

describe('a mistake stops, at its file and line', () => {
  test.each([
    [
      'an unknown rule',
      file('{ rule: patch.layers.overlapp }'),
      /q\.yaml:3:21 {2}found the rule "patch\.layers\.overlapp" {2}expected .* did you mean "patch\.layers\.overlap"\?/,
    ],
    [
      'an end of what has none',
      file('{ rule: patch.layers.overlap, part: low }'),
      /q\.yaml:3:49 {2}found part "low"/,
    ],
    [
      'a row of what is no table',
      file('{ rule: patch.layers.overlap, row: { a: b } }'),
      /q\.yaml:3:48 {2}found row/,
    ],
    [
      'a table without a column',
      file('{ rule: ceiling.board.limit }'),
      /found no column of the table {2}expected one of load/,
    ],
    [
      'a row that a table does not have',
      file('{ rule: ceiling.board.limit, row: { board: gypsum 1/2 in, framing: 48 in }, column: load }'),
      /q\.yaml:3:47 {2}found a row that the table does not have/,
    ],
    [
      'a key that a table does not have',
      file('{ rule: ceiling.board.limit, row: { bord: gypsum 1/2 in, framing: 16 in }, column: load }'),
      /found the key column "bord"/,
    ],
    [
      'an amount without a unit',
      file('{ rule: ceiling.board.limit, row: { board: gypsum 1/2 in, framing: "16" }, column: load }'),
      /q\.yaml:3:80 {2}found "16", a number with no unit/,
    ],
    [
      'an unknown calculation',
      file('{ calculation: lader, given: {}, figure: foot }'),
      /q\.yaml:3:28 {2}found the calculation "lader" .* did you mean "ladder"\?/,
    ],
    [
      'an unknown figure',
      file('{ calculation: ladder, given: { height: 9 ft }, figure: fot }'),
      /q\.yaml:3:69 {2}found the figure "fot" .* did you mean "foot"\?/,
    ],
    [
      'an entry that can’t be read',
      file('{ calculation: ladder, given: { height: 9 }, figure: foot }'),
      /q\.yaml:3:53 {2}found Height of the edge: "9" {2}expected text with a unit/,
    ],
    [
      'an entry that nobody asks for',
      file('{ calculation: ladder, given: { hight: 9 ft }, figure: foot }'),
      /q\.yaml:3:52 {2}found Unknown entry: the unknown key "hight" {2}expected "height"/,
    ],
    [
      'an unknown caution',
      file('{ caution: caution.fill.to-full }'),
      /q\.yaml:3:24 {2}found the caution "caution\.fill\.to-full" .* did you mean "caution\.fill\.too-full"\?/,
    ],
    ['an answer that is typed in', file('two inches'), /q\.yaml:3:13 {2}found answer "two inches"/],
    ['a number that nothing stands behind', file(LADDER, 'An edge at 9 ft?'), /q\.yaml:2:11 {2}found "9 ft"/],
    [
      'an entry that is not given',
      file(LADDER, '"At {hight}?"'),
      /q\.yaml:2:11 {2}found \{hight\} {2}expected a given entry with one value; did you mean "height"\?/,
    ],
    [
      'a rule in a question that is none',
      file(LADDER, '"At {patch.layers.overlapp}?"'),
      /q\.yaml:2:11 {2}found \{patch\.layers\.overlapp\} .* did you mean "patch\.layers\.overlap"\?/,
    ],
    [
      'a misspelt key',
      file(LADDER, 'What?', '    becuase: So.\n'),
      /q\.yaml:4:5 {2}found the unknown key "becuase"/,
    ],
    ['a lesson without questions', 'first: []\n', /q\.yaml:1:8 {2}found no questions in "first"/],
  ])('%s', (_, text, sentence) => {
    expect(() => readQuestions('q.yaml', text, data)).toThrow(sentence);
  });

  test('every mistake at once', () => {
    const text = `${file('{ rule: a.b.c }')}  - asks: Who?\n    answer: { caution: caution.x.y }\n`;
    expect(() => readQuestions('q.yaml', text, data)).toThrow(/q\.yaml:3:.*\n.*q\.yaml:5:/);
  });
});

describe('the project’s own questions', () => {
  const questions = projectQuestions(data);

  test('are numbered through, in the order of their lessons', () => {
    expect(questions.map(({ number }) => number)).toEqual(questions.map((_, place) => place + 1));
  });

  test('stand on the lesson page and on the answer sheet, in that order', () => {
    const lessons = [...new Set(questions.map(({ lesson }) => lesson))];
    const shownBy = (page: string, element: string): string[] =>
      [
        ...readFileSync(`content/en/train/${page}.mdx`, 'utf8').matchAll(
          new RegExp(`<${element} lesson="([^"]+)" />`, 'g'),
        ),
      ].map(([, lesson = '']) => lesson);
    expect(shownBy('lessons', 'Questions')).toEqual(lessons);
    expect(shownBy('answers', 'Answers')).toEqual(lessons);
  });

  test('open their calculator with what was given', () => {
    for (const { answer } of questions) {
      if (answer.from !== 'calculation') continue;
      const fields = calculationNamed(answer.name)?.fields ?? {};
      expect(readFields(fields, entriesIn(answer.address)).ok, answer.address).toBe(true);
    }
  });

  test('stand under the same headings on both', () => {
    const headings = (page: string): string[] =>
      readFileSync(`content/en/train/${page}.mdx`, 'utf8')
        .split('\n')
        .filter((line) => line.startsWith('## '));
    expect(headings('answers')).toEqual(headings('lessons'));
  });
});
