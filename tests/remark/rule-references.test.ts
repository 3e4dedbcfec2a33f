import { describe, expect, test } from 'vitest';
import { book, FILE, pageOf, stopped } from './page.ts';

/**
 * What a reference leaves in a sentence: the value, linked to the rule's own page, whose title it bears, with the number of its note.
 * A choice may break its line.
 */
const link = (id: string, title: string, text: string, { note = 1 } = {}): string =>
  `<a href="/rules/${id}/" title="${title}" class="${/\d/.test(text) ? 'rule' : 'rule choice'}" data-rule="${id}" data-note="${note}">${text}</a>`;
const CHOICE = 'cotton, hemp';

describe('the value of a rule stands in the place of its reference', () => {
  const values: readonly [what: string, written: string, id: string, title: string, text: string][] = [
    ['one value', 'id="sash.cord.length"', 'sash.cord.length', 'Length of the cord', '2 in'],
    [
      'a range, its unit said once',
      'id="sash.cord.reach"',
      'sash.cord.reach',
      'Reach of the cord',
      '6 to 8 ft',
    ],
    ['its low end', 'id="sash.cord.reach" part="low"', 'sash.cord.reach', 'Reach of the cord', '6 ft'],
    ['its high end', 'part="high" id="sash.cord.reach"', 'sash.cord.reach', 'Reach of the cord', '8 ft'],
    ['a least value, without its kind', 'id="sash.cord.pull"', 'sash.cord.pull', 'Pull on the cord', '30 lb'],
    [
      'a most, in its own unit',
      'id="sash.cord.fill"',
      'sash.cord.fill',
      'Density of the weight',
      '1.5 lb/ft³',
    ],
    ['the words of a choice', 'id="sash.cord.makes"', 'sash.cord.makes', 'Makes of cord', CHOICE],
    ['a number without a unit', 'id="sash.cord.built"', 'sash.cord.built', 'First year', '1978'],
    [
      'a cell of a table',
      'id="sash.cord.loads" row="cotton" column="load"',
      'sash.cord.loads',
      'Loads of cords',
      '40 lb',
    ],
    [
      'a cell whose row two words tell from the others',
      'id="sash.cord.loads" row="hemp; 3" column="load"',
      'sash.cord.loads',
      'Loads of cords',
      '60 to 70 lb',
    ],
    [
      'an end of a range in a cell',
      'id="sash.cord.loads" row="hemp; 3" column="load" part="high"',
      'sash.cord.loads',
      'Loads of cords',
      '70 lb',
    ],
    [
      'a cell of words',
      'id="sash.cord.loads" row="cotton" column="make"',
      'sash.cord.loads',
      'Loads of cords',
      'cotton',
    ],
    ['an R range', 'id="sash.cord.warmth"', 'sash.cord.warmth', 'R per inch', 'R-2.5 to R-3 per in'],
  ];
  test.each(values)('%s: <Rule %s />', async (_, written, id, title, text) => {
    const { html } = await pageOf(`Cut it <Rule ${written} /> off.`, book);
    expect(html).toBe(`<p>Cut it ${link(id, title, text)} off.</p>`);
  });

  test('several in one sentence, one on a line of its own, and one in a heading', async () => {
    const { html } = await pageOf(
      '## Pull <Rule id="sash.cord.pull" />\n\n<Rule id="sash.cord.length" /> and <Rule id="sash.cord.length" />\n\n<Rule id="sash.cord.makes" />\n',
      book,
    );
    const [length, pull] = [
      link('sash.cord.length', 'Length of the cord', '2 in', { note: 2 }),
      link('sash.cord.pull', 'Pull on the cord', '30 lb'),
    ];
    expect(html).toContain(`Pull ${pull}</h2>`);
    expect(html).toContain(`<p>${length} and ${length}</p>`);
    expect(html).toContain(link('sash.cord.makes', 'Makes of cord', CHOICE, { note: 3 }));
    expect(html).not.toContain('<Rule');
  });

  test('in code it is left as it is written', async () => {
    const { html } = await pageOf(
      'Write `<Rule id="no.such.rule" />`.\n\n```\n<Rule id="no.such.rule" />\n```\n',
      book,
    );
    expect(html.match(/<code[^>]*><Rule id="no.such.rule" \/>\n?<\/code>/g)).toHaveLength(2);
  });

  test('the ids of a page are handed on in the order of the page, each once, over any that its head names', async () => {
    const { notes } = await pageOf(
      '---\ntitle: Cords\nnotes: [a.b.c]\n---\n\n<Rule id="sash.cord.pull" />, <Rule id="sash.cord.length" />, <Rule id="sash.cord.pull" />.\n',
      book,
    );
    expect(notes).toEqual(['sash.cord.pull', 'sash.cord.length']);
    expect((await pageOf('No rule here.', book)).notes).toEqual([]);
  });
});

