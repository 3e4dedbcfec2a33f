import { describe, expect, test } from 'vitest';
import { lints } from '../../src/rulebook/lints/index.ts';
import { DataError, formatProblem } from '../../src/rulebook/problem.ts';
import { readYaml } from '../../src/rulebook/yaml-file.ts';
import { caution, document, type Files, inFolder, loadFolder, marked, problemsOf, rule } from './folder.ts';

interface Mistake {
  readonly check: string;
  readonly title: string;
  /** The place of the mistake is marked with §, which is taken out before the files are written. */
  readonly files: Files;
  readonly unused?: readonly string[];
  readonly found: string;
  readonly expected: string;
}

const cited = (id: string, more = ''): string =>
  `{ kind: document, document: ${id}, clause: page 1, read: read${more} }`;
/** The same, with the mark at how it was read. */
const readOf = (id: string): string => cited(id).replace('read: read', 'read: §read');
/** A document that was read in a copy. */
const copied = (id: string): string => `${document(id)}  read_in: A copy by a third party.\n`;
const derived = (...from: string[]): string =>
  `{ kind: derived, working: By hand., from: [${from.join(', ')}] }`;
const table = (columns: string, rows: string): string =>
  `{ kind: table, columns: [${columns}], rows: [${rows}] }`;
/** A column of numbers that has a word for some of them. */
const wordy = '{ name: load, title: Load, unit: lb/ft2, words: [no limit] }';
const lookedUp = '{ name: load, title: Load, unit: lb/ft2 }';
/** The text of one check, with what it holds. */
const check = (holds: string, from = '{ kind: hand, working: By hand. }'): string =>
  `- title: A thing\n  calculation: things\n  given: {}\n  ${holds}\n  from: ${from}\n`;
/** Where a check worked by hand has its formula from. */
const workedBy = (document: string): string =>
  `{ kind: hand, working: By hand., rests_on: { document: ${document}, clause: page 1, read: read } }`;
const keyed = (key: string, more = ''): string => `{ name: at, title: At, unit: in, key: ${key}${more} }`;

