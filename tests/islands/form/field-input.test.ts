import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { type ChoiceField, choiceField, optional } from '../../../src/calc/declare/field.ts';
import { FieldsForm } from '../../../src/islands/form/FieldInput.tsx';

const nothing = (): void => undefined;
/** A choice as a page sends it, before any script: what each option holds and says, the chosen one marked. */
function sent(field: ChoiceField, chosen: string): readonly string[] {
  const html = renderToString(
    h(FieldsForm, {
      fields: { shape: field },
      entries: { shape: chosen },
      problems: [],
      set: nothing,
      leave: nothing,
    } as unknown as Parameters<typeof FieldsForm>[0]),
  );
  return [...html.matchAll(/<option([^>]*)>([^<]*)<\/option>/g)].map(([, how = '', words]) => {
    const value = /value="([^"]*)"/.exec(how)?.[1] ?? '';
    return `${/\bselected\b/.test(how) ? '* ' : ''}${value}${value === words ? '' : ` says ${words}`}`;
  });
}

const shape = choiceField('Shape', 'Of the roof.', ['bowed', 'level']);

describe('a choice is sent with what was chosen', () => {
  test.each<[title: string, field: ChoiceField, chosen: string, options: readonly string[]]>([
    ['one of a list that must be chosen from', shape, 'level', ['bowed', '* level']],
    ['one of a list that may be left empty', optional(shape), 'level', ['', 'bowed', '* level']],
    ['nothing of such a list', optional(shape), '', ['* ', 'bowed', 'level']],
    ['nothing yet', shape, '', ['* ', 'bowed', 'level']],
    [
      'a word that the list does not hold, which stays as it came',
      shape,
      'domed',
      ['* domed', 'bowed', 'level'],
    ],
  ])('%s', (_, field, chosen, options) => {
    expect(sent(field, chosen)).toEqual(options);
  });
});