describe('each value has the number of its note, its place in the list at the end of the page', () => {
  const notesOn = (html: string): string[] =>
    [...html.matchAll(/data-rule="([^"]+)" data-note="(\d+)"| notes="([^"]+)"| note="(\d+)"/g)].map(
      ([, id, note, inCaution, worked]) => inCaution ?? (worked ? `note ${worked}` : `${id}=${note}`),
    );
  const [length, pull, reach] = ['length', 'pull', 'reach'].map((each) => `<Rule id="sash.cord.${each}" />`);
  const drop = '<Caution id="caution.sash.drop" />';

  test.each<[what: string, page: string, notes: string[], rules: string[]]>([
    [
      'in the order of the page, one that comes again with the same',
      `${pull}, ${length}, ${pull}.`,
      ['sash.cord.pull=1', 'sash.cord.length=2', 'sash.cord.pull=1'],
      ['sash.cord.pull', 'sash.cord.length'],
    ],
    [
      'those in a caution counted where it stands, each once',
      `${pull}\n\n${drop}\n\n${length}, ${reach}`,
      ['sash.cord.pull=1', 'sash.cord.reach=2 sash.cord.pull=1', 'sash.cord.length=3', 'sash.cord.reach=2'],
      ['sash.cord.pull', 'sash.cord.reach', 'sash.cord.length'],
    ],
    [
      'those in a caution inside a step',
      `1. ${length}\n\n   ${drop}\n`,
      ['sash.cord.length=1', 'sash.cord.reach=2 sash.cord.pull=3'],
      ['sash.cord.length', 'sash.cord.reach', 'sash.cord.pull'],
    ],
    [
      'figures that a calculation works out, each by its name',
      `<Worked of="fill" figure="bags" />, ${pull}, <Worked of="fill" figure="bags" />`,
      ['note 1', 'sash.cord.pull=2', 'note 1'],
      ['fill#bags', 'sash.cord.pull'],
    ],
  ])('%s', async (_, page, notes, rules) => {
    const found = await pageOf(page, book);
    expect(notesOn(found.html)).toEqual(notes);
    expect(found.notes).toEqual(rules);
  });
});

test('a caution whose id is known is left for the page to show', async () => {
  expect((await pageOf('<Caution id="caution.sash.pinch" />', book)).html).toBe(
    '<Caution id="caution.sash.pinch"></Caution>',
  );
});

