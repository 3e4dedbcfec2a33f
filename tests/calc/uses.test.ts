import { describe, expect, test } from 'vitest';
import { calculations } from '../../src/calc/calculations.ts';
import { answer } from '../../src/calc/declare/calculation.ts';
import { askedByCalculations, usesOf } from '../../src/calc/uses.ts';
import { openRulebook, type Rule, type RulebookData } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const { data, files, references } = theProject();
const checks = files.checks.map(({ entry }) => entry);
const asked = askedByCalculations(data, checks);

/** Rules whose words are the choices of a field: they are read as the code is generated, and not while it works. */
const choicesOnly: readonly string[] = ['ceiling.board.kinds'];

/** What a calculation asks for at its example and its checks alone. */
function askedByEntriesOf(name: string): ReadonlySet<string> {
  const found = new Set<string>();
  const rules = openRulebook(data, (id) => found.add(id));
  const declared = calculations.find((each) => each.name === name);
  if (!declared) throw new Error(`found no calculation "${name}"`);
  answer(declared, declared.example, rules);
  for (const { calculation, given } of checks) if (calculation === name) answer(declared, given, rules);
  return found;
}

/** Invented: one rule that others name in each of the ways there are, and neighbours that do not. */
const rule = (id: string, more: Partial<Rule>): Rule => ({
  id,
  title: `Title of ${id}`,
  says: 'Something.',
  value: { kind: 'exact', number: 1, unit: 'in' },
  source: { kind: 'practice' },
  applies_to: 'Nothing.',
  file: 'a.yaml',
  line: 1,
  ...more,
});
const caution = (id: string, more: object) =>
  ({ id, level: 'note', says: 'Mind.', do: 'Look.', file: 'c.yaml', line: 1, ...more }) as const;

const formula = (of: string) => ({ add: [{ rule: of }, 1] }) as never;
const invented = {
  version: '2026.1',
  documents: {},
  rules: {
    'a.b': rule('a.b', {}),
    'd.from': rule('d.from', { source: { kind: 'derived', from: ['a.b'], working: 'As it is.' } as never }),
    'd.formula': rule('d.formula', { value: { kind: 'exact', unit: 'in', formula: formula('a.b') } }),
    'd.other': rule('d.other', {
      source: { kind: 'derived', from: ['a.c'], working: 'Of another.' } as never,
      value: { kind: 'exact', unit: 'in', formula: formula('a.c') },
    }),
    'e.most': rule('e.most', { value: { kind: 'at-most', number: 3, unit: 'in' } }),
  },
  cautions: {
    'caution.says': caution('caution.says', { says: 'Keep {a.b} and {a.c low} off.' }),
    'caution.does': caution('caution.does', { do: 'Measure {a.b}.' }),
    'caution.rests': caution('caution.rests', { rules: ['a.b'] }),
    'caution.other': caution('caution.other', { says: 'Keep {a.c} off.', rules: ['a.c'] }),
  },
} as unknown as RulebookData;

const nobody = new Map<string, ReadonlySet<string>>();
const filesOf = (...files: string[]) => new Map([['a.b', files]]);
const kinds = (...files: string[]) =>
  usesOf('a.b', { ...invented, rules: {}, cautions: {} }, filesOf(...files), nobody);

describe('where a rule is used', () => {
  test('rules by their source or their formula, cautions by their words or their list', () => {
    expect(usesOf('a.b', invented, new Map(), nobody)).toEqual([
      { kind: 'rule', id: 'd.from', title: 'Title of d.from' },
      { kind: 'rule', id: 'd.formula', title: 'Title of d.formula' },
      { kind: 'caution', id: 'caution.says', says: 'Keep … and … off.' },
      { kind: 'caution', id: 'caution.does', says: 'Mind.' },
      { kind: 'caution', id: 'caution.rests', says: 'Mind.' },
    ]);
  });

  test.each<[files: string[], uses: unknown[]]>([
    [[], []],
    [['src/job/work.ts'], [{ kind: 'planner' }]],
    [['src/calc/fill/bags.ts'], [{ kind: 'planner' }]],
    [['src/calc/fill/bags.ts', 'src/job/work.ts'], [{ kind: 'planner' }]],
    [['src/drawings/patch.ts', 'content/en/terms.yaml'], [{ kind: 'drawings' }]],
    [['src/components/kinds.ts'], []],
    [['content/en/do/patch.mdx'], [{ kind: 'page', path: 'do/patch' }]],
    [
      ['content/en/do/patch.mdx', 'content/en/terms.yaml', 'src/pages/odd.mdx', 'content/en/know/foam.mdx'],
      [
        { kind: 'page', path: 'do/patch' },
        { kind: 'page', path: 'know/foam' },
      ],
    ],
  ])('files: %j', (files, uses) => expect(kinds(...files)).toEqual(uses));

  test('calculations by what they ask', () => {
    const asked = new Map([
      ['fill', new Set(['a.b', 'a.c'])],
      ['ceiling-load', new Set(['a.c'])],
    ]);
    const fill = calculations.find(({ name }) => name === 'fill');
    expect(usesOf('a.b', { ...invented, rules: {}, cautions: {} }, new Map(), asked)).toEqual([
      { kind: 'calculator', name: 'fill', title: fill?.title },
    ]);
  });

  test('what a calculation asks is watched while it works', () => {
    expect([...asked.keys()]).toEqual(calculations.map(({ name }) => name));
    // The ceiling's limit decides its verdict; it is nothing to the fill, whose own spread of bags is.
    expect(asked.get('ceiling-load')?.has('ceiling.board.limit')).toBe(true);
    expect(asked.get('fill')?.has('ceiling.board.limit')).toBe(false);
    expect(asked.get('fill')?.has('fill.bag.near-enough')).toBe(true);
  });

  // The examples have a gypsum board and propane, and a roof of no hot flue: what else is read, another choice opens.
  test.each<[calculation: string, rule: string]>([
    ['savings', 'energy.heat-content.heating-oil'],
    // A board of wood fibre, and its thickness beside it.
    ['roof-heat', 'thermal.board.wood-fibre-r'],
    // Something on the roof, which is a flue, which is a chimney.
    ['ways-in', 'clearance.flue.masonry-chimney'],
  ])('%s asks for %s, which its example and its checks do not', (name, rule) => {
    expect(asked.get(name)?.has(rule)).toBe(true);
    expect(askedByEntriesOf(name).has(rule)).toBe(false);
  });

  test('each rule that the code of the calculations asks for, one of them is found to ask for', () => {
    const code = [...references].filter(([, where]) => where.some((file) => file.startsWith('src/calc/')));
    const rules = code.map(([id]) => id).filter((id) => id in data.rules && !choicesOnly.includes(id));
    expect(rules.length).toBeGreaterThan(50);
    expect(rules.filter((id) => ![...asked.values()].some((ids) => ids.has(id)))).toEqual([]);
  });
});
