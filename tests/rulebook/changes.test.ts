import { describe, expect, test } from 'vitest';
import { type ChangeKind, diffRulebooks } from '../../src/rulebook/changes/diff.ts';
import { needsReason } from '../../src/rulebook/changes/needs-reason.ts';
import { partsApart } from '../../src/rulebook/changes/parts-apart.ts';
import { changesByVersion, compareVersions, releaseProblems } from '../../src/rulebook/changes/releases.ts';
import { rulebookJson } from '../../src/rulebook/export/json.ts';
import { formatProblem } from '../../src/rulebook/problem.ts';
import type { Rule, RulebookData } from '../../src/rulebook/rulebook.ts';
import type { Reason, RuleValue } from '../../src/rulebook/schema.ts';
import { theProject } from '../the-project.ts';
import { problemsOf, rule as ruleText } from './folder.ts';

const { data, files, releases } = theProject();
const [some] = Object.values(data.rules) as [Rule];
const value = (number: number, unit = 'in'): RuleValue => ({ kind: 'at-least', number, unit });
const range = (low: number, high: number): RuleValue => ({ kind: 'between', low, high, unit: 'in' });
const table = (...loads: number[]): RuleValue => ({
  kind: 'table',
  columns: [
    { name: 'board', title: 'Board', key: 'word' },
    { name: 'load', title: 'Load', unit: 'lb/ft2' },
  ],
  rows: loads.map((load, place) => [`board ${place}`, load]),
});

/** A table with its rows the other way round. */
const turned = (of: RuleValue): RuleValue =>
  of.kind === 'table' ? { ...of, rows: [...of.rows].reverse() } : of;

/** A table whose row is found by a width, in a unit. */
const byWidth = (unit: string, load: number, key: 'at-most' | 'at-least' = 'at-most'): RuleValue => ({
  kind: 'table',
  columns: [
    { name: 'width', title: 'Width', unit, key },
    { name: 'load', title: 'Load', unit: 'lb/ft2' },
  ],
  rows: [[16, load]],
});

/** A table of one load, in a unit. */
const loads = (unit: string, load: number | string | [number, number], title = 'Load'): RuleValue => ({
  kind: 'table',
  columns: [
    { name: 'board', title: 'Board', key: 'word' },
    { name: 'load', title, unit },
  ],
  rows: [['board', load]],
});

const rule = (more: Partial<Rule>): Rule => ({
  ...some,
  id: 'a.b',
  safety: undefined,
  aliases: undefined,
  value: value(2),
  ...more,
});
const book = (version: string, ...rules: Rule[]): RulebookData => ({
  ...data,
  version,
  rules: Object.fromEntries(rules.map((each) => [each.id, each])),
  cautions: {},
});
const kindOf = (before: Partial<Rule>, after: Partial<Rule>): ChangeKind | undefined =>
  diffRulebooks(book('2026.1', rule(before)), book('2026.2', rule(after)))[0]?.kind;

const higher = { safety: 'higher is stricter' };
const lower = { safety: 'lower is stricter' };
const narrower = { safety: 'narrower is stricter' };
const asItStands = { safety: 'as it stands' };

