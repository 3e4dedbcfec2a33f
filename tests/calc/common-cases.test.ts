import { describe, expect, test } from 'vitest';
import { calculationNamed, calculations } from '../../src/calc/calculations.ts';
import { commonCases } from '../../src/calc/declare/common-cases.ts';
import type { Fields } from '../../src/calc/declare/field.ts';
import { usualCases } from '../../src/calc/declare/usual-cases.ts';
import { format } from '../../src/quantity/format.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const rules = openRulebook(theProject().data);

const labelsOf = (fields: Fields): string[] =>
  Object.values(fields).flatMap((field) => [
    field.label,
    ...(field.kind === 'group' || field.kind === 'list' ? labelsOf(field.of) : []),
  ]);

describe('every calculation has common cases', () => {
  test.each(calculations.map((each) => [each.name, each] as const))('%s', (_, declared) => {
    const tables = commonCases(declared, rules);
    expect(tables.length).toBeGreaterThan(0);
    for (const { label, cases, columns } of tables) {
      expect(cases.length).toBeGreaterThan(1);
      expect(new Set(cases.map(({ value }) => value)).size).toBe(cases.length);
      // Some of the cases answer; one that can't be true says why.
      expect(cases.some(({ figures }) => figures.length > 0)).toBe(true);
      expect(new Set([label, ...columns]).size, 'no heading twice').toBe(1 + columns.length);
      for (const { figures, refused } of cases)
        expect(refused === undefined ? figures.length : refused.length > 0).toBe(
          refused === undefined ? columns.length : true,
        );
    }
  });
});

describe('what is usual', () => {
  const labels = new Set(calculations.flatMap(({ fields }) => labelsOf(fields)));
  test.each(Object.keys(usualCases))('"%s" is an entry of some calculation', (label) => {
    expect(labels).toContain(label);
  });

  const cases = (name: string, label: string): readonly string[] => {
    const declared = calculationNamed(name);
    if (!declared) throw new Error(`found no ${name}`);
    return (
      commonCases(declared, rules)
        .find((table) => table.label === label)
        ?.cases.map(({ value }) => value) ?? []
    );
  };

  test('a bead is told in the fractions of a tape', () => {
    expect(cases('sealant', 'Size of the bead')).toEqual([
      '1/8 in',
      '3/16 in',
      '1/4 in',
      '5/16 in',
      '3/8 in',
    ]);
  });

  test('a unit is told by its sign', () => {
    expect(cases('fill', 'Density wanted')).toContain('1.25 lb/ft³');
  });

  test('a case that needs another entry is left out, and so is a table of a single case', () => {
    // Measured points, a level cavity with a ridge, and a count of fibres of what is no glass fibre, are other entries.
    expect(cases('ways-in', 'Shape of the roof')).toEqual(['two-slope', 'bowed', 'one-slope']);
    expect(cases('dust', 'Material')).toEqual([]);
  });
});

test('the ceiling by its board: 13 in at 1.5 lb/ft3 is 1.625 lb/ft2, with 2 in of old at 0.51 or more', () => {
  const declared = calculationNamed('ceiling-load');
  if (!declared) throw new Error('found no ceiling-load');
  const [byBoard, byFraming] = commonCases(declared, rules);
  expect(byBoard?.label).toBe('Ceiling board');
  const verdict = byBoard?.cases.find(({ value }) => value === 'gypsum 1/2 in')?.figures[0]?.value;
  expect(verdict).toBe('carries it');
  // Published for gypsum 1/2 in at 16 in is 2.2; a board that nothing is published for stays unrated.
  expect(byBoard?.cases.map(({ figures }) => figures[0]?.value)).toContain('unrated');
  // Each case has the cautions of its own answer, and not those of the example.
  for (const { figures, cautions } of byBoard?.cases ?? [])
    expect(cautions.includes('caution.ceiling.unrated')).toBe(figures[0]?.value === 'unrated');
  // 1.3 at 24 in is less than the 1.625 of the new fill alone.
  expect(byFraming?.cases.map(({ figures }) => figures[0]?.value)).toEqual([
    'carries it',
    'does not carry it',
  ]);
});

test('half the volume takes half the bags: 65 ft3 at 1.5 lb/ft3 in bags of 30 lb are 3.25', () => {
  const declared = calculationNamed('fill');
  if (!declared) throw new Error('found no fill');
  const byVolume = commonCases(declared, rules).find(({ label }) => label.startsWith('Volume'));
  const half = byVolume?.cases.find(({ value }) => value.startsWith('65 ft'));
  const bags = half?.figures.find(({ label }) => /bags/i.test(label))?.value;
  expect(bags && typeof bags !== 'string' ? format(bags, { figures: 3 }) : bags).toBe('3.25 bags');
});