/** A folder with one mistake, and what has to be said of it. */
const mistakes: readonly Mistake[] = [
  {
    check: 'duplicate-id',
    title: 'a key given twice in one file',
    files: { 'a/b.yaml': `${rule('width')}§${rule('width')}` },
    found: 'the key "width" a second time, first on line 1 (the parser: Map keys must be unique)',
    expected: 'each key once: take one away, or give it a name of its own',
  },
  {
    check: 'duplicate-id',
    title: 'an id that two files make',
    files: { 'a/b.yaml': `§${rule('width')}`, 'a.b.yaml': rule('width') },
    found: 'the id "a.b.width", already held in a.b.yaml',
    expected: 'an id of its own',
  },
  {
    check: 'duplicate-id',
    title: 'a caution with the id of a rule',
    files: { 'caution/heat.yaml': rule('hot'), 'cautions/heat.yaml': `§${caution('hot')}` },
    found: 'the id "caution.heat.hot", already held in caution/heat.yaml',
    expected: 'an id of its own',
  },
  {
    check: 'duplicate-id',
    title: 'an alias that is the id of another rule',
    files: { 'a/b.yaml': rule('width', { more: 'aliases: [a.b.wide, §a.b.depth]' }) + rule('depth') },
    found: 'the alias "a.b.depth", already an id in a/b.yaml',
    expected: 'an id of its own',
  },
  {
    check: 'duplicate-id',
    title: 'an alias that another rule has',
    files: {
      'a/b.yaml':
        rule('width', { more: 'aliases: [a.b.wide]' }) + rule('depth', { more: 'aliases: [§a.b.wide]' }),
    },
    found: 'the alias "a.b.wide", already an id in a/b.yaml',
    expected: 'an id of its own',
  },
  {
    check: 'unknown-unit',
    title: 'a unit written a letter wrong, with the one that was meant',
    files: { 'a/b.yaml': rule('width', { value: '{ kind: exact, number: 2, unit: §inn }' }) },
    found: 'the unit "inn"',
    expected: 'a unit of the list; did you mean "in"?',
  },
  {
    check: 'unknown-unit',
    title: 'a unit that is like none',
    files: { 'a/b.yaml': rule('width', { value: '{ kind: between, low: 1, high: 2, unit: §furlong }' }) },
    found: 'the unit "furlong"',
    expected: 'a unit of the list',
  },
  {
    check: 'unknown-unit',
    title: 'an unknown unit of a column',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`{ name: at, title: At, unit: §inch, key: number }, ${lookedUp}`, '[1, 2]'),
      }),
    },
    found: 'the unit "inch"',
    expected: 'a unit of the list; did you mean "in"?',
  },
  {
    check: 'unknown-source',
    title: 'a document that sources.yaml has under nearly that id',
    files: {
      'a/b.yaml': rule('width', { source: cited('§handbok') }) + rule('depth', { source: cited('handbook') }),
      'sources.yaml': document('handbook'),
    },
    found: 'the document "handbok"',
    expected: 'an id of sources.yaml; did you mean "handbook"?',
  },
  {
    check: 'unknown-source',
    title: 'a document that a caution cites and nobody lists',
    files: { 'cautions/heat.yaml': caution('hot', { source: cited('§handbook') }) },
    found: 'the document "handbook"',
    expected: 'an id of sources.yaml',
  },
  {
    check: 'unknown-source',
    title: 'a document that a check is drawn from and nobody lists',
    files: { 'checks/b.yaml': check('expect: { a: 1 ft }', cited('§handbook')) },
    found: 'the document "handbook"',
    expected: 'an id of sources.yaml',
  },
  {
    check: 'unknown-source',
    title: 'a document whose formula a check works with and nobody lists',
    files: { 'checks/b.yaml': check('expect: { a: 1 ft }', workedBy('§handbook')) },
    found: 'the document "handbook"',
    expected: 'an id of sources.yaml',
  },
  {
    check: 'unused-source',
    title: 'a document that nothing cites',
    files: { 'a/b.yaml': rule('width'), 'sources.yaml': `§${document('handbook')}` },
    found: 'the document "handbook", cited by nothing',
    expected: 'a rule, caution or check that cites it',
  },
  {
    check: 'unknown-rule',
    title: 'a derived rule worked from no rule',
    files: { 'a/b.yaml': rule('width') + rule('depth', { source: derived('§a.b.wdith') }) },
    found: 'the rule "a.b.wdith"',
    expected: 'the id of a rule; did you mean "a.b.width"?',
  },
  {
    check: 'unknown-rule',
    title: 'a formula that takes a value from no rule',
    files: {
      'a/b.yaml': `${rule('width')}${rule('depth', {
        value:
          '{ kind: exact, unit: in, formula: §{ add: [{ rule: a.b.width }, { rule: nowhere.at-all }] } }',
        source: derived('a.b.width'),
      })}`,
    },
    found: 'the rule "nowhere.at-all"',
    expected: 'the id of a rule',
  },
  {
    check: 'unknown-rule',
    title: 'a caution that asks for the value of no rule',
    files: {
      'a/b.yaml': rule('width'),
      'cautions/heat.yaml': caution('hot', { says: '§Keep {a.b.widht} away.' }),
    },
    found: 'the rule "a.b.widht"',
    expected: 'the id of a rule; did you mean "a.b.width"?',
  },
  {
    check: 'unknown-rule',
    title: 'a caution that rests on no rule',
    files: {
      'a/b.yaml': rule('width'),
      'cautions/heat.yaml': caution('hot', { more: 'rules: [a.b.width, §nowhere.at-all]' }),
    },
    found: 'the rule "nowhere.at-all"',
    expected: 'the id of a rule',
  },
  {
    check: 'unknown-rule',
    title: 'a reason that is given for no rule',
    files: {
      'a/b.yaml': rule('width'),
      'unguarded.yaml': '- rule: §a.b.widht\n  reason: No check can see it.\n',
    },
    found: 'the rule "a.b.widht"',
    expected: 'the id of a rule; did you mean "a.b.width"?',
  },
  {
    check: 'unknown-caution',
    title: 'a check that asks for no caution',
    files: {
      'cautions/heat.yaml': caution('hot'),
      'checks/heat.yaml': check('cautions: [§caution.heat.hto]'),
    },
    found: 'the caution "caution.heat.hto"',
    expected: 'the id of a caution; did you mean "caution.heat.hot"?',
  },
  {
    check: 'unknown-caution',
    title: 'a check that rules out no caution',
    files: {
      'cautions/heat.yaml': caution('hot'),
      'checks/heat.yaml': check('no_cautions: [caution.heat.hot, §caution.nowhere.at-all]'),
    },
    found: 'the caution "caution.nowhere.at-all"',
    expected: 'the id of a caution',
  },
  {
    check: 'copy-told-as-read',
    title: 'a text read in a law library’s copy and told as read',
    files: {
      'a/b.yaml': rule('width', {
        source: cited('doc', ', remark: A law library has it.').replace('read: read', 'read: §read'),
      }),
      'sources.yaml': document('doc'),
    },
    found: '"read", with "law library" in its remark',
    expected: '"reprint" for what was read in a copy, with the copy named in the remark',
  },
  ...(
    [
      ['a rule', { 'a/b.yaml': rule('width', { source: readOf('copied') }) }],
      ['a caution', { 'cautions/heat.yaml': caution('hot', { source: readOf('copied') }) }],
      ['a check', { 'checks/b.yaml': check('expect: { a: 1 ft }', readOf('copied')) }],
      [
        'a check worked by hand',
        {
          'checks/b.yaml': check(
            'expect: { a: 1 ft }',
            workedBy('copied').replace('read: read', 'read: §read'),
          ),
        },
      ],
    ] as const
  ).map(
    ([what, files]): Mistake => ({
      check: 'copy-told-as-read',
      title: `${what} that tells as read what its document has in a copy only`,
      files: { ...files, 'sources.yaml': copied('copied') },
      found: '"read" of "copied", which sources.yaml says was read in a copy',
      expected:
        '"reprint", or a document of its own in sources.yaml for what was read in the publisher’s own text',
    }),
  ),
  {
    check: 'same-check',
    title: 'a check that asks again what another asked',
    files: {
      'checks/heat.yaml': `${check('says: [Warm]')}${check('says: [Cold]')}${check('says: [Warm]').replace('A thing', '§A thing again')}`,
    },
    found: 'the same entries and expectations as in "A thing"',
    expected: 'a check that asks something else, or none',
  },
  {
    check: 'placeholder-part',
    title: 'a caution that asks for a range as one value',
    files: {
      'a/b.yaml': rule('width', { value: '{ kind: between, low: 6, high: 8, unit: ft }' }),
      'cautions/heat.yaml': caution('hot', { says: '§Keep {a.b.width} away.' }),
    },
    found: '{a.b.width}, of the kind between',
    expected: 'an end of it, as {a.b.width low}',
  },
  {
    check: 'placeholder-part',
    title: 'a caution that asks for an end of what has none',
    files: {
      'a/b.yaml': rule('width'),
      'cautions/heat.yaml': caution('hot', { act: '§Keep {a.b.width high} away.' }),
    },
    found: '{a.b.width high}, of the kind exact',
    expected: 'a rule with one value',
  },
  {
    check: 'placeholder-part',
    title: 'a caution that asks for a choice',
    files: {
      'a/b.yaml': rule('width', { value: '{ kind: one-of, choices: [wide, narrow] }' }),
      'cautions/heat.yaml': caution('hot', { act: '§Keep {a.b.width} away.' }),
    },
    found: '{a.b.width}, of the kind one-of',
    expected: 'a rule with one value',
  },
  {
    check: 'range-upside-down',
    title: 'a range with its ends swapped',
    files: { 'a/b.yaml': rule('width', { value: '{ kind: between, low: §8, high: 6, unit: ft }' }) },
    found: '8 to 6',
    expected: 'the lower end below the upper',
  },
  {
    check: 'range-upside-down',
    title: 'a range of no width, which would be an exact value',
    files: { 'a/b.yaml': rule('width', { value: '{ kind: between, low: §6, high: 6, unit: ft }' }) },
    found: '6 to 6',
    expected: 'the lower end below the upper',
  },
  {
    check: 'range-upside-down',
    title: 'a cell with its ends swapped',
    files: { 'a/b.yaml': rule('load', { value: table(`${keyed('number')}, ${lookedUp}`, '[1, §[3, 2]]') }) },
    found: '[3, 2]',
    expected: 'the lower end first',
  },
  {
    check: 'table-shape',
    title: 'a row with a cell too few',
    files: { 'a/b.yaml': rule('load', { value: table(`${keyed('number')}, ${lookedUp}`, '[1, 2], §[2]') }) },
    found: '1 cells',
    expected: '2, one a column',
  },
  {
    check: 'table-shape',
    title: 'a word in a column of numbers',
    files: { 'a/b.yaml': rule('load', { value: table(`${keyed('number')}, ${lookedUp}`, '[1, §much]') }) },
    found: '"much"',
    expected: 'a number, the column has a unit',
  },
  {
    check: 'table-shape',
    title: 'a word that the column does not name',
    files: {
      'a/b.yaml': rule('load', { value: table(`${keyed('number')}, ${wordy}`, '[1, no limit], [2, §none]') }),
    },
    found: '"none"',
    expected: 'a number, the column has a unit; or "no limit"',
  },
  {
    check: 'table-shape',
    title: 'words in place of the numbers by which a row is found',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`${keyed('number', ', words: [§none]')}, ${lookedUp}`, '[1, 2]'),
      }),
    },
    found: 'words in a column that rows are found by',
    expected: 'words only in a column of numbers that is looked up',
  },
  {
    check: 'table-shape',
    title: 'words in place of numbers where there are none',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`${keyed('number')}, { name: load, title: Load, words: [§none] }`, '[1, none]'),
      }),
    },
    found: 'words in a column without a unit',
    expected: 'words only in a column of numbers that is looked up',
  },
  {
    check: 'table-shape',
    title: 'a number in a column of words',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`{ name: at, title: At, key: word }, ${lookedUp}`, '[§7, 2]'),
      }),
    },
    found: '7',
    expected: 'a word, the column has no unit',
  },
  {
    check: 'table-gap-or-overlap',
    title: 'a gap between bands that nothing explains',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`${keyed('band')}, ${lookedUp}`, '[[1, 2], 5], [§[3, 4], 6]'),
      }),
    },
    found: '[3,4] after [1,2]',
    expected: 'no gap, or a reason under "gaps"',
  },
  {
    check: 'table-gap-or-overlap',
    title: 'a band over another',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`${keyed('band')}, ${lookedUp}`, '[[1, 3], 5], [§[2, 4], 6]'),
      }),
    },
    found: '[2,4] after [1,3]',
    expected: 'no overlap, bands in rising order',
  },
  {
    check: 'table-gap-or-overlap',
    title: 'a word given twice, another between',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`{ name: at, title: At, key: word }, ${lookedUp}`, '[x, 1], [y, 2], [§x, 3]'),
      }),
    },
    found: '"x" a second time',
    expected: 'each word once',
  },
  {
    check: 'table-gap-or-overlap',
    title: 'a row given twice, told once',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`${keyed('at-most')}, ${lookedUp}`, '[16, 2], [24, 1], [§24, 1]'),
      }),
    },
    found: '24 after 24',
    expected: 'rows in rising order, each once',
  },
  {
    check: 'table-gap-or-overlap',
    title: 'a word given twice with another number, told once',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`{ name: at, title: At, key: word }, ${lookedUp}`, '[x, 2], [§x, 1]'),
      }),
    },
    found: '"x" a second time',
    expected: 'each word once',
  },
  {
    check: 'table-gap-or-overlap',
    title: 'a step that is left out',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`${keyed('straight-line', ', step: 5')}, ${lookedUp}`, '[0, 1], [5, 2], [§15, 3]'),
      }),
    },
    found: '15 after 5',
    expected: 'a step of 5',
  },
  {
    check: 'table-gap-or-overlap',
    title: 'a row off a step of less than one',
    files: {
      'a/b.yaml': rule('load', {
        value: table(`${keyed('straight-line', ', step: 0.5')}, ${lookedUp}`, '[0, 1], [0.5, 2], [§1.25, 3]'),
      }),
    },
    found: '1.25 after 0.5',
    expected: 'a step of 0.5',
  },
  {
    check: 'table-gap-or-overlap',
    title: 'rows that do not rise',
    files: {
      'a/b.yaml': rule('load', { value: table(`${keyed('at-most')}, ${lookedUp}`, '[24, 1], [§16, 2]') }),
    },
    found: '16 after 24',
    expected: 'rows in rising order, each once',
  },
  {
    check: 'date-in-future',
    title: 'a text read tomorrow',
    files: {
      'a/b.yaml': rule('width', { source: cited('handbook', ", on: §'2026-11-26'") }),
      'sources.yaml': document('handbook'),
    },
    found: '2026-11-26',
    expected: 'a day not after today, 2026-11-25',
  },
  {
    check: 'derived-value',
    title: 'a formula that leads back to itself',
    files: {
      'a/b.yaml': rule('width', {
        value: '{ kind: exact, unit: in, formula: §{ rule: a.b.width } }',
        source: derived('a.b.width'),
      }),
    },
    found: 'a circle: a.b.width -> a.b.width',
    expected: 'a formula that can be worked out',
  },
  {
    check: 'derived-value',
    title: 'a formula that adds what does not add',
    files: {
      'a/b.yaml':
        rule('width') +
        rule('depth', {
          value: '{ kind: exact, unit: in, formula: §{ add: [{ rule: a.b.width }, 2] } }',
          source: derived('a.b.width'),
        }),
    },
    found: "can't add 2 in (length) and 2 1 (number): both must measure the same thing",
    expected: 'a formula that can be worked out',
  },
  {
    check: 'derived-value',
    title: 'a formula over a range of which no end is named',
    files: {
      'a/b.yaml':
        rule('gap', { value: '{ kind: between, low: 6, high: 8, unit: ft }' }) +
        rule('depth', {
          value: '{ kind: exact, unit: ft, formula: §{ rule: a.b.gap } }',
          source: derived('a.b.gap'),
        }),
    },
    found: '"a.b.gap", a range, by itself',
    expected: 'one end of it, as part: low or part: high',
  },
  {
    check: 'derived-value',
    title: 'a number and a formula together',
    files: {
      'a/b.yaml': rule('width', {
        value: '§{ kind: exact, number: 2, unit: "1", formula: 2 }',
        source: derived('a.b.width'),
      }),
    },
    found: 'both a number and a formula',
    expected: 'one of them',
  },
  {
    check: 'derived-value',
    title: 'neither a number nor a formula',
    files: { 'a/b.yaml': rule('width', { value: '§{ kind: exact, unit: in }' }) },
    found: 'neither a number nor a formula',
    expected: 'one of them',
  },
  {
    check: 'derived-value',
    title: 'a formula whose source is not "derived"',
    files: {
      'a/b.yaml': rule('width', {
        value: '{ kind: exact, unit: "1", formula: 2 }',
        source: '{ kind: §practice }',
      }),
    },
    found: 'a formula with the source "practice"',
    expected: 'the source "derived"',
  },
  {
    check: 'derived-value',
    title: 'a formula that uses a rule its source does not list',
    files: {
      'a/b.yaml':
        rule('width') +
        rule('height') +
        rule('depth', {
          value: '{ kind: exact, unit: in, formula: { add: [{ rule: a.b.width }, { rule: a.b.height }] } }',
          source: derived('a.b.width').replace('[', '§['),
        }),
    },
    found: 'no "a.b.height", which the formula uses',
    expected: 'every rule of the formula under "from"',
  },
  {
    check: 'bare-quantity',
    title: 'a number with a unit in a caution, no rule behind it',
    files: { 'cautions/heat.yaml': caution('hot', { act: '§Keep it 2 in away.' }) },
    found: '"2 in"',
    expected: 'a rule in braces, such as {safety.roof.fall-height}',
  },
  {
    check: 'placeholder-in-remark',
    title: 'a remark with a value in braces, which is shown as it is written',
    files: {
      'a/b.yaml': rule('width', { source: '{ kind: practice, remark: §"Wider than {a.b.width}." }' }),
    },
    found: '{a.b.width}',
    expected: 'words, since a remark is shown as it is written',
  },
  {
    check: 'placeholder-in-remark',
    title: 'a value in braces in the remark of a caution',
    files: {
      'a/b.yaml': rule('width'),
      'cautions/heat.yaml': caution('hot', {
        source: '{ kind: practice, remark: §"Wider than {a.b.width}." }',
      }),
    },
    found: '{a.b.width}',
    expected: 'words, since a remark is shown as it is written',
  },
  {
    check: 'rule-never-used',
    title: 'a rule that nothing uses',
    files: { 'a/b.yaml': `${rule('width')}§${rule('depth')}` },
    unused: ['a.b.depth'],
    found: '"a.b.depth", used by nothing',
    expected: 'a page, calculation, drawing or rule that uses it',
  },
  {
    check: 'rule-never-used',
    title: 'a caution that nothing uses',
    files: { 'cautions/heat.yaml': `§${caution('hot')}` },
    unused: ['caution.heat.hot'],
    found: '"caution.heat.hot", used by nothing',
    expected: 'a page, calculation, drawing or rule that uses it',
  },
  {
    check: 'shape',
    title: 'a recall without its reason',
    files: {
      'rulebook.yaml': 'version: "2026.1"\nrecall: [§{ version: "2026.1" }]\n',
      'a/b.yaml': rule('width'),
    },
    found: 'no "reason" in the first of "recall"',
    expected: 'a line "reason:" with words behind the colon',
  },
  {
    check: 'shape',
    title: 'a version recalled twice',
    files: {
      'rulebook.yaml':
        'version: "2026.1"\nrecall: §[{ version: "2026.1", reason: A. }, { version: "2026.1", reason: B. }]\n',
      'a/b.yaml': rule('width'),
    },
    found: 'recall [{"version":"2026.1","reason":"A."},{"version":"2026.1","...',
    expected: 'each version once',
  },
  {
    check: 'version',
    title: 'a version without its quotes',
    files: { 'rulebook.yaml': 'version: §2026.10\n', 'a/b.yaml': rule('width') },
    found: 'version 2026.1',
    expected: 'year and number in quotes, such as "2026.1"',
  },
  {
    check: 'version',
    title: 'no version at all',
    files: { 'rulebook.yaml': '§name: a rulebook\n', 'a/b.yaml': rule('width') },
    found: 'no version',
    expected: 'year and number in quotes, such as "2026.1"',
  },
  {
    check: 'shape',
    title: 'a misspelt key, told once and not again as the key that is missing',
    files: { 'a/b.yaml': rule('width').replace('says:', '§syas:') },
    found: 'the unknown key "syas"',
    expected: 'a key of the schema; did you mean "says"?',
  },
  {
    check: 'shape',
    title: 'a misspelt key of a value',
    files: { 'a/b.yaml': rule('width', { value: '{ kind: at-least, number: 2, §untit: in }' }) },
    found: 'the unknown key "untit"',
    expected: 'a key of the schema; did you mean "unit"?',
  },
  {
    check: 'shape',
    title: 'a key that is like none, with the keys there are',
    files: { 'sources.yaml': `${document('handbook')}  §colour: red\n`, 'a/b.yaml': rule('width') },
    found: 'the unknown key "colour"',
    expected: 'one of kind, document, title, edition, read_in, publisher, standing, found_at',
  },
  {
    check: 'shape',
    title: 'a rule without a source',
    files: {
      'a/b.yaml': rule('width')
        .replace(/ {2}source.*\n/, '')
        .replace('title', '§title'),
    },
    found: 'no "source"',
    expected: 'a line such as source: { kind: practice }',
  },
  {
    check: 'shape',
    title: 'a kind of value that there is not',
    files: { 'a/b.yaml': rule('width', { value: '{ kind: §exactly, number: 2, unit: in }' }) },
    found: 'kind "exactly" in "value"',
    expected: 'one of exact, at-least, at-most, between, one-of, table',
  },
  {
    check: 'shape',
    title: 'a kind of source that there is not',
    files: { 'a/b.yaml': rule('width', { source: '{ kind: §hearsay }' }) },
    found: 'kind "hearsay" in "source"',
    expected: 'one of document, practice, memory, derived',
  },
  {
    check: 'shape',
    title: 'a level of caution that there is not',
    files: { 'cautions/heat.yaml': caution('hot').replace('warn', '§panic') },
    found: 'level "panic"',
    expected: 'one of stop, warn, note',
  },
  {
    check: 'shape',
    title: 'a word where a number belongs',
    files: { 'a/b.yaml': rule('width', { value: '{ kind: exact, number: §two, unit: in }' }) },
    found: 'number "two" in "value"',
    expected: 'a number by itself, without a unit and without quotes',
  },
  {
    check: 'shape',
    title: 'a text that says nothing',
    files: { 'a/b.yaml': rule('width').replace('It is this wide.', '§"  "') },
    found: 'says "  "',
    expected: 'words, not an empty text',
  },
  {
    check: 'shape',
    title: 'a day that there is not',
    files: {
      'a/b.yaml':
        rule('width', { source: cited('handbook', ", on: §'2026-02-30'") }) +
        rule('depth', { source: cited('handbook') }),
      'sources.yaml': document('handbook'),
    },
    found: 'on "2026-02-30" in "source"',
    expected: 'a day such as 2026-11-25',
  },
  {
    check: 'shape',
    title: 'a choice given twice',
    files: { 'a/b.yaml': rule('kinds', { value: '{ kind: one-of, choices: §[gable, hole, gable] }' }) },
    found: 'choices ["gable","hole","gable"] in "value"',
    expected: 'each word once',
  },
  {
    check: 'shape',
    title: 'an empty file',
    files: { 'a/b.yaml': '§# nothing yet\n' },
    found: 'nothing to read',
    expected: 'entries',
  },
  {
    check: 'yaml',
    title: 'a bracket that is not closed',
    files: { 'a/b.yaml': 'width: [1, 2\n§' },
    found:
      'a bracket that is opened before here and not closed (the parser: Flow sequence in block collection must be sufficiently indented and end with a ])',
    expected: 'a ] where it ends, and lines farther in until then',
  },
  {
    check: 'yaml',
    title: 'a tab in the place of spaces',
    files: { 'a/b.yaml': 'width:\n  title: Width\n§\tsays: It is this wide.\n' },
    found: 'a tab at the head of a line (the parser: Tabs are not allowed as indentation)',
    expected: 'spaces in its place, as many as before the lines it belongs with',
  },
  {
    check: 'yaml',
    title: 'a colon in words without quotes',
    files: { 'a/b.yaml': 'width:\n  says: §Mind this: it is wide.\n' },
    found:
      'a colon in words that have no quotes (the parser: Nested mappings are not allowed in compact mappings)',
    expected: 'quotes about all of the words: "Mind this: it falls."',
  },
  {
    check: 'yaml',
    title: 'a colon in words without quotes, between brackets',
    files: { 'a/b.yaml': 'width: { says: §Mind this: it is wide }\n' },
    found:
      'a colon in words that have no quotes (the parser: Block collections are not allowed within flow collections)',
    expected: 'quotes about all of the words: "Mind this: it falls."',
  },
  {
    check: 'yaml',
    title: 'a quote that is not closed, told where it opens',
    files: { 'a/b.yaml': 'width:\n  says: §"It is this wide.\n  title: Width\n' },
    found: 'a quote " that is opened and not closed (the parser: Missing closing "quote)',
    expected: 'another " where the words end',
  },
  {
    check: 'yaml',
    title: 'a quote that is not closed before another opens',
    files: { 'a/b.yaml': "width:\n  says: §'It is this wide.\n  title: 'Width'\n" },
    found: "a quote ' that is opened and not closed (the parser: Missing closing 'quote)",
    expected: "another ' where the words end",
  },
  {
    check: 'yaml',
    title: 'an apostrophe that closes the quotes too soon',
    files: { 'a/b.yaml': "width:\n  says: 'It'§s wide.'\n" },
    found: 'words after the quote that closes the value (the parser: Unexpected scalar at node end)',
    expected: 'one pair of double quotes about all of it, with no double quote between them',
  },
  {
    check: 'yaml',
    title: 'a line too far in, told where it stands',
    files: { 'a/b.yaml': 'width:\n  title: Width\n   §says: It is this wide.\n' },
    found:
      'a line farther in than the one above it, which has its value already (the parser: Nested mappings are not allowed in compact mappings)',
    expected: 'as many spaces before it as before the lines it belongs with',
  },
  {
    check: 'yaml',
    title: 'a line too far out',
    files: { 'a/b.yaml': 'width:\n    title: Width\n  §says: It is this wide.\n' },
    found:
      'a line that stands neither with the lines above it nor below one of them (the parser: All mapping items must start at the same column)',
    expected: 'as many spaces before it as before the lines it belongs with',
  },
  {
    check: 'yaml',
    title: 'a first line that alone is too far in',
    files: { 'a/b.yaml': ' width: 1\n§depth: 2\n' },
    found:
      'a line that stands neither with the lines above it nor below one of them (the parser: Unexpected scalar at node end)',
    expected: 'as many spaces before it as before the lines it belongs with',
  },
  {
    check: 'yaml',
    title: 'a key without its colon',
    files: { 'a/b.yaml': 'width:\n  §title Width\n  says: It is this wide.\n' },
    found:
      'a line that is neither a key with its value nor a part of one (the parser: Implicit keys need to be on a single line)',
    expected: 'the key, a colon, a space, then the value',
  },
  {
    check: 'yaml',
    title: 'words that begin with a sign',
    files: { 'a/b.yaml': 'width:\n  title: §@home\n' },
    found: 'words that begin with @ (the parser: Plain value cannot start with reserved character @)',
    expected: 'quotes about all of the words',
  },
  {
    check: 'yaml',
    title: 'words that begin with a star',
    files: { 'a/b.yaml': 'width:\n  title: Width\n  says: §*important*\n' },
    found: 'words that begin with *',
    expected: 'quotes about all of the words',
  },
  {
    check: 'yaml',
    title: 'words that begin with a star, and more after it',
    files: { 'a/b.yaml': 'width:\n  says: §*important* words\n' },
    found: 'words that begin with *',
    expected: 'quotes about all of the words',
  },
  {
    check: 'yaml',
    title: 'words that begin with a sign of and, the first of which the parser would take away',
    files: { 'a/b.yaml': 'width:\n  says: §&important words\n' },
    found: 'words that begin with &',
    expected: 'quotes about all of the words',
  },
  {
    check: 'yaml',
    title: 'a sign of and alone before the words',
    files: { 'a/b.yaml': 'width:\n  says: §& so on\n' },
    found: 'words that begin with &',
    expected: 'quotes about all of the words',
  },
  {
    check: 'yaml',
    title: 'a colon in words without quotes, after a tab',
    files: { 'a/b.yaml': 'width:\n  says:\t§Mind this: it is wide.\n' },
    found:
      'a colon in words that have no quotes (the parser: Nested mappings are not allowed in compact mappings)',
    expected: 'quotes about all of the words: "Mind this: it falls."',
  },
  {
    check: 'yaml',
    title: 'a tab inside a line',
    files: { 'a/b.yaml': '-§ \ttitle: Width\n' },
    found: 'a tab inside a line (the parser: Tabs are not allowed as indentation)',
    expected: 'a space in its place',
  },
  {
    check: 'yaml',
    title: 'what is rare',
    files: { 'a/b.yaml': 'width:\n  title: "C:§\\Users"\n' },
    found: 'something that is no YAML (the parser: Invalid escape sequence \\Users")',
    expected: 'keys with values; quotes about words that hold signs',
  },
];

