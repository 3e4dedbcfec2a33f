import { describe, expect, test } from 'vitest';
import { calculations } from '../../src/calc/calculations.ts';
import { askedByCalculations } from '../../src/calc/uses.ts';
import { calculationsOnSheets, sheetsAsking } from '../../src/components/sheet-uses.ts';
import { jobSheets } from '../../src/islands/job/sheets.ts';
import { jobParts } from '../../src/job/parts/parts.ts';
import { theProject } from '../the-project.ts';

const { data, files } = theProject();
const asked = askedByCalculations(
  data,
  files.checks.map(({ entry }) => entry),
);

describe('the sheets of a job where a rule counts', () => {
  test.each([
    ['safety.noise.allowed', ['crew']],
    // The plan tells whether the bags are near enough, and so do the pace of the machine, the log and the receipt.
    ['fill.bag.near-enough', ['', 'machine', 'fill-log', 'receipt']],
    // The air of the machine presses on the ceiling too.
    ['ceiling.board.limit', ['', 'machine']],
    ['patch.screws.inset', ['patches']],
    ['moisture.retarder.ceiling', ['air']],
    ['no.such.rule', []],
  ])('%s', (rule, sheets) => {
    const known = Object.hasOwn(data.rules, rule);
    expect([rule, known || sheets.length === 0]).toEqual([rule, true]);
    expect(sheetsAsking(rule, asked, new Set())).toEqual(sheets);
  });

  test('the plan, where its own work asks', () =>
    expect(
      sheetsAsking('safety.built.lead-before', new Map(), new Set(['safety.built.lead-before'])),
    ).toEqual(['']));

  test('every sheet is told, in the order of the work, and names calculations that there are', () => {
    expect(Object.keys(calculationsOnSheets)).toEqual(jobSheets.map(({ path }) => path));
    const known = new Set(calculations.map(({ name }) => name));
    for (const names of Object.values(calculationsOnSheets))
      for (const name of names) expect([...known]).toContain(name);
  });

  test('every part of a job stands on a sheet', () => {
    const shown = new Set(Object.values(calculationsOnSheets).flat());
    expect(jobParts.map(({ calculation }) => calculation.name).filter((name) => !shown.has(name))).toEqual(
      [],
    );
  });
});
