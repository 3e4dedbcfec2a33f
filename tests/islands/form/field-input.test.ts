import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/calc/declare/entries.ts';
import {
  type ChoiceField,
  choiceField,
  type Field,
  type Fields,
  lengthField,
  listField,
  optional,
  quantityField,
  wordsField,
} from '../../../src/calc/declare/field.ts';
import type { FieldProblem } from '../../../src/calc/declare/read-fields.ts';
import { FieldsForm } from '../../../src/islands/form/FieldInput.tsx';
import { ProblemSummary } from '../../../src/islands/form/ProblemSummary.tsx';

const nothing = (): void => undefined;
/** A form as a page sends it, before any script. */
const formOf = (fields: Fields, entries: Entries, problems: readonly FieldProblem[] = []): string =>
  renderToString(h(FieldsForm, { fields, entries, problems, set: nothing, leave: nothing }));

/** A choice as a page sends it: what each option holds and says, the chosen one marked. */
function sent(field: ChoiceField, chosen: string): readonly string[] {
  const html = formOf({ shape: field }, { shape: chosen });
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

/** The words of an element of a class. */
const wordsIn = (html: string, className: string): string =>
  new RegExp(`class="${className}"[^>]*>([^<]*)<`).exec(html)?.[1] ?? 'none';

const depth = lengthField('d', 'Depth 1 ft in', 'From 3 in on, as a tape of 1/8 in shows it.', '1 ft 2 in');

// By hand: ~ stands where no line may end.
describe('no line of a form ends between a number and its unit', () => {
  const problem = { field: 'depth', label: 'Depth', found: '"9 ft"', expected: 'less than 8 ft 6 in' };
  const html = formOf({ depth }, { depth: '9 ft' }, [problem]);
  test.each([
    ['its label', />(Depth[^<]*)<\/label>/, 'Depth 1~ft~in'],
    [
      'its hint',
      /class="hint"[^>]*>([^<]*)</,
      'From 3~in on, as a tape of 1/8~in shows it. For example 1~ft~2~in.',
    ],
    ['its problem', /class="problem"[^>]*>([^<]*)</, 'Found &quot;9~ft&quot;; expected less than 8~ft~6~in.'],
  ])('%s', (_, part, words) => {
    expect(part.exec(html)?.[1]).toBe(words.replaceAll('~', '\u00a0'));
  });

  test('nor of the hint of a list, or of what keeps its figures back', () => {
    const list = listField('Fills', 'Those of 2 lb or more.', 'a fill', { depth });
    expect(wordsIn(formOf({ list }, { list: [] }), 'hint')).toBe('Those of 2\u00a0lb or more.');
    const summary = renderToString(h(ProblemSummary, { problems: [problem] }));
    expect(summary).toContain('expected less than 8\u00a0ft\u00a06\u00a0in.');
  });
});

describe('a box shows its unit as everything else does, however it was typed', () => {
  const density = quantityField({
    dimension: 'density',
    beside: 'lb/ft3',
    symbol: 'ρ',
    label: 'Density',
    hint: 'Of the fill.',
    example: '1.5 lb/ft³',
    zero: 'refused',
  });
  const resistance = quantityField({ ...density, dimension: 'thermal resistance', beside: 'h ft2 F/Btu' });
  const volume = quantityField({
    dimension: 'volume',
    symbol: 'V',
    label: 'Volume',
    hint: 'Inside.',
    example: '4 ft³',
    zero: 'refused',
  });
  test.each<[title: string, field: Field, typed: string, shown: string]>([
    ['the name of its unit, with its sign', density, '1.5 lb/ft3', '1.5 lb/ft³'],
    ['the sign, as it is', density, '1.5 lb/ft³', '1.5 lb/ft³'],
    ['another unit, as it was typed', density, '1.5 pcf', '1.5 pcf'],
    ['a resistance', resistance, '38 h ft2 F/Btu', '38 h·ft²·°F/Btu'],
    ['a volume without a unit beside its box', volume, '130 ft3', '130 ft³'],
    ['a length, in which a 2 after feet begins the inches', depth, '6 ft2 in', '6 ft2 in'],
    ['words, which may hold anything', wordsField('Name', 'Yours.', 'Lot 4'), 'Lot ft3', 'Lot ft3'],
  ])('%s', (_, field, typed, shown) => {
    const html = formOf({ one: field }, { one: typed });
    expect(/ value="([^"]*)"/.exec(html)?.[1]).toBe(shown);
    expect(/data-typed="([^"]*)"/.exec(html)?.[1]).toBe(shown);
  });
});