describe('a change of a rule is told by its gravest kind', () => {
  test.each<[what: string, before: Partial<Rule>, after: Partial<Rule>, kind: ChangeKind | undefined]>([
    ['nothing', {}, {}, undefined],
    ['a clearance that grows', { ...higher, value: value(2) }, { ...higher, value: value(3) }, 'stricter'],
    ['a clearance that shrinks', { ...higher, value: value(2) }, { ...higher, value: value(1) }, 'looser'],
    ['a limit that falls', { ...lower, value: value(2) }, { ...lower, value: value(1) }, 'stricter'],
    ['a limit that rises', { ...lower, value: value(2) }, { ...lower, value: value(3) }, 'looser'],
    [
      'the same length in another unit',
      { ...lower, value: value(12) },
      { ...lower, value: value(1, 'ft') },
      undefined,
    ],
    [
      // 9876543.21 × 0.45359237 is 4479924.6420313077, and floating numbers leave a billionth of it and more.
      'the same weight in another unit, so large that it can’t be held to the billionth',
      { ...lower, value: value(9876543.21, 'lb') },
      { ...lower, value: value(4479924.64203131, 'kg') },
      undefined,
    ],
    [
      'more of it in another unit',
      { ...higher, value: value(12) },
      { ...higher, value: value(2, 'ft') },
      'stricter',
    ],
    [
      'a range that narrows at both ends',
      { ...narrower, value: range(1, 9) },
      { ...narrower, value: range(2, 8) },
      'stricter',
    ],
    [
      'a range that moves',
      { ...narrower, value: range(1, 9) },
      { ...narrower, value: range(2, 10) },
      'looser',
    ],
    [
      'a range of a limit whose low end falls',
      { ...lower, value: range(4, 9) },
      { ...lower, value: range(3, 9) },
      'stricter',
    ],
    [
      'a range of a limit both whose ends fall',
      { ...lower, value: range(4, 9) },
      { ...lower, value: range(3, 8) },
      'stricter',
    ],
    [
      'a range of a limit that narrows',
      { ...lower, value: range(4, 9) },
      { ...lower, value: range(5, 8) },
      'looser',
    ],
    [
      'a range of a clearance both whose ends rise',
      { ...higher, value: range(4, 9) },
      { ...higher, value: range(5, 10) },
      'stricter',
    ],
    [
      'a range with no direction that narrows',
      { ...asItStands, value: range(4, 9) },
      { ...asItStands, value: range(5, 8) },
      'value',
    ],
    [
      'a safety value with no direction',
      { ...asItStands, value: value(2) },
      { ...asItStands, value: value(3) },
      'value',
    ],
    ['a value that is no safety value', { value: value(2) }, { value: value(3) }, 'value'],
    [
      'a table whose limits fall',
      { ...lower, value: table(2, 3) },
      { ...lower, value: table(2, 2.5) },
      'stricter',
    ],
    [
      'a table one of whose limits rises',
      { ...lower, value: table(2, 3) },
      { ...lower, value: table(1, 3.5) },
      'looser',
    ],
    [
      'a table with a row more',
      { ...lower, value: table(2, 3) },
      { ...lower, value: table(2, 3, 4) },
      'meaning',
    ],
    [
      'a table with a row more, one of whose limits rises',
      { ...lower, value: table(2, 3) },
      { ...lower, value: table(2, 3.5, 4) },
      'looser',
    ],
    [
      'a table with a row less, whose other limit falls',
      { ...lower, value: table(2, 3) },
      { ...lower, value: table(1) },
      'meaning',
    ],
    [
      'a table whose rows are found by the same number in another unit',
      { ...higher, value: byWidth('in', 2) },
      { ...higher, value: byWidth('ft', 3) },
      'meaning',
    ],
    [
      'a limit that rises and is for safety no more',
      { ...lower, value: value(2) },
      { value: value(3) },
      'looser',
    ],
    [
      'a limit that rises, and whose direction is turned',
      { ...lower, value: value(2) },
      { ...higher, value: value(3) },
      'looser',
    ],
    [
      'a limit that falls, and whose direction is turned',
      { ...lower, value: value(2) },
      { ...higher, value: value(1) },
      'meaning',
    ],
    [
      'a value that is for safety from now on, and too low for it',
      { value: value(2) },
      { ...higher, value: value(1) },
      'looser',
    ],
    [
      'a single number whose direction is that of a range',
      { ...narrower, value: value(2) },
      { ...narrower, value: value(3) },
      'value',
    ],
    [
      'a table whose direction is that of a range',
      { ...narrower, value: table(2, 3) },
      { ...narrower, value: table(2, 2.5) },
      'value',
    ],
    [
      // 2 kg/m2 are 0.41 lb/ft2.
      'a table whose numbers stay and whose unit is a smaller one',
      { ...lower, value: loads('lb/ft2', 2) },
      { ...lower, value: loads('kg/m2', 2) },
      'stricter',
    ],
    // Of a word nobody can say which way it went, whichever way is stricter.
    [
      'a word in a table, where higher is stricter',
      { ...higher, value: loads('lb/ft2', 'tested') },
      { ...higher, value: loads('lb/ft2', 'by rule') },
      'looser',
    ],
    [
      'a word in a table, where lower is stricter',
      { ...lower, value: loads('lb/ft2', 'tested') },
      { ...lower, value: loads('lb/ft2', 'by rule') },
      'looser',
    ],
    [
      // Row by row they fall, but it is no longer the same row that stands first.
      'a table whose rows change places while a limit falls',
      { ...lower, value: table(2, 3) },
      { ...lower, value: turned(table(2, 2.5)) },
      'meaning',
    ],
    ['the same table', { ...lower, value: table(2, 3) }, { ...lower, value: table(2, 3) }, undefined],
    [
      // 0.45359237 kg over 0.3048 m squared.
      'a table of the same loads in another unit',
      { ...lower, value: loads('lb/ft2', 1) },
      { ...lower, value: loads('kg/m2', 4.882427636383051) },
      undefined,
    ],
    [
      'a table of a greater load in another unit, though its number is smaller',
      { ...lower, value: loads('kg/m2', 4.9) },
      { ...lower, value: loads('lb/ft2', 1.1) },
      'looser',
    ],
    [
      'a table of the same numbers in another dimension',
      { ...lower, value: loads('lb/ft2', 1) },
      { ...lower, value: loads('lb', 1) },
      'meaning',
    ],
    [
      'a table whose rows are found in another way',
      { ...lower, value: byWidth('in', 2) },
      { ...lower, value: byWidth('in', 2, 'at-least') },
      'meaning',
    ],
    [
      'a column that has another title',
      { ...lower, value: loads('lb/ft2', 1) },
      { ...lower, value: loads('lb/ft2', 1, 'Weight') },
      undefined,
    ],
    [
      'a range in a table whose upper end rises',
      { ...lower, value: loads('lb/ft2', [1, 2]) },
      { ...lower, value: loads('lb/ft2', [1, 3]) },
      'looser',
    ],
    [
      'a range in a table, both ends of which fall',
      { ...lower, value: loads('lb/ft2', [1, 2]) },
      { ...lower, value: loads('lb/ft2', [0.5, 1.5]) },
      'stricter',
    ],
    [
      'a number in a table that becomes a range',
      { ...lower, value: loads('lb/ft2', 2) },
      { ...lower, value: loads('lb/ft2', [1, 2]) },
      'looser',
    ],
    [
      'a word in a table that is another',
      { ...lower, value: loads('lb/ft2', 'not allowed') },
      { ...lower, value: loads('lb/ft2', 'no limit') },
      'looser',
    ],
    [
      'a word in a table that becomes a number',
      { ...lower, value: loads('lb/ft2', 'not allowed') },
      { ...lower, value: loads('lb/ft2', 1) },
      'looser',
    ],
    [
      'the same choices',
      { value: { kind: 'one-of', choices: ['net', 'rail'] } },
      { value: { kind: 'one-of', choices: ['net', 'rail'] } },
      undefined,
    ],
    [
      'a choice more',
      { value: { kind: 'one-of', choices: ['net'] } },
      { value: { kind: 'one-of', choices: ['net', 'rail'] } },
      'value',
    ],
    ['a length that becomes a weight', { value: value(2) }, { value: value(2, 'lb') }, 'meaning'],
    [
      'a bound that becomes exact',
      { value: value(2) },
      { value: { kind: 'exact', number: 2, unit: 'in' } },
      'meaning',
    ],
    ['another scope', {}, { applies_to: 'Nothing at all.' }, 'meaning'],
    ['a safety value that is one no more', higher, {}, 'meaning'],
    ['another source', {}, { source: { kind: 'memory' } }, 'source'],
    ['words', {}, { says: 'The same in other words.' }, 'wording'],
    [
      'value and words at once',
      { ...higher, value: value(2) },
      { ...higher, value: value(1), says: 'x' },
      'looser',
    ],
  ])('%s', (_, before, after, kind) => {
    const source = { kind: 'practice' } as const;
    expect(kindOf({ source, ...before }, { source, ...after })).toBe(kind);
  });

  test('a rule that comes, one that goes, and one that is renamed', () => {
    const before = book('2026.1', rule({ id: 'a.old' }), rule({ id: 'a.kept' }));
    const after = book('2026.2', rule({ id: 'a.new' }), rule({ id: 'a.moved', aliases: ['a.kept'] }));
    expect(diffRulebooks(before, after).map(({ id, kind }) => [id, kind])).toEqual([
      ['a.new', 'new'],
      ['a.old', 'gone'],
    ]);
  });
});

