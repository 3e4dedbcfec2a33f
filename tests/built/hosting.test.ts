import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { headersFor } from '../../src/built/hosting/headers.ts';
import { policyForHeader, policyForPage } from '../../src/built/hosting/policy.ts';
import { filledRecipe } from '../../src/built/hosting/recipe.ts';

const SUM = 'sha256-c3VtIG9mIGEgc3R5bGU=';
const headers = headersFor(SUM);
const inHeader = policyForHeader(SUM);
const recipe = (name: string): string => filledRecipe(readFileSync(`content/hosting/${name}`, 'utf8'), SUM);

describe('the policy', () => {
  test('lets nothing run that stands in a page, and no text be run as script', () => {
    expect(inHeader).not.toContain("'unsafe-inline'");
    expect(inHeader).not.toContain("'unsafe-eval'");
    expect(inHeader).not.toMatch(/\*|https?:|data:/);
    // Pictures that the page itself holds, and nothing else, come from no address.
    expect(inHeader.split('; ').filter((each) => each.includes('blob:'))).toEqual(["img-src 'self' blob:"]);
  });

  test.each([
    "default-src 'none'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
    "worker-src 'self'",
    "manifest-src 'self'",
  ])('says %s', (directive) => expect(inHeader.split('; ')).toContain(directive));

  test.each([
    ['where a style stands in the page, that one by its sum', SUM, `style-src 'self' '${SUM}'`],
    ['where none does, files alone', undefined, "style-src 'self'"],
  ])('allows of styles, %s', (_, sum, expected) =>
    expect(policyForPage(sum).split('; ')).toContain(expected),
  );

  test('is on the page what it is in the header, but for what a page can’t say', () => {
    const [header, page] = [inHeader, policyForPage(SUM)].map((each) => each.split('; '));
    expect(header?.filter((each) => !page?.includes(each))).toEqual(["frame-ancestors 'none'"]);
    expect(page?.filter((each) => !header?.includes(each))).toEqual([]);
  });
});

describe('a recipe', () => {
  test('takes what is several lines at the indent of its line', () => {
    const lines = filledRecipe('a {\n    {{headers}}\n}', SUM).split('\n');
    expect(lines).toHaveLength(headers.length + 2);
    for (const line of lines.slice(1, -1)) expect(line).toMatch(/^ {4}add_header [\w-]+ ".*" always;$/);
  });

  test('stops at a name that there is not', () =>
    expect(() => filledRecipe('x {{hedaers}}', SUM)).toThrow('found {{hedaers}}, expected one of headers,'));

  test.each(['nginx.conf', 'object-store.sh', 'forge.yaml'])('%s has nothing left to be filled in', (name) =>
    expect(recipe(name)).not.toMatch(/\{\{|\}\}/),
  );

  test('no value holds what would end it', () => {
    for (const [, value] of headers) expect(value).not.toMatch(/["\\$\n]/);
  });

  test('the one for an object store is a script that a shell can read', () => {
    expect(() => execFileSync('sh', ['-n'], { input: recipe('object-store.sh') })).not.toThrow();
  });

  test('the one for a forge runs commands that the project has', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
    const { steps } = parse(recipe('forge.yaml')).jobs.publish;
    const run = steps.flatMap((step: { run?: string }) => step.run ?? []) as string[];
    const named = run.flatMap((line) => /npm run (?:--silent )?([\w:]+)/.exec(line)?.[1] ?? []);
    expect(named).toEqual(['local:check', 'build', 'publish:zip']);
    for (const name of named) expect(Object.keys(scripts)).toContain(name);
  });
});