/** The mark § shows where the mistake is to be told. */
const mistakes: readonly [what: string, page: string, found: string, expected: string, check: string][] = [
  [
    'an unknown id, naming the nearest',
    'One.\n\nTwo is §<Rule id="sash.cord.lenght" />.',
    'the rule "sash.cord.lenght"',
    'an id of the rulebook; did you mean "sash.cord.length"?',
    'unknown-rule',
  ],
  [
    'an unknown id far from any',
    '- a\n- b §<Rule id="quite.other" />',
    'the rule "quite.other"',
    'an id of the rulebook',
    'unknown-rule',
  ],
  ['no id', '§<Rule />', 'the rule ""', 'an id of the rulebook', 'unknown-rule'],
  [
    'an id that every object answers to',
    'A §<Rule id="constructor" />',
    'the rule "constructor"',
    'an id of the rulebook',
    'unknown-rule',
  ],
  [
    'a part that a range does not have',
    'A §<Rule id="sash.cord.reach" part="middle" />',
    '"sash.cord.reach" with part "middle", of the kind between',
    'a rule with one value, an end of a range, or row and column of a table',
    'rule-part',
  ],
  [
    'an end of what has none',
    'A §<Rule id="sash.cord.length" part="low" />',
    '"sash.cord.length" with part "low", of the kind exact',
    'a rule with one value, an end of a range, or row and column of a table',
    'rule-part',
  ],
  [
    'an empty part',
    'A §<Rule id="sash.cord.reach" part="" />',
    '"sash.cord.reach" with part "", of the kind between',
    'a rule with one value, an end of a range, or row and column of a table',
    'rule-part',
  ],
  [
    'a table, which no sentence holds',
    'A §<Rule id="sash.cord.loads" />',
    '"sash.cord.loads", of the kind table',
    'a rule with one value, an end of a range, or row and column of a table',
    'rule-part',
  ],
  [
    'a row of what is no table',
    'A §<Rule id="sash.cord.reach" row="cotton" column="load" />',
    '"sash.cord.reach" with a row or a column, of the kind between',
    'a rule with one value, an end of a range, or row and column of a table',
    'rule-part',
  ],
  [
    'a row that the table does not have',
    'A §<Rule id="sash.cord.loads" row="silk" column="load" />',
    '0 rows that begin "silk" of "sash.cord.loads"',
    'one, such as "cotton; 2"',
    'rule-cell',
  ],
  [
    'words with which two rows begin',
    'A §<Rule id="sash.cord.loads" row="hemp" column="load" />',
    '2 rows that begin "hemp" of "sash.cord.loads"',
    'one, such as "cotton; 2"',
    'rule-cell',
  ],
  [
    'a column without a row',
    'A §<Rule id="sash.cord.loads" column="load" />',
    'no row of "sash.cord.loads"',
    'one, such as "cotton; 2"',
    'rule-cell',
  ],
  [
    'a column that the table does not have',
    'A §<Rule id="sash.cord.loads" row="cotton" column="weight" />',
    'the column "weight" of "sash.cord.loads"',
    'one of make, strands, load',
    'rule-cell',
  ],
  [
    'an end of a cell that is no range',
    'A §<Rule id="sash.cord.loads" row="cotton" column="load" part="low" />',
    'part "low" of 40 of "sash.cord.loads"',
    'low or high, of a range',
    'rule-cell',
  ],
  [
    'a misspelt attribute, which would give the whole range',
    'A §<Rule id="sash.cord.reach" prt="low" />',
    '"prt" in <Rule>',
    'id, part, row and column in quotes, and nothing else',
    'attribute',
  ],
  [
    'a part that is an expression, which would give the whole range',
    'A §<Rule id="sash.cord.reach" part={\'low\'} />',
    'part without quotes in <Rule>',
    'id, part, row and column in quotes, and nothing else',
    'attribute',
  ],
  [
    'attributes spread out of an object',
    "A §<Rule {...{ id: 'sash.cord.reach' }} />",
    "{...{ id: 'sash.cord.reach' }} in <Rule>",
    'id, part, row and column in quotes, and nothing else',
    'attribute',
  ],
  [
    'words inside a reference, which nobody would see',
    'A §<Rule id="sash.cord.reach">long</Rule> cord.',
    'words between <Rule> and its end',
    'id, part, row and column in quotes, and nothing else',
    'attribute',
  ],
  [
    'an unknown caution, naming the nearest',
    '1. Look.\n\n   §<Caution id="caution.sash.pinhc" />',
    'the caution "caution.sash.pinhc"',
    'an id of the rulebook; did you mean "caution.sash.pinch"?',
    'unknown-caution',
  ],
  [
    'a caution with a part',
    '§<Caution id="caution.sash.pinch" part="says" />',
    '"part" in <Caution>',
    'id in quotes, and nothing else',
    'attribute',
  ],
];

describe('a page stops, with file, line and column, at', () => {
  test.each(mistakes)('%s', async (_, page, found, expected, check) => {
    const text = `---\ntitle: A page\nsummary: Of cords.\n---\n\n${page}\n`;
    const before = (text.split('§')[0] ?? '').split('\n');
    const place = `${FILE}:${before.length}:${(before.at(-1) ?? '').length + 1}`;
    expect(await stopped(text.replace('§', ''), book)).toEqual([
      `${place}  found ${found}  expected ${expected}  (${check})`,
    ]);
  });

  test('every mistake at once, in the order of the page', async () => {
    const told = await stopped(
      '<Rule id="a.b.c" />\n\n<Caution id="caution.x" />\n\n<Rule id="sash.cord.loads" />\n',
      book,
    );
    expect(told.map((line) => line.split('  ')[0])).toEqual([`${FILE}:1:1`, `${FILE}:3:1`, `${FILE}:5:1`]);
  });
});