describe('of a change each part that differs is shown, as it was and as it is', () => {
  const document = {
    kind: 'standard',
    document: 'A standard',
    title: 'On things',
    edition: '2015',
    publisher: 'A press',
    standing: 'It binds.',
  } as const;
  const cited = { kind: 'document', document: 'std', clause: 'page 1', read: 'read' } as const;
  const parts = (before: Partial<Rule>, after: Partial<Rule>) =>
    partsApart({ before: rule({ source: cited, ...before }), after: rule({ source: cited, ...after }) }, [
      { std: document },
      { std: document },
    ]).map(({ part, before: was, after: is }) => [part, was, is]);

  test.each<[what: string, before: Partial<Rule>, after: Partial<Rule>, told: string[][]]>([
    ['nothing', {}, {}, []],
    ['a value', { value: value(2) }, { value: value(3) }, [['Value', 'at least 2 in', 'at least 3 in']]],
    [
      'how it was read',
      {},
      { source: { ...cited, read: 'reprint' } },
      [['Source', 'A standard (2015), page 1: read', 'A standard (2015), page 1: reprint']],
    ],
    [
      'a clause and a day',
      {},
      { source: { ...cited, clause: 'page 2', on: '2026-11-25' } },
      [
        ['Source', 'A standard (2015), page 1: read', 'A standard (2015), page 2: read'],
        ['Last read', 'none', '2026-11-25'],
      ],
    ],
    [
      'a remark alone',
      {},
      { source: { ...cited, remark: 'In a later edition.' } },
      [['Remark', 'none', 'In a later edition.']],
    ],
    [
      'a working',
      { source: { kind: 'derived', working: 'Twice it.', from: ['a.c'] } },
      { source: { kind: 'derived', working: 'Twice both.', from: ['a.c', 'a.d'] } },
      [
        ['Working', 'Twice it.', 'Twice both.'],
        ['Worked from', 'a.c', 'a.c, a.d'],
      ],
    ],
    ['a value that is a safety value now', {}, higher, [['Safety', 'none', 'higher is stricter']]],
    [
      'a scope and a sentence',
      { applies_to: 'Homes.', says: 'It is wide.' },
      { applies_to: 'New homes.', says: 'It is this wide.' },
      [
        ['Applies to', 'Homes.', 'New homes.'],
        ['It says', 'It is wide.', 'It is this wide.'],
      ],
    ],
  ])('%s', (_, before, after, told) => expect(parts(before, after)).toEqual(told));

  test('no row of a published step shows the same before and now, and none shows nothing', () => {
    for (const { changes } of changesByVersion(data, releases))
      for (const { id, parts: told } of changes) {
        expect(told, id).not.toEqual([]);
        for (const { part, before, after } of told) expect(after, `${id}, ${part}`).not.toBe(before);
      }
  });
});

