import { type ComponentChild, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { CautionId } from '../../src/generated/rule-types.ts';
import { WithBook } from '../../src/islands/book.ts';
import { Caution, Cautions } from '../../src/islands/results/Caution.tsx';
import { book } from '../../src/islands/rules.ts';
import { theProject } from '../the-project.ts';

/** What a reader sees of a component: its cautions in order, a line each, with its words and links. */
const shown = (node: ComponentChild): string =>
  renderToString(h(WithBook, { value: book, children: node }))
    .replace(/<a [^>]*href="([^"]*)"[^>]*>([^<]*)<\/a>/g, '[$2]($1)')
    .replace(/<div class="([^"]*)"[^>]*>/g, '$1: ')
    .replace(/<\/div>/g, '\n')
    .replace(/<[^>]*>/g, '')
    .replace(
      /&(lt|gt|quot|amp);/g,
      (_, name: 'lt' | 'gt' | 'quot' | 'amp') => ({ lt: '<', gt: '>', quot: '"', amp: '&' })[name],
    );

const { data } = theProject();
const ids = Object.keys(data.cautions) as CautionId[];

describe('a caution on a page', () => {
  test('outside of what was given a rulebook is an error that says so', () => {
    expect(() => renderToString(h(Caution, { id: 'caution.patch.weather' }))).toThrow('expected <WithBook');
  });

  test('no line of it ends between the number of a value and its unit', () => {
    // Of the ladder: 3 ft above the edge.
    expect(shown(h(Caution, { id: 'caution.ladder.set' }))).toContain('[3\u00a0ft](');
  });

  test('says its level in a word, what is the matter, what to do, and what it rests on, with the way there', () => {
    const { says, do: act } = data.cautions['caution.patch.weather'] ?? {};
    expect(shown(h(Caution, { id: 'caution.patch.weather' }))).toBe(
      `caution warn: Warning. ${says} ${act} [Source: common practice, no source](/cautions/patch/#weather)\n`,
    );
    // Of the documents in rules/sources.yaml, the one that rules/cautions/before.yaml names.
    expect(shown(h(Caution, { id: 'caution.before.wear' }))).toContain(
      '[Source: 29 CFR part 1926](/cautions/before/#wear)',
    );
  });

  test('is bare where what stands beside it leads to its source', () => {
    const { says, do: act } = data.cautions['caution.patch.weather'] ?? {};
    expect(shown(h(Caution, { id: 'caution.patch.weather', bare: true }))).toBe(
      `caution warn: Warning. ${says} ${act} \n`,
    );
  });

  /** 1978 stands in rules/safety/built.yaml, 2 in in rules/clearance/flue.yaml. */
  test.each([
    [
      'caution.before.old-paint',
      'A home built before [1978](/rules/safety.built.lead-before/) may have lead',
    ],
    [
      'caution.flue.keep-clear',
      'does not burn, [2\u00a0in](/rules/clearance.flue.to-combustibles/) or more from',
    ],
  ] as const)('%s has the value of its rule in it, linked', (id, words) => {
    expect(shown(h(Caution, { id }))).toContain(words);
  });

  test.each(ids)('%s stands whole, with nothing left in braces', (id) => {
    expect(shown(h(Caution, { id }))).toMatch(/^caution (stop|warn|note): (Stop|Warning|Note)\. [^{}]+\n$/);
  });

  test('of several, the gravest stands first', () => {
    const levels = shown(h(Cautions, { ids: [...ids].reverse() })).match(/(?<=^caution )\w+/gm) ?? [];
    expect(levels).toHaveLength(ids.length);
    const gravity = ['stop', 'warn', 'note'];
    expect(levels).toEqual([...levels].sort((a, b) => gravity.indexOf(a) - gravity.indexOf(b)));
    expect(new Set(levels).size).toBe(3);
  });
});
