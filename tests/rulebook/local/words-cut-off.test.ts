import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { localPageProblems } from '../../../src/remark/local-page.ts';
import { siteAddresses } from '../../../src/remark/site-addresses.ts';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { resolveLocal } from '../../../src/rulebook/local/resolve.ts';
import { agencySchema } from '../../../src/rulebook/local/schema.ts';
import { newFolder } from '../../../src/rulebook/local/template.ts';
import { formatProblem } from '../../../src/rulebook/problem.ts';
import { base, context, EXAMPLE, inLayer, resolved } from './folder.ts';

const fog = (act: string): string =>
  `fog:\n  level: warn\n  says: Fog leaves a roof wet.\n${act}  on: [caution.roof.falls]\n  source: { kind: practice }\n`;
const told = (act: string): string[] => resolved({ 'cautions.yaml': fog(act) }).problems.map(formatProblem);
const ASKED = 'double quotes about all of the words; a remark of your own on a line by itself';

describe('a mark # among words without quotes is told, where it would leave out the rest', () => {
  test.each([
    ['within a line', '  do: Stay off roof #2 until it is dry.\n', '4:21', '#2 until it is dry.'],
    ['before all of the words', '  do: #2 is slippery.\n', '4:7', '#2 is slippery.'],
    [
      'at the head of the line that goes on',
      '  do: Stay off roof\n    #2 until noon.\n',
      '5:5',
      '#2 until noon.',
    ],
    ['in the line that goes on', '  do: Stay off,\n    roof #2 too.\n', '5:10', '#2 too.'],
    ['as a remark behind the words', '  do: Stay off. # ask Dee\n', '4:17', '# ask Dee'],
  ])('%s', (_, act, place, cut) =>
    expect(told(act)).toEqual([
      `cautions.yaml:${place}  found the mark # among words without quotes: "${cut}" would be left out  expected ${ASKED}  (local-words)`,
    ]),
  );

  test('within braces, and nothing that only follows from it', () => {
    const values =
      'clearance.flue.to-combustibles:\n  value: { kind: at-least, number: 3, unit: in }\n  reason: So.\n  source: { kind: document, document: irc, clause: table #2, read: read }\n';
    expect(resolved({ 'values.yaml': values }).problems.map(formatProblem)).toEqual([
      `values.yaml:4:58  found the mark # among words without quotes: "#2, read: read }" would be left out  expected ${ASKED}  (local-words)`,
    ]);
  });

  test('in the head of a page', () =>
    inLayer(
      { 'pages/ours.mdx': '---\ntitle: Roof #2\nsummary: y\n---\n\nWords.\n' },
      (folder) => {
        const { data, local } = resolveLocal(base, [readLayer(folder)], context);
        const problems = local.pages.flatMap((page) =>
          localPageProblems(page, data, siteAddresses(data, local)),
        );
        expect(problems.map(({ line, column, check }) => [line, column, check])).toContainEqual([
          2,
          13,
          'local-words',
        ]);
      },
      EXAMPLE,
    ));
});

describe('a mark # that leaves nothing out is no mistake', () => {
  test.each([
    ['within double quotes', '  do: "Stay off roof #2."\n'],
    ['within single quotes', "  do: 'Stay off roof #2.'\n"],
    ['in a word', '  do: Stay off roof#2.\n'],
    ['in words below a sign of YAML', '  do: >\n    Stay off\n    roof #2.\n'],
    ['a remark on a line by itself, before and after', '  # what to do\n  do: Stay off.\n  # more to come\n'],
    ['a remark behind quotes', '  do: "Stay off." # ask Dee\n'],
  ])('%s', (_, act) => expect(told(act)).toEqual([]));

  test('a remark behind a name, brackets or braces', () =>
    expect(
      resolved({
        'notes.yaml':
          'permit: # ours\n  title: T\n  says: S\n  on: [do/patching] # one page\n  source: { kind: practice } # ours\n',
      }).problems,
    ).toEqual([]));

  test('the example, and a new folder as it is written', () => {
    expect(readLayer(EXAMPLE).problems).toEqual([]);
    const agency = agencySchema.parse({
      ...{ id: 'a', name: 'Homes #1', short: 'Homes', contact: 'Desk #2', area: 'x', answers: 'y' },
      ...{ version: '2026-10-01', based_on: base.version },
    });
    const files = newFolder(agency, readFileSync('src/rulebook/local/schema.ts', 'utf8'));
    inLayer(files, (folder) => {
      const { agency: read, problems } = readLayer(folder);
      expect(problems).toEqual([]);
      expect(read?.entry).toMatchObject({ name: 'Homes #1', contact: 'Desk #2' });
    });
  });
});
