import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculations } from '../../src/calc/calculations.ts';
import { answer } from '../../src/calc/declare/calculation.ts';
import { declaredCalculations } from '../../src/cli/declared-calculations.ts';
import { drawings } from '../../src/islands/calculator/drawings.ts';
import { sentRules } from '../../src/rulebook/generate.ts';
import { placeholdersIn } from '../../src/rulebook/placeholders.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const {
  base: data,
  files: { checks },
} = theProject();
const whole = openRulebook(data);
const declared = await declaredCalculations();

describe('what is sent for one calculator', () => {
  test('there is one for each calculation, in a file that exports it', async () => {
    expect(declared.map(({ name }) => name)).toEqual(calculations.map(({ name }) => name));
    for (const { at, name } of declared)
      expect(
        ((await import(/* @vite-ignore */ `../../${at.file}`)) as Record<string, { name: string }>)[at.as]
          ?.name,
      ).toBe(name);
  });

  test('what is drawn has a drawing named as the calculation', () => {
    const drawn = declared.filter(({ drawing }) => drawing !== undefined).map(({ name }) => name);
    expect(drawn.sort()).toEqual(drawings.map(({ name }) => name).sort());
  });

  test.each(declared)(
    '$name answers its example and every check as with the whole rulebook',
    ({ name, names }) => {
      const one = calculations.find((each) => each.name === name);
      if (!one) throw new Error(`found no ${name}`);
      const sent = sentRules(data, (id) => names.has(id));
      const part = openRulebook(sent);
      const given = [
        one.example,
        ...checks.filter(({ entry }) => entry.calculation === name).map(({ entry }) => entry.given),
      ];
      expect(given.length).toBeGreaterThan(1);
      for (const entries of given) {
        const found = answer(one, entries, part);
        expect(found).toEqual(answer(one, entries, whole));
        for (const id of found.ok ? found.value.cautions : []) {
          const caution = sent.cautions[id];
          expect(caution, `${id} of ${JSON.stringify(entries)}`).toBeDefined();
          for (const { rule } of placeholdersIn(`${caution?.says} ${caution?.do}`))
            expect(Object.keys(sent.rules)).toContain(rule);
        }
      }
    },
  );

  test('it is a part: no calculation is sent half of the rulebook', () => {
    for (const { names } of declared)
      expect(Object.keys(sentRules(data, (id) => names.has(id)).rules).length).toBeLessThan(
        Object.keys(data.rules).length / 2,
      );
  });

  test('an id is always written whole, so that it is found in the code', () => {
    for (const { at } of declared)
      expect(readFileSync(at.file, 'utf8')).not.toMatch(/(?:value|range|find|choices)\(`/);
  });
});