describe('one mistake gives one problem, with its place, what was found and what is expected', () => {
  test.each(mistakes)('$check: $title', ({ unused, found, expected, check, ...mistake }) => {
    const { files, place } = marked(mistake.files);
    const problems = problemsOf(files, unused);
    expect(
      problems.map(({ file, line, column, ...said }) => ({ place: `${file}:${line}:${column}`, ...said })),
    ).toEqual([{ place, found, expected, check }]);
  });

  test('every lint has a row in this table', () => {
    expect(new Set(mistakes.map(({ check }) => check))).toEqual(
      new Set([...lints.map(({ name }) => name), 'version', 'shape', 'yaml']),
    );
  });
});

describe('nothing is said of a folder without a mistake', () => {
  const sound: readonly [title: string, files: Files][] = [
    [
      'a rule, a caution and a document',
      {
        'a/b.yaml': rule('width', { source: cited('handbook', ", on: '2026-11-25'") }),
        'cautions/heat.yaml': caution('hot', { says: 'Keep {a.b.width} away.', more: 'rules: [a.b.width]' }),
        'sources.yaml': document('handbook'),
      },
    ],
    [
      'a document that only a check by hand works with',
      {
        'checks/b.yaml': check('expect: { a: 1 ft }', workedBy('handbook')),
        'sources.yaml': document('handbook'),
      },
    ],
    [
      'bands that touch',
      {
        'a/b.yaml': rule('load', {
          value: table(`${keyed('band')}, ${lookedUp}`, '[[1, 2], 5], [[2, 4], 6]'),
        }),
      },
    ],
    [
      'bands with a gap that is explained',
      {
        'a/b.yaml': rule('load', {
          value: table(
            `${keyed('band', ', gaps: Nothing is published.')}, ${lookedUp}`,
            '[[1, 2], 5], [[3, 4], 6]',
          ),
        }),
      },
    ],
    [
      'the same word with different numbers beside it',
      {
        'a/b.yaml': rule('load', {
          value: table(
            `{ name: board, title: Board, key: word }, ${keyed('at-most')}, ${lookedUp}`,
            '[x, 16, 2], [x, 24, 1], [y, 16, 3]',
          ),
        }),
      },
    ],
    [
      'a word that a column of numbers names',
      {
        'a/b.yaml': rule('load', { value: table(`${keyed('at-least')}, ${wordy}`, '[1, 2], [2, no limit]') }),
      },
    ],
    [
      'a reprint of what its document has in a copy',
      {
        'a/b.yaml': rule('width', { source: cited('copied').replace('read: read', 'read: reprint') }),
        'sources.yaml': copied('copied'),
      },
    ],
    [
      'files of an agency, which are read elsewhere',
      { 'a/b.yaml': rule('width'), 'local/here/a.yaml': 'width: [' },
    ],
  ];
  test.each(sound)('%s', (_, files) => {
    expect(problemsOf(files)).toEqual([]);
  });
});

