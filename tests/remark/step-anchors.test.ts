import { expect, test } from 'vitest';
import { book, pageOf } from './page.ts';

const ids = async (page: string): Promise<string[]> =>
  [...(await pageOf(page, book)).html.matchAll(/<li id="([^"]+)" data-record="(?:step|cause)">/g)].map(
    ([, id = '']) => id,
  );

test.each([
  ['each step of a page', '1. One.\n\n   Good: so.\n\n2. Two.\n', ['step-1', 'step-2']],
  ['steps that go on below a heading', '1. One.\n\n## Then\n\n2. Two.\n', ['step-1', 'step-2']],
  [
    'steps that begin anew, which must not share an id',
    '1. One.\n\n## Then\n\n1. Two.\n',
    ['step-1', 'step-2'],
  ],
  [
    'steps with a caution between them',
    '1. One.\n\n<Caution id="caution.sash.pinch" />\n\n2. Two.\n',
    ['step-1', 'step-2'],
  ],
  [
    'what is likely, counted apart from what to do',
    '## What it is likely to be\n\n1. Wind.\n\n## What to do now\n\n1. Stop.\n',
    ['cause-1', 'step-1'],
  ],
  ['no item of a list without numbers', '- One.\n- Two.\n', []],
])('an id for %s', async (_, page, expected) => {
  expect(await ids(page)).toEqual(expected);
});
