import { describe, expect, test } from 'vitest';
import { calculationNamed, calculations } from '../../src/calc/calculations.ts';
import { commonCases } from '../../src/calc/declare/common-cases.ts';
import { format } from '../../src/quantity/format.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const rules = openRulebook(theProject().data);

describe('every calculation has common cases', () => {
  test.each(calculations.map((each) => [each.name, each] as const))('%s', (_, declared) => {
    const tables = commonCases(declared, rules);
    expect(tables.length).toBeGreaterThan(0);
    for (const { cases, columns } of tables) {
      expect(cases.length).toBeGreaterThan(1);
      expect(new Set(cases.map(({ value }) => value)).size).toBe(cases.length);
      // Some of the cases answer; one that can't be true says why.
      expect(cases.some(({ figures }) => figures.length > 0)).toBe(true);
      for (const { figures, refused } of cases)
        expect(refused === undefined ? figures.length : refused.length > 0).toBe(
          refused === undefined ? columns.length : true,
        );
    }
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