describe('all mistakes are told at once', () => {
  /** Five mistakes in three files, none of them a follower of another. */
  const five: Files = {
    'c/d.yaml': rule('depth', { value: '{ kind: between, low: 3, high: 2, unit: inn }' }),
    'a/b.yaml': rule('width', { source: '{ kind: hearsay }' }) + rule('height').replace('says:', 'syas:'),
    'sources.yaml': document('handbook'),
  };

  test('five mistakes are five problems, in the order of file, line and column', () => {
    expect(
      problemsOf(five).map(({ file, line, column, check }) => `${file}:${line}:${column} ${check}`),
    ).toEqual([
      'a/b.yaml:5:19 shape',
      'a/b.yaml:9:3 shape',
      'c/d.yaml:4:32 range-upside-down',
      'c/d.yaml:4:50 unknown-unit',
      'sources.yaml:1:1 unused-source',
    ]);
  });

  const citing: Files = {
    'a/b.yaml': rule('width', { source: cited('handbook') }),
    'cautions/heat.yaml': caution('hot', { source: cited('handbook'), says: 'Keep {a.b.width} away.' }),
    'checks/b.yaml':
      check('expect: { a: 1 ft }', cited('handbook')) +
      check('expect: { b: 2 ft }', workedBy('handbook')).replace('A thing', 'Another'),
  };
  const sources = document('handbook');
  test.each<[what: string, files: Files, place: string]>([
    [
      'a document',
      { ...citing, 'sources.yaml': sources.replace('edition:', 'editoin:') },
      'sources.yaml:5:3',
    ],
    [
      'all documents',
      { ...citing, 'sources.yaml': sources.replace('  edition', '\tedition') },
      'sources.yaml:5:1',
    ],
    ['a file of documents without any', { ...citing, 'sources.yaml': '# None yet.\n' }, 'sources.yaml:1:1'],
    [
      'a rule, which alone cites a document and uses another rule',
      {
        'a/b.yaml':
          rule('width', { source: cited('handbook') }).replace('says:', 'syas:') +
          rule('depth', { source: derived('a.b.width') }),
        'cautions/heat.yaml': caution('hot', { says: 'Keep {a.b.width} away.', more: 'rules: [a.b.width]' }),
        'sources.yaml': sources,
      },
      'a/b.yaml:3:3',
    ],
    [
      'all rules of a file',
      {
        'a/b.yaml': `${rule('width', { source: cited('handbook') })}\tx: 1\n`,
        'cautions/heat.yaml': caution('hot', { says: 'Keep {a.b.width} away.' }),
        'sources.yaml': sources,
      },
      'a/b.yaml:7:1',
    ],
    [
      'a caution that a check names',
      {
        'cautions/heat.yaml': caution('hot').replace('level: warn', 'level: wran'),
        'checks/b.yaml': check('cautions: [caution.heat.hot]'),
      },
      'cautions/heat.yaml:2:10',
    ],
  ])('what could not be read is told, and not again where it is named: %s', (_, files, place) => {
    expect(problemsOf(files).map(({ file, line, column }) => `${file}:${line}:${column}`)).toEqual([place]);
  });

  test('beside a document that could not be read, one that is not there is told all the same', () => {
    const files = {
      'a/b.yaml': rule('width', { source: cited('handbook') }) + rule('depth', { source: cited('leaflet') }),
      'sources.yaml': sources.replace('edition:', 'editoin:'),
    };
    expect(problemsOf(files).map(({ found }) => found)).toEqual([
      'the document "leaflet"',
      'the unknown key "editoin"',
    ]);
  });

  test('two misspelt keys of one rule are two problems', () => {
    const text = rule('width').replace('says:', 'syas:').replace('applies_to:', 'aplies_to:');
    expect(problemsOf({ 'a/b.yaml': text }).map(({ line, found }) => [line, found])).toEqual([
      [3, 'the unknown key "syas"'],
      [6, 'the unknown key "aplies_to"'],
    ]);
  });

  test('faults of one YAML text stand in the order of their places, and a tab inside a line hides none', () => {
    const text = 'width: 1\nwidth: 2\ndepth:\tat: 3\nlength: @home\n';
    expect(problemsOf({ 'a/b.yaml': text }).map(({ line, found }) => [line, found.split(' (')[0]])).toEqual([
      [2, 'the key "width" a second time, first on line 1'],
      [3, 'a colon in words that have no quotes'],
      [4, 'words that begin with @'],
    ]);
  });

  test('a mark that is called back is YAML, and nothing is said of it', () => {
    expect(readYaml('a/b.yaml', 'width: &wide broad\ndepth: *wide\n')).toMatchObject({
      problems: [],
      value: { width: 'broad', depth: 'broad' },
    });
  });

  test('the message has a line for each problem, and no stack trace', () => {
    const thrown = inFolder(five, (folder) => {
      try {
        return loadFolder(folder);
      } catch (error) {
        return error;
      }
    });
    if (!(thrown instanceof DataError)) throw new Error('found no DataError, expected one');
    expect(thrown.message.split('\n')).toEqual(thrown.problems.map(formatProblem));
    expect(thrown.message.split('\n')).toHaveLength(5);
    expect(thrown.message).not.toMatch(/^\s+at /m);
    expect(thrown.message).not.toContain('.ts:');
  });

  test('a problem reads file:line:column, found, expected, check', () => {
    expect(
      formatProblem({ file: 'a/b.yaml', line: 4, column: 9, found: '"x"', expected: 'a y', check: 'shape' }),
    ).toBe('a/b.yaml:4:9  found "x"  expected a y  (shape)');
  });
});

describe('a hostile file is refused at once', () => {
  /** Each line holds the line above nine times: the last would unfold to 9^9 words. */
  const bomb = Array.from({ length: 9 }, (_, level) =>
    level === 0
      ? 'x0: &x0 [x, x, x, x, x, x, x, x, x]'
      : `x${level}: &x${level} [${Array(9)
          .fill(`*x${level - 1}`)
          .join(', ')}]`,
  ).join('\n');

  test('aliases that unfold without end', () => {
    const start = performance.now();
    expect(problemsOf({ 'a/b.yaml': bomb })).toEqual([
      {
        file: 'a/b.yaml',
        line: 1,
        column: 1,
        found: 'aliases that unfold without end',
        expected: 'at most 20 uses of an alias',
        check: 'yaml',
      },
    ]);
    // Unfolding 9^9 words would take minutes and all memory; a second is far above what refusing takes.
    expect(performance.now() - start).toBeLessThan(1000);
  });

  test('a key by the name of a prototype is an unknown key and changes nothing', () => {
    const text = `${rule('width')}  __proto__: { polluted: true }\n`;
    expect(problemsOf({ 'a/b.yaml': text }).map(({ found }) => found)).toEqual([
      'the unknown key "__proto__"',
    ]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});
