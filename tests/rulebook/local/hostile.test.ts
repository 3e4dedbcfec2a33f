import { readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { localPageProblems } from '../../../src/remark/local-page.ts';
import { siteAddresses } from '../../../src/remark/site-addresses.ts';
import { valueChange } from '../../../src/rulebook/changes/judge.ts';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { resolveLocal } from '../../../src/rulebook/local/resolve.ts';
import { formatProblem, type Problem } from '../../../src/rulebook/problem.ts';
import { base, context, EXAMPLE, inLayer } from './folder.ts';

const example = Object.fromEntries(
  readdirSync(EXAMPLE, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(yaml|mdx)$/.test(name))
    .map((name) => [name, readFileSync(join(EXAMPLE, name), 'utf8')]),
);
const MOST_TIME = 5_000;

/** What is wrong with a folder; each as a line that says where, found and expected. What passes has let nothing looser through. */
function judge(folder: string): readonly Problem[] {
  const started = performance.now();
  const { data, local, problems } = resolveLocal(base, [readLayer(folder)], context);
  const all = [
    ...problems,
    ...(problems.length > 0
      ? []
      : local.pages.flatMap((page) => localPageProblems(page, data, siteAddresses(data, local)))),
  ];
  expect(performance.now() - started).toBeLessThan(MOST_TIME);
  for (const problem of all) {
    expect(formatProblem(problem)).toMatch(/:\d+:\d+ {2}found \S.* {2}expected \S.* {2}\([a-z-]+\)$/s);
    expect(formatProblem(problem).length).toBeLessThan(2000);
  }
  if (all.length === 0)
    for (const { id, value, safety } of Object.values(base.rules)) {
      const after = data.rules[id]?.value;
      expect(after, id).toBeDefined();
      if (safety && after) expect(valueChange(value, after, safety), id).not.toBe('looser');
    }
  return all;
}

/** Texts that were never meant. */
const odd = fc.oneof(
  fc.constantFrom(
    'null',
    '[]',
    '{}',
    '-1',
    '.nan',
    '.inf',
    '1e999',
    '2026-02-30',
    '"\\u202e"',
    '"\\0"',
    '../../../etc/passwd',
    '<script>alert(1)</script>',
    '*a',
    '&a [*a]',
    '!!js/function "x"',
    '__proto__',
    'constructor',
    '{ kind: at-least, number: 0.5, unit: in }',
    '{ kind: exact, number: 0, unit: in }',
    '{ kind: document, document: ../x, clause: y, read: read }',
    '"{process.env}"',
    "'",
    '"',
    '- - - -',
    '{{{{',
    '?',
    'true',
    '0x10',
    '~',
  ),
  fc.string({ maxLength: 30 }),
  fc.string({ unit: 'grapheme', maxLength: 30 }),
);

type Files = Record<string, string>;
const mutation: fc.Arbitrary<(files: Files) => Files> = fc
  .record({
    at: fc.nat(),
    name: fc.constantFrom(...Object.keys(example)),
    how: fc.nat(5),
    text: odd,
    length: fc.nat(40),
  })
  .map(({ at, name, how, text, length }) => (files) => {
    const lines = (files[name] ?? '').split('\n');
    const line = at % lines.length;
    const old = lines[line] ?? '';
    const colon = old.indexOf(':');
    const changed = [
      () => lines.toSpliced(line, 1),
      () => lines.toSpliced(line, 1, colon > 0 ? `${old.slice(0, colon)}: ${text}` : text),
      () => lines.toSpliced(line, 1, colon > 0 ? `${text}${old.slice(colon)}` : text),
      () => lines.toSpliced(line, 0, text),
      () => lines.toSpliced(line, 1, old, old),
      () => [lines.join('\n').slice(0, at % 400), text, lines.join('\n').slice((at % 400) + length)],
    ][how] as () => string[];
    return { ...files, [name]: changed().join('\n') };
  });

describe('a folder that somebody spoilt', () => {
  test('two hundred of them end in clear words or in a sound rulebook', () => {
    let refused = 0;
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 3 }), (mutations) => {
        const files = mutations.reduce<Files>((each, mutate) => mutate(each), { ...example });
        if (inLayer(files, judge).length > 0) refused += 1;
      }),
      { numRuns: 200 },
    );
    expect(refused).toBeGreaterThan(50);
  }, 120_000);

  const bomb = [
    'a: &a [x, x, x, x, x, x, x, x, x]',
    ...[...'bcdefgh'].map(
      (name, place) => `${name}: &${name} [${Array(9).fill(`*${'abcdefgh'[place]}`).join(', ')}]`,
    ),
  ].join('\n');
  test.each<[what: string, files: Record<string, string | Uint8Array>]>([
    ['aliases that unfold without end', { 'notes.yaml': bomb }],
    ['an alias of itself', { 'notes.yaml': 'a: &a\n  title: x\n  on: *a\n' }],
    ['lists in lists', { 'notes.yaml': `x: ${'['.repeat(90_000)}` }],
    ['a file too large', { 'notes.yaml': 'x'.repeat(300_000) }],
    ['bytes that are no text', { 'notes.yaml': new Uint8Array([0xff, 0xfe, 0x00]) }],
    ['a page that names a way out', { 'pages/..mdx': 'x' }],
    ['a page in capitals', { 'pages/X Y.mdx': 'x' }],
    ['a logo above the folder', { 'agency.yaml': `${example['agency.yaml']}logo: ../../etc/passwd\n` }],
    [
      'a logo that is no picture',
      { 'agency.yaml': `${example['agency.yaml']}logo: a.png\n`, 'a.png': '<svg onload="x">' },
    ],
    [
      'letters that turn the line about',
      { 'notes.yaml': `a:\n  title: "\u202ex"\n  says: y\n  on: [do/patching]\n` },
    ],
    [
      'an id that every object has',
      {
        'values.yaml':
          'constructor:\n  value: { kind: exact, number: 1, unit: in }\n  reason: x\n  source: { kind: practice }\n',
      },
    ],
  ])('%s', (_, files) => expect(inLayer(files, judge, EXAMPLE)).not.toEqual([]));

  test.each([
    ['a script', '<script>alert(1)</script>'],
    ['an element of the page', '<div>x</div>'],
    ['something in braces', 'x {process.env.HOME}'],
    ['an import', 'import x from "node:fs"'],
    ['an export', 'export const x = 1'],
    ['a link that runs', '[x](javascript:alert(1))'],
    ['a reference that runs', '[x][y]\n\n[y]: javascript:alert(1)'],
    ['a picture from elsewhere', '![x](https://example.org/x.png)'],
    ['an attribute that runs', '<Rule id={process.exit()} />'],
    ['an unknown value', '<Rule id="clearance.flue.to-combustible" />'],
    ['an element without end', '<Rule'],
  ])('a page with %s', (_, text) => {
    const page = `---\ntitle: x\nsummary: y\n---\n\n${text}\n`;
    const problems = inLayer({ 'pages/bad.mdx': page }, judge, EXAMPLE);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.line).toBeGreaterThanOrEqual(6);
  });

  test('a link to a file elsewhere is not followed', () => {
    const problems = inLayer(
      {},
      (folder) => {
        symlinkSync('/etc/passwd', join(folder, 'pages', 'x.mdx'));
        symlinkSync('/dev/zero', join(folder, 'a.yaml'));
        return judge(folder);
      },
      EXAMPLE,
    );
    expect(problems.map(({ found }) => found)).toContain('a link to another place');
  });

  test('no folder at all', () => expect(judge('/no/such/folder')).toHaveLength(1));
});
