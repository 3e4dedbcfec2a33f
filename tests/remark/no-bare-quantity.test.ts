import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { book, FILE, pageOf, stopped } from './page.ts';

const expected = 'the rule it comes from, as <Rule id="..." />';

/** The mark § shows where the mistake is to be told. */
const bare: readonly [what: string, page: string, found: string][] = [
  ['inches', 'Cut it §2 in wide.', '2 in'],
  ['pounds', 'A bag holds §30 lb.', '30 lb'],
  ['a density', 'Blow it at §1.5 lb/ft3.', '1.5 lb/ft3'],
  ['an R-value', 'It gives §R-19.', 'R-19'],
  ['a number in words', 'Wait §two hours.', 'two hours'],
  ['a range', 'Keep §6 - 8 ft off.', '6 - 8 ft'],
  ['a heading', '## §2 in of it', '2 in'],
  ['a step of a list', '1. Look.\n2. Cut §2 in off.', '2 in'],
  ['a step that goes on in a later paragraph', '1. Look.\n\n   Good: it is\n   §2 in off.', '2 in'],
  ['a cell of a table', '| a | b |\n|---|---|\n| c | §2 in |', '2 in'],
  ['the third line of a paragraph', 'One line,\nand another,\nand §2 in on a third.', '2 in'],
  ['the second of two alike on one line', 'Cut `2 in`, then §2 in.', '2 in'],
  ['strong words', 'Cut **§2 in** off.', '2 in'],
  ['a number in strong type with its unit outside', 'Cut **§2** in off.', '2 in'],
  ['a number and its unit in two kinds of type', 'Cut *§2* **in** off.', '2 in'],
  ['a number and its unit on two lines', 'Cut §2\nin off.', '2 in'],
  ['the words of a link', 'See [the §2 in rule](https://example.org).', '2 in'],
  ['words inside an element', 'Cut <b>§2 in</b> off.', '2 in'],
  ['a block of its own', '<div>\n  Cut §2 in off.\n</div>', '2 in'],
  ['what is said of a picture', 'A §![cut 2 in off](cut.png)', '2 in'],
  ['what is said of a link', 'A §[cut](cut/ "2 in off")', '2 in'],
  ['a quotation', '> He said §2 in.', '2 in'],
];

describe('a page stops at a number with a unit, with file, line and column, in', () => {
  test.each(bare)('%s', async (_, page, found) => {
    const text = `---\ntitle: A page\n---\n\n${page}\n`;
    const before = (text.split('§')[0] ?? '').split('\n');
    const place = `${FILE}:${before.length}:${(before.at(-1) ?? '').length + 1}`;
    expect(await stopped(text.replace('§', ''), book)).toEqual([
      `${place}  found "${found}"  expected ${expected}  (bare-quantity)`,
    ]);
  });

  test('a unit written with a character reference is told at its line', async () => {
    expect((await stopped('One.\n\nAnd\n2&nbsp;in off.\n', book))[0]).toMatch(
      new RegExp(`^${FILE}:4:1 {2}found "2 in"`),
    );
  });

  test('every one of a page at once', async () => {
    const told = await stopped('Cut 2 in, then 3 in.\n\nWait 4 hours.\n', book);
    expect(told.map((line) => line.split('  ').slice(0, 2).join(' '))).toEqual([
      `${FILE}:1:5 found "2 in"`,
      `${FILE}:1:16 found "3 in"`,
      `${FILE}:3:6 found "4 hours"`,
    ]);
  });
});

describe('a page stops at a number with a unit in its head, where no rule can stand', () => {
  test.each(['title', 'summary'])('in its %s', async (key) => {
    const folder = mkdtempSync(join(tmpdir(), 'pages-'));
    const file = join(folder, 'a-page.mdx');
    const text = `---\norder: 10\n${key}: Cut 2 in off.\n---\n\nNo number here.\n`;
    try {
      writeFileSync(file, text);
      expect(await stopped(text, book, file)).toEqual([
        `${relative(process.cwd(), file)}:3:${key.length + 7}  found "2 in"  expected no number with a unit at the head of a page; say it below, as <Rule id="..." />  (bare-quantity)`,
      ]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

const passes: readonly [what: string, page: string][] = [
  ['the value of a rule', 'Cut <Rule id="sash.cord.length" /> off.'],
  ['a number beside the value of a rule', 'Cut 3 <Rule id="sash.cord.length" /> pieces.'],
  ['a code block', '```\n2 in\n```'],
  ['an indented step with a code block', '1. Type:\n\n   ```\n   width=2 in\n   ```'],
  ['inline code', 'Type `13 ft 10 in` there.'],
  ['a number with no unit', 'Look at 3 places. Count to 10.'],
  ['a numbered step', '1. In the attic, look.\n2. In the room, too.'],
  ['a year', 'Homes of 1976 and later.'],
  ['a preposition after a number in words', 'Press one in the middle.'],
  ['a number that ends one paragraph and a word that begins the next', 'There are 2\n\nin all.'],
  ['a number that ends a cell', '| a | b |\n|---|---|\n| 2 | in |'],
  ['an address', 'See [it](https://example.org/2-in-1).'],
  ['a remark that nobody sees', '{/* cut 2 in off */}\n\nCut.'],
];

describe('a page goes through with', () => {
  test.each(passes)('%s', async (_, page) => {
    expect(await stopped(page, book)).toEqual([]);
    expect((await pageOf(page, book)).html).not.toBe('');
  });
});
