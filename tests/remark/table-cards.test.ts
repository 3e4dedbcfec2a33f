import { expect, test } from 'vitest';
import { book, pageOf, stopped } from './page.ts';

const table = (cell: string): string => `| Cord | Its *load* |\n| --- | --- |\n| cotton | ${cell} |\n`;

test('the first column of a table names its rows, each other cell bears its heading as one piece, and a cell holds a value of the rulebook', async () => {
  const { html, notes } = await pageOf(
    table('about <Rule id="sash.cord.loads" row="cotton" column="load" />'),
    book,
  );
  expect(html.replace(/\n/g, '')).toBe(
    '<table class="cards"><thead><tr><th scope="col">Cord</th><th scope="col">Its <em>load</em></th></tr></thead>' +
      '<tbody><tr><th scope="row">cotton</th><td data-label="Its load"><span>about ' +
      '<a href="/rules/sash.cord.loads/" title="Loads of cords" class="rule" data-rule="sash.cord.loads" data-note="1">40 lb</a></span></td></tr></tbody></table>',
  );
  expect(notes).toEqual(['sash.cord.loads']);
});

test('a number in a cell that no rule backs stops the page', async () => {
  expect(await stopped(table('40 lb'), book)).toHaveLength(1);
});
