import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import {
  calculationRulesModule,
  ruleChoicesModule,
  ruleNotesModule,
  ruleTypesModule,
  sentRules,
} from '../../src/rulebook/generate.ts';
import { generatedFiles } from '../../src/rulebook/generated-files.ts';
import type { Rule, RulebookData } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const { data, references } = theProject();

const rule = (id: string, title: string, choice: string): Rule => ({
  id,
  title,
  says: 'It is so.',
  value: { kind: 'one-of', choices: [choice] },
  source: { kind: 'practice' },
  applies_to: 'Every home.',
  file: 'rules/a.yaml',
  line: 1,
});

const bookOf = (rules: readonly Rule[]): RulebookData => ({
  version: '2026.1',
  rules: Object.fromEntries(rules.map((each) => [each.id, each])),
  documents: {},
  cautions: {
    'caution.a.b': {
      id: 'caution.a.b',
      level: 'note',
      says: 'So.',
      do: 'Do.',
      source: { kind: 'practice' },
      file: 'x',
      line: 1,
    },
  },
});

/** The names of the members of the first interface of a module, as the compiler of TypeScript reads them. */
function membersOf(text: string): string[] {
  const file = ts.createSourceFile('module.ts', text, ts.ScriptTarget.Latest, true);
  const found = file.statements.find(ts.isInterfaceDeclaration);
  return (found?.members ?? []).map(({ name }) => (name && ts.isStringLiteral(name) ? name.text : 'no name'));
}

/** The words that a module of choices exports, list after list. */
function wordsOf(text: string): string[] {
  const words: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isArrayLiteralExpression(node))
      words.push(...node.elements.map((each) => (ts.isStringLiteral(each) ? each.text : 'no word')));
    ts.forEachChild(node, look);
  };
  look(ts.createSourceFile('module.ts', text, ts.ScriptTarget.Latest, true));
  return words;
}

const syntaxMistakes = (text: string): number =>
  ts.transpileModule(text, { reportDiagnostics: true }).diagnostics?.length ?? 0;

/** What the module of rules for calculations exports; it is a value written out as JSON. */
function exported(text: string): {
  readonly rules: Record<string, unknown>;
  readonly cautions: Record<string, unknown>;
} {
  return JSON.parse(text.slice(text.indexOf(' = {') + 3).replace(/;\s*$/, ''));
}

describe('the generated modules are made from the rulebook as it stands', () => {
  test.each(generatedFiles(data, references))('%s is fresh', (file, text) => {
    expect(readFileSync(file, 'utf8')).toBe(text);
  });

  test('every rule of the rulebook has a type of its own', () => {
    expect(membersOf(ruleTypesModule(data))).toEqual(Object.keys(data.rules));
  });

  test('every caution of the rulebook is named in the type of cautions', () => {
    const text = ruleTypesModule(data);
    for (const id of Object.keys(data.cautions)) expect(text).toContain(`| ${JSON.stringify(id)}`);
  });

  test('the words of every choice are there in the order of the rulebook, and of nothing else', () => {
    expect(wordsOf(ruleChoicesModule(data))).toEqual(
      Object.values(data.rules).flatMap(({ value }) => (value.kind === 'one-of' ? value.choices : [])),
    );
  });

  test('what code in the browser asks for is sent to it, with every caution', () => {
    const text =
      generatedFiles(data, references).find(([file]) => file.includes('calculation-rules'))?.[1] ?? '';
    const sent = exported(text);
    const asked = Object.keys(data.rules).filter((id) =>
      (references.get(id) ?? []).some((file) => /^src\/(calc|job|drawings|islands)\//.test(file)),
    );
    expect(Object.keys(sent.rules)).toEqual(expect.arrayContaining(asked));
    expect(Object.keys(sent.cautions)).toEqual(Object.keys(data.cautions));
  });

  test('a rule that only a caution speaks of is sent with it, any other is not', () => {
    const rules = [rule('a.said', 'Said', 'x'), rule('a.asked', 'Asked', 'x'), rule('a.else', 'Else', 'x')];
    const book = bookOf(rules);
    const said = {
      ...book,
      cautions: { 'caution.a.b': { ...book.cautions['caution.a.b'], says: 'Not {a.said}.' } },
    };
    const text = calculationRulesModule(said as RulebookData, (id) =>
      ['a.asked', 'caution.a.b'].includes(id),
    );
    expect(Object.keys(exported(text).rules)).toEqual(['a.said', 'a.asked']);
    const without = calculationRulesModule(said as RulebookData, (id) => id === 'a.asked');
    expect(exported(without)).toMatchObject({ rules: { 'a.asked': {} }, cautions: {} });
    expect(Object.keys(exported(without).rules)).toEqual(['a.asked']);
  });
});

test('a sheet on paper has a note, with value and source, for every rule that a page of a job is sent, in a caution too', () => {
  const asked = (id: string) => id === 'caution.patch.cold' || id === 'patch.layers.overlap';
  const notes = JSON.parse(/= (\{.*\});/.exec(ruleNotesModule(data, asked))?.[1] ?? '') as Record<
    string,
    string[]
  >;
  expect(Object.keys(notes).sort()).toEqual(['patch.layers.overlap', 'patch.sealant.coldest-surface']);
  expect(Object.keys(notes).sort()).toEqual(Object.keys(sentRules(data, asked).rules).sort());
  for (const words of Object.values(notes)) expect(words).not.toContain('');
});

describe('the generated modules hold whatever is written in the rules', () => {
  test('two ids never come to one name', () => {
    const part = fc.stringMatching(/^[a-z0-9-]{1,4}$/);
    const ids = fc.uniqueArray(
      fc.array(part, { minLength: 2, maxLength: 4 }).map((parts) => parts.join('.')),
    );
    fc.assert(
      fc.property(ids, (all) => {
        const names = membersOf(ruleTypesModule(bookOf(all.map((id) => rule(id, 'A thing', 'x')))));
        return names.length === all.length && new Set(names).size === all.length;
      }),
    );
  });

  const hostile = [
    "it's",
    'a "quoted" word',
    'back\\slash',
    'ends in \\',
    '*/ export const x = 1; /*',
    'two\nlines',
    'a `tick`',
  ];
  test.each(hostile)('%j, as a title, a choice and an id, leaves a module that can be read', (words) => {
    const text = ruleTypesModule(bookOf([rule(`a.${words}`, words, words)]));
    expect(syntaxMistakes(text)).toBe(0);
    expect(membersOf(text)).toEqual([`a.${words}`]);
    expect(syntaxMistakes(calculationRulesModule(bookOf([rule('a.b', words, words)]), () => true))).toBe(0);
    const choices = ruleChoicesModule(bookOf([rule(`a.${words}`, words, words)]));
    expect(syntaxMistakes(choices)).toBe(0);
    expect(wordsOf(choices)).toEqual([words]);
  });
});
