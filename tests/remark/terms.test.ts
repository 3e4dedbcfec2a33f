import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import remarkStringify from 'remark-stringify';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';
import { termLinks } from '../../src/remark/term-links.ts';
import { projectTerms, readTerms } from '../../src/remark/terms.ts';

const two = readTerms(
  'terms.yaml',
  'ridge:\n  term: ridge\n  also: [ridges]\n  means: The top.\nridge-beam:\n  term: ridge beam\n  means: What holds it.\n',
);

const linked = (text: string): string =>
  String(
    unified()
      .use(remarkParse)
      .use(remarkMdx)
      .use(termLinks, { terms: two })
      .use(remarkStringify)
      .processSync(text),
  ).trim();

describe('a term is linked where a page first uses it', () => {
  test.each([
    ['the first use only', 'A ridge. The ridge.', 'A [ridge](/terms/#ridge). The ridge.'],
    ['another form of it', 'Two Ridges.', 'Two [Ridges](/terms/#ridge).'],
    ['the longest form first', 'A ridge beam.', 'A [ridge beam](/terms/#ridge-beam).'],
    ['no part of a longer word', 'A ridgepole and a cross-ridge.', 'A ridgepole and a cross-ridge.'],
    ['no heading', '# The ridge', '# The ridge'],
    ['no code', 'The `ridge`.', 'The `ridge`.'],
    ['nothing that is a link', '[the ridge](/x/)', '[the ridge](/x/)'],
  ])('%s', (_, text, expected) => {
    expect(linked(text)).toBe(expected);
  });
});

describe('a glossary with a mistake stops, at its line', () => {
  test.each([
    ['a missing meaning', 'a:\n  term: a\n', /terms\.yaml:2:3 {2}found no "means"/],
    [
      'an unknown key',
      'a:\n  term: a\n  mean: x\n  means: x\n',
      /terms\.yaml:3:3 {2}found the unknown key "mean"/,
    ],
    [
      'a number without a rule',
      'a:\n  term: a\n  means: It is 6 in wide.\n',
      /terms\.yaml:3:10 {2}found "6 in"/,
    ],
    [
      'a word that two terms claim',
      'a:\n  term: a\n  means: x\nb:\n  term: A\n  means: y\n',
      /found "a" a second time/,
    ],
    [
      'a word that is a term and what another term is called',
      'a:\n  term: a\n  means: x\nb:\n  term: b\n  called: [A]\n  means: y\n',
      /found "a" a second time/,
    ],
  ])('%s', (_, text, words) => {
    expect(() => readTerms('terms.yaml', text)).toThrow(words);
  });
});

test('what crews call a term is no word of the site: a page is not linked by it', () => {
  const [term] = readTerms('terms.yaml', 'mould:\n  term: mould\n  called: [mold]\n  means: Spots.\n');
  expect(term?.called).toEqual(['mold']);
  const text = unified()
    .use(remarkParse)
    .use(termLinks, { terms: term ? [term] : [] })
    .use(remarkStringify);
  expect(String(text.processSync('Mold and mould.')).trim()).toBe('Mold and [mould](/terms/#mould).');
});

test('the project’s own glossary reads', () => {
  expect(projectTerms().length).toBeGreaterThan(0);
});
