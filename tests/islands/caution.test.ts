import { type ComponentChild, isValidElement, type VNode } from 'preact';
import { describe, expect, test } from 'vitest';
import type { CautionId } from '../../src/generated/rule-types.ts';
import { Caution, Cautions } from '../../src/islands/results/Caution.tsx';
import { loadProject } from '../../src/rulebook/project.ts';

type Props = Record<string, unknown> & { readonly children?: ComponentChild | ComponentChild[] };

/** What a reader sees of a component: its elements in order, each with its words. */
function shown(node: ComponentChild | ComponentChild[]): string {
  if (Array.isArray(node)) return node.map(shown).join('');
  if (!isValidElement(node)) return typeof node === 'string' ? node : '';
  const { type, props } = node as VNode<Props>;
  if (typeof type === 'function') return shown((type as (given: Props) => ComponentChild)(props));
  const inside = shown(props.children);
  if (type === 'a') return `[${inside}](${props.href})`;
  if (type === 'div') return `${props.class}: ${inside}\n`;
  return inside;
}

const { data } = loadProject();
const ids = Object.keys(data.cautions) as CautionId[];

describe('a caution on a page', () => {
  test('says its level in a word, what is the matter and what to do', () => {
    const { says, do: act } = data.cautions['caution.patch.weather'] ?? {};
    expect(shown(Caution({ id: 'caution.patch.weather' }))).toBe(`caution warn: Warning. ${says} ${act}\n`);
  });

  /** 1978 stands in rules/safety/built.yaml, 2 in in rules/clearance/flue.yaml. */
  test.each([
    [
      'caution.before.old-paint',
      'A home built before [1978](/rules/safety.built.lead-before/) may have lead',
    ],
    ['caution.flue.keep-clear', 'does not burn, [2 in](/rules/clearance.flue.to-combustibles/) or more from'],
  ] as const)('%s has the value of its rule in it, linked', (id, words) => {
    expect(shown(Caution({ id }))).toContain(words);
  });

  test.each(ids)('%s stands whole, with nothing left in braces', (id) => {
    expect(shown(Caution({ id }))).toMatch(/^caution (stop|warn|note): (Stop|Warning|Note)\. [^{}]+\n$/);
  });

  test('of several, the gravest stands first', () => {
    const levels = shown(Cautions({ ids: [...ids].reverse() })).match(/(?<=^caution )\w+/gm) ?? [];
    expect(levels).toHaveLength(ids.length);
    const gravity = ['stop', 'warn', 'note'];
    expect(levels).toEqual([...levels].sort((a, b) => gravity.indexOf(a) - gravity.indexOf(b)));
    expect(new Set(levels).size).toBe(3);
  });
});