describe('a change of a safety value asks for a reason unless it only allows less', () => {
  const exact = (number: number): RuleValue => ({ kind: 'exact', number, unit: 'in' });
  const words = (...choices: string[]): RuleValue => ({ kind: 'one-of', choices });
  test.each<[what: string, before: Partial<Rule>, after: Partial<Rule>, at: string | undefined]>([
    ['a limit that falls', { ...lower, value: value(2) }, { ...lower, value: value(1) }, undefined],
    ['a limit that rises', { ...lower, value: value(2) }, { ...lower, value: value(3) }, 'value'],
    ['a value that is no safety value', { value: value(2) }, { value: value(3) }, undefined],
    ['the scope of one that is none', {}, { applies_to: 'Nothing at all.' }, undefined],
    [
      'words and source',
      higher,
      { ...higher, says: 'In other words.', source: { kind: 'memory' } },
      undefined,
    ],
    ['a row more', { ...lower, value: table(2) }, { ...lower, value: table(2, 3) }, 'value'],
    [
      'a row more, and twice the load',
      { ...lower, value: table(2) },
      { ...lower, value: table(4, 3) },
      'value',
    ],
    ['a row less', { ...lower, value: table(2, 3) }, { ...lower, value: table(2) }, 'value'],
    [
      'a row less, and half the load',
      { ...lower, value: table(2, 3) },
      { ...lower, value: table(1) },
      'value',
    ],
    [
      'rows in another order',
      { ...lower, value: table(2, 3) },
      { ...lower, value: turned(table(2, 3)) },
      'value',
    ],
    ['a value that is for safety no more', { ...lower, value: value(2) }, { value: value(2) }, 'no key'],
    ['the same, and twice the value', { ...lower, value: value(2) }, { value: value(4) }, 'value'],
    ['the same, and half the value', { ...lower, value: value(2) }, { value: value(1) }, 'no key'],
    ['a direction turned', { ...lower, value: value(2) }, { ...higher, value: value(2) }, 'safety'],
    ['a direction given up', { ...lower, value: value(2) }, { ...asItStands, value: value(2) }, 'safety'],
    [
      'a direction turned, and half the value',
      { ...lower, value: value(2) },
      { ...higher, value: value(1) },
      'safety',
    ],
    ['a value that is for safety from now on', { value: value(2) }, { ...lower, value: value(2) }, undefined],
    ['the same, and half the value', { value: value(2) }, { ...lower, value: value(1) }, undefined],
    ['the same, and twice the value', { value: value(2) }, { ...lower, value: value(4) }, 'value'],
    ['another kind', { ...higher, value: value(2) }, { ...higher, value: exact(2) }, 'value'],
    [
      'another kind, and ten times the value',
      { ...lower, value: value(2) },
      { ...lower, value: exact(20) },
      'value',
    ],
    ['another dimension', { ...higher, value: value(2) }, { ...higher, value: value(2, 'lb') }, 'value'],
    [
      'the same in another unit',
      { ...lower, value: value(12) },
      { ...lower, value: value(1, 'ft') },
      undefined,
    ],
    ['another scope', higher, { ...higher, applies_to: 'Nothing at all.' }, 'applies_to'],
    [
      'another scope, and a stricter value',
      { ...higher, value: value(2) },
      { ...higher, value: value(3), applies_to: 'Nothing at all.' },
      'applies_to',
    ],
    [
      'a value with no direction',
      { ...asItStands, value: value(2) },
      { ...asItStands, value: value(1) },
      'value',
    ],
    [
      'a choice less of a value with no direction',
      { ...asItStands, value: words('net', 'rail') },
      { ...asItStands, value: words('net') },
      'value',
    ],
  ])('%s', (_, before, after, at) => {
    const source = { kind: 'practice' } as const;
    const asks = needsReason({ before: rule({ source, ...before }), after: rule({ source, ...after }) });
    expect(asks && (asks.at ?? 'no key')).toBe(at);
  });

  test.each<[what: string, before: Rule | undefined, after: Rule | undefined]>([
    ['a rule that comes', undefined, rule(higher)],
    // That stops by itself: ids are for ever.
    ['a rule that goes', rule(higher), undefined],
  ])('%s asks for none', (_, before, after) => expect(needsReason({ before, after })).toBeUndefined());
});

