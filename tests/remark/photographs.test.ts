import { readdirSync } from 'node:fs';
import type { Nodes } from 'mdast';
import { toString as textOf } from 'mdast-util-to-string';
import { visit } from 'unist-util-visit';
import { describe, expect, test } from 'vitest';
import { treeOf } from '../../src/proofread/prose-in.ts';
import {
  ASKED,
  projectPage,
  projectPhotographs,
  readPhotographs,
  stepsIn,
} from '../../src/remark/photographs.ts';
import { DataError } from '../../src/rulebook/problem.ts';
import { book, pageOf } from './page.ts';

const page =
  '---\ntitle: Look\n---\n\n1. Look up. Look down.\n\n   Good: dry.\n\n2. Photograph the sky. Look up.\n';
const entry = (more: string) =>
  `a:\n  shows: the sky\n  when: before\n  why: To see.\n  source: { kind: practice }\n${more}`;
const pageNamed = (name: string) => (name === 'look' ? page : undefined);
const read = (text: string) => readPhotographs('p.yaml', text, pageNamed);
const problems = (text: string): string => {
  try {
    read(text);
    return '';
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    return error.message;
  }
};

describe('a list of photographs', () => {
  test('finds the step by its words, its number, and whether it says so itself', () => {
    expect(read(entry('  page: look\n  step: Look down\n'))).toEqual([
      {
        id: 'a',
        shows: 'the sky',
        when: 'before',
        why: 'To see.',
        source: { kind: 'practice' },
        page: 'look',
        title: 'Look',
        step: 1,
        said: false,
      },
    ]);
    expect(read(entry('  page: look\n  step: the sky\n'))).toMatchObject([{ step: 2, said: true }]);
    expect(read(entry('  page: look\n  step: "Good: dry"\n'))).toMatchObject([{ step: 1 }]);
  });

  test.each([
    ['a page that is none', '  page: lok\n  step: Look up\n', 'p.yaml:6:9  found "lok"'],
    [
      'words of no step',
      '  page: look\n  step: Look left\n',
      'p.yaml:7:9  found words that stand in no step',
    ],
    ['words of two steps', '  page: look\n  step: Look up\n', 'words that stand in 2 steps of "look"'],
    ['a key that is none', '  page: look\n  stop: Look down\n', '"stop"'],
  ])('%s stops it, with file and line', (_, more, says) => {
    expect(problems(entry(more))).toContain(says);
  });

  test('a number with a unit is no word of it', () => {
    expect(problems(entry('  page: look\n  step: Look down\n').replace('the sky', 'at 3 in'))).toContain(
      '"3 in"',
    );
  });
});

describe('the project’s own list', () => {
  const listed = projectPhotographs();

  test('counts steps as the anchors of the page do', () => {
    for (const name of new Set(listed.map((each) => each.page))) {
      const source = projectPage(name) ?? '';
      const steps: string[] = [];
      visit(treeOf(source), (node: Nodes) => {
        if (node.type === 'list' && node.ordered) steps.push(...node.children.map((each) => textOf(each)));
      });
      const plain = (text: string) => text.replaceAll(/\W/g, '').slice(0, 12);
      expect(steps.length, name).toBe(stepsIn(source).length);
      expect(stepsIn(source).map((each) => plain(each.replaceAll(/\]\([^)]*\)|<[^>]*>/g, '')))).toEqual(
        steps.map(plain),
      );
    }
  });

  test('has an entry for each step that asks for a photograph', () => {
    /** These look at photographs; none is taken. */
    const looksAt = [
      'checking-the-work 3',
      'choosing-the-way-in 10',
      'closing-the-edge-and-the-gable 9',
      'paperwork-and-handing-over 5',
    ];
    const asked = readdirSync('content/en/do')
      .map((file) => file.replace(/\.mdx$/, ''))
      .flatMap((name) =>
        stepsIn(projectPage(name) ?? '').flatMap((step, place) =>
          ASKED.test(step) ? [`${name} ${place + 1}`] : [],
        ),
      );
    const given = listed.map((each) => `${each.page} ${each.step}`);
    expect(asked.filter((each) => !given.includes(each)).sort()).toEqual(looksAt);
  });

  test('goes in the order of the work: before, during, after', () => {
    const order = ['before', 'during', 'after'];
    const times = listed.map(({ when }) => order.indexOf(when));
    expect(times).toEqual([...times].sort());
  });
});

test('a step that does not ask for its photograph is given a line; one that does is left alone', async () => {
  const page = Array.from({ length: 12 }, (_, place) => `${place + 1}. Do it.\n`).join('\n');
  const { html } = await pageOf(page, book, 'content/en/do/first-visit.mdx');
  expect(html.replaceAll(/<[^>]+>/g, '').match(/Photograph: [^\n]*?\./g)).toEqual([
    'Photograph: the data plate, close enough to read.',
  ]);
  expect(html).toMatch(/id="step-2"[\s\S]*<p class="photograph">[\s\S]*id="step-3"/);
  expect((await pageOf(page, book, 'content/en/do/a-page.mdx')).html).not.toContain('Photograph:');
});
