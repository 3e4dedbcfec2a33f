import { describe, expect, test } from 'vitest';
import { localPageProblems } from '../../../src/remark/local-page.ts';
import { siteAddresses } from '../../../src/remark/site-addresses.ts';
import { bareNumberProblems } from '../../../src/rulebook/local/bare-numbers.ts';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { resolveLocal } from '../../../src/rulebook/local/resolve.ts';
import { formatProblem } from '../../../src/rulebook/problem.ts';
import { base, context, inLayer, resolved } from './folder.ts';

const FLUE = 'clearance.flue.to-combustibles';
const HEAT = 'safety.heat.high-from';
const sources =
  'notice:\n  kind: regulation\n  document: Notice 12\n  title: Flues\n  edition: "2026"\n  publisher: The office\n  standing: Binding.\n';
const OF_NOTICE = '{ kind: document, document: notice, clause: paragraph 2, read: read }';
const told = (files: Record<string, string>) =>
  resolved({ 'sources.yaml': sources, ...files }).problems.map(formatProblem);
const note = (says: string, on: string, source?: string): Record<string, string> => ({
  'notes.yaml': `ours:\n  title: Ask first\n  says: ${says}\n  on: [${on}]\n${source ? `  source: ${source}\n` : ''}`,
});
const caution = (says: string, on: string, source: string): Record<string, string> => ({
  'cautions.yaml': `ours:\n  level: warn\n  says: Mind it.\n  do: ${says}\n  on: [${on}]\n  source: ${source}\n`,
});

describe('a note or a caution of an agency states no number with a unit', () => {
  const LOOSE =
    'from no document  expected a value set in values.yaml, or the document that says it as the source of this entry  (bare-quantity)';
  const GUARDED = `where ${FLUE} is a value for safety  expected that value set in values.yaml, where it may be stricter; pages then show it  (bare-quantity)`;
  test.each<[what: string, files: Record<string, string>, problem: string]>([
    ['without a source', note('Allow 10 days.', 'do/patching'), `notes.yaml:3:9  found "10 days" ${LOOSE}`],
    [
      'of practice',
      note('Cut a six inch hole.', 'do/patching', '{ kind: practice }'),
      `notes.yaml:3:9  found "six inch" ${LOOSE}`,
    ],
    [
      'in a caution that rests on memory',
      caution('Stay 6 ft off.', 'do/patching', '{ kind: memory }'),
      `cautions.yaml:4:7  found "6 ft" ${LOOSE}`,
    ],
    [
      'a temperature in degrees',
      note('Work goes on at 100 degrees.', HEAT, OF_NOTICE),
      `notes.yaml:3:9  found "100 degrees", ${GUARDED.replace(FLUE, HEAT)}`,
    ],
    [
      'on a caution that rests on one',
      caution('Fill may lie 1 in off.', 'caution.flue.keep-clear', OF_NOTICE),
      `cautions.yaml:4:7  found "1 in", ${GUARDED}`,
    ],
    [
      'on a caution that rests on one and does not show it',
      caution('Lap it 2 in.', 'caution.patch.weather', OF_NOTICE),
      `cautions.yaml:4:7  found "2 in", ${GUARDED.replace(FLUE, 'patch.layers.overlap')}`,
    ],
  ])('%s', (_, files, problem) => expect(told(files)).toEqual([problem]));

  test.each<[how: string, amount: string, found?: string]>([
    ['of its kind', '1 in'],
    ['in another unit', '25 mm'],
    ['in words', 'two inches'],
    ['as a part of a unit in words', 'half an inch'],
    ['without a nought before its point', '.5 in'],
    ['with marks of emphasis', '1 **in**', '1 **in'],
    ['in a unit that the rulebook does not use', '20 mil'],
  ])('on a value for safety, %s, whatever says it', (_, amount, found = amount) =>
    expect(told(note(`Fill may lie ${amount} from it.`, FLUE, OF_NOTICE))).toEqual([
      `notes.yaml:3:9  found "${found}", ${GUARDED}`,
    ]),
  );

  test.each<[what: string, files: Record<string, string>]>([
    ['one from the document that is its source', note('Allow 10 days.', 'do/patching', OF_NOTICE)],
    ['a caution’s, from a document', caution('Stay 6 ft off.', 'do/patching', OF_NOTICE)],
    ['one of another kind, on a value for safety', note('Allow 10 days.', FLUE, OF_NOTICE)],
    ['a number without a unit', note('Ring 555 twice, at house 12.', 'do/patching')],
  ])('but may state %s', (_, files) => expect(told(files)).toEqual([]));
});

test('nor on a caution that only shows one in its words', () => {
  const { rules: _, ...shows } = base.cautions['caution.flue.keep-clear'] ?? { says: '', do: '' };
  expect(shows.do).toContain(`{${FLUE}}`);
  const cautions = { ...base.cautions, 'caution.flue.keep-clear': shows } as typeof base.cautions;
  const found = inLayer(caution('Fill may lie 1 in off.', 'caution.flue.keep-clear', OF_NOTICE), (folder) =>
    bareNumberProblems({ rules: base.rules, cautions }, readLayer(folder)),
  );
  expect(found.map((each) => each.found)).toEqual([`"1 in", where ${FLUE} is a value for safety`]);
});

describe('a page of an agency states no number with a unit', () => {
  const onPage = (words: string, title = 'Ours'): string[] =>
    inLayer({ 'pages/ours.mdx': `---\ntitle: ${title}\nsummary: y\n---\n\n${words}\n` }, (folder) => {
      const { data, local } = resolveLocal(base, [readLayer(folder)], context);
      return local.pages
        .flatMap((page) => localPageProblems(page, data, siteAddresses(data, local)))
        .map(({ line, column, found, check }) => `${line}:${column} ${found} (${check})`);
    });
  test.each([
    ['in a sentence', 'Keep 4 in from it.', '6:6 "4 in" (bare-quantity)'],
    ['in a step', '1. Wait.\n2. Wait two hours.', '7:9 "two hours" (bare-quantity)'],
    ['in a link', 'See [the 4 in rule](/do/patching/).', '6:10 "4 in" (bare-quantity)'],
    ['an R', 'Fill to R-19.', '6:9 "R-19" (bare-quantity)'],
  ])('%s', (_, words, problem) => expect(onPage(words)).toEqual([problem]));

  test('nor at its head', () =>
    expect(onPage('Words.', 'The 4 in rule')).toEqual(['2:12 "4 in" (bare-quantity)']));

  test('but shows values, and numbers without a unit', () =>
    expect(onPage(`Keep <Rule id="${FLUE}" /> from it. Ring 555, house 12.`)).toEqual([]));
});