describe('versions', () => {
  test.each([
    ['2026.2', '2026.1', 1],
    ['2026.10', '2026.9', 1],
    ['2027.1', '2026.12', 1],
    ['2026.1', '2026.1', 0],
  ])('%s beside %s', (a, b, sign) => {
    expect(Math.sign(compareVersions(a, b))).toBe(sign);
    expect(Math.sign(compareVersions(b, a))).toBe(sign === 0 ? 0 : -sign);
  });

  test('are told step by step, the newest first', () => {
    const one = book('2026.1', rule({ value: value(2) }));
    const two = book('2026.2', rule({ value: value(3) }));
    const now = book('2026.10', rule({ value: value(4) }));
    expect(
      changesByVersion(now, [one, two]).map(({ from, to, changes }) => [from, to, changes.length]),
    ).toEqual([
      ['2026.2', '2026.10', 1],
      ['2026.1', '2026.2', 1],
    ]);
  });
});

describe('beside what was published', () => {
  const id = 'ceiling.board.limit';
  const published = data;
  const changed = (version: string, load: number): RulebookData => {
    const limit = data.rules[id] as Rule;
    if (limit.value.kind !== 'table') throw new Error('expected the limit to be a table');
    const rows = limit.value.rows.map((row, place) => (place === 0 ? [...row.slice(0, -1), load] : row));
    return {
      ...data,
      version,
      rules: { ...data.rules, [id]: { ...limit, value: { ...limit.value, rows } } },
    };
  };
  const doubledWithRow = (limit: RuleValue): RuleValue =>
    limit.kind === 'table'
      ? {
          ...limit,
          rows: [
            ...limit.rows.map((row) => row.map((cell, place) => (place === 2 ? 2 * Number(cell) : cell))),
            ['gypsum 5/8 in', 48, 1],
          ],
        }
      : limit;
  const told = (now: RulebookData, reasons: Reason[] = []) =>
    releaseProblems(
      now,
      {
        ...files,
        reasons: reasons.map(
          (entry, place) => ({ ...(files.rules[0] as never as object), id: String(place), entry }) as never,
        ),
      },
      [published],
    );

  test('the same rulebook is sound', () => expect(told(data)).toEqual([]));

  test('a changed value needs a version of its own', () => {
    expect(told(changed(data.version, 2.1))[0]?.check).toBe('published-version');
  });

  test('a limit that allows less passes under a new version', () =>
    expect(told(changed('2099.1', 2.1))).toEqual([]));

  test('a limit that allows more stops at its line until its reason stands in the rulebook', () => {
    const [problem, ...more] = told(changed('2099.1', 2.3));
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ check: 'safety-without-reason', file: 'rules/ceiling/board.yaml' });
    expect(problem?.line).toBeGreaterThan(1);
    expect(
      told(changed('2099.1', 2.3), [{ rule: id, version: '2099.1', reason: 'A later edition.' }]),
    ).toEqual([]);
    // A reason given for an earlier version does not stand for this one.
    expect(told(changed('2099.1', 2.3), [{ rule: id, version: '2098.1', reason: 'x' }])).toHaveLength(1);
  });

  test.each<[what: string, change: (limit: Rule) => Rule, found: string]>([
    [
      'twice the load and a row more',
      (limit) => ({ ...limit, value: doubledWithRow(limit.value) }),
      'a looser safety value',
    ],
    ['no safety', ({ safety: _, ...limit }) => limit, 'another safety (none)'],
  ])('%s stops at its line until its reason stands', (_, change, found) => {
    const now = {
      ...data,
      version: '2099.1',
      rules: { ...data.rules, [id]: change(data.rules[id] as Rule) },
    };
    expect(told(now)).toMatchObject([
      {
        file: 'rules/ceiling/board.yaml',
        found: `${found} than in ${data.version}`,
        expected: 'a reason for 2099.1 in reasons.yaml',
        check: 'safety-without-reason',
      },
    ]);
    expect(told(now, [{ rule: id, version: '2099.1', reason: 'A later edition.' }])).toEqual([]);
  });

  test('a rule that is gone stops: ids are for ever', () => {
    const { [id]: _, ...rest } = data.rules;
    expect(told({ ...data, version: '2099.1', rules: rest })[0]?.check).toBe('permanent-id');
  });
});

describe('a recall names a version that somebody can have', () => {
  /** A folder at 2026.3, with 2026.1 and 2026.2 published, that recalls a version. */
  const told = (recalled: string) =>
    problemsOf({
      'rulebook.yaml': `version: "2026.3"\nrecall: [{ version: "${recalled}", reason: A load is wrong. }]\n`,
      'a/b.yaml': ruleText('width'),
      'releases/2026.1.json': rulebookJson(book('2026.1')),
      'releases/2026.2.json': rulebookJson(book('2026.2')),
    }).map(formatProblem);

  test.each(['2026.1', '2026.2', '2026.3'])('%s was published, or is the one at hand', (version) =>
    expect(told(version)).toEqual([]),
  );

  test.each([
    ['one before the first', '2025.7'],
    ['one between, which was left out', '2026.0'],
    ['one whose name begins alike', '2026.10'],
    ['one that is still to come', '2026.4'],
  ])('%s stops at its line', (_, version) =>
    expect(told(version)).toEqual([
      `rulebook.yaml:2:21  found a recall of ${version}, which was never published  expected one that was (2026.1, 2026.2, 2026.3), or no recall  (recalled-version)`,
    ]),
  );
});
