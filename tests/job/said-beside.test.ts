import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { plannedJson } from '../../src/cli/planned-json.ts';
import { saidOfCeiling, saidOfFill, saidOfHoles } from '../../src/job/said-beside.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { data, exampleWith, planOf, rules } from './entries.ts';

const TAKEN = 'The old insulation is taken at 0.51 lb/ft³';

describe('what the old insulation is taken to weigh is said beside the ceiling', () => {
  test.each<[title: string, changes: Readonly<Record<string, unknown>>, told: boolean]>([
    ['2 in that nobody weighed', {}, true],
    ['2 in of a density that was entered', { 'old.density': '0.6 lb/ft3' }, false],
    ['none', { 'old.depth': 'none', heat: {} }, false],
    ['nothing entered', { old: {}, heat: {} }, false],
  ])('%s', (_, changes, told) => {
    const says = saidOfCeiling(planOf(exampleWith(changes)), rules)
      .map(remarkText)
      .join(' ');
    expect(says.includes(TAKEN)).toBe(told);
  });
});

/** What is said of a density, and of ducts. */
const UNUSUAL = 'lies outside the usual';
const DUCTS = 'The ducts overhead are not counted';

describe('what is not usual, or not counted, is said beside the fill where it is so, and nowhere else', () => {
  test.each<[title: string, changes: Readonly<Record<string, unknown>>, words: string, told: boolean]>([
    // The rulebook's usual density is from 1.25 to 1.75 lb/ft3.
    ['a usual density', { 'fill.density': '1.5 lb/ft3' }, UNUSUAL, false],
    ['a density over the usual', { 'fill.density': '1.8 lb/ft3' }, UNUSUAL, true],
    ['ducts overhead, all tight', { 'survey.ducts': 'all tight' }, DUCTS, true],
    ['no ducts overhead', { 'survey.ducts': 'none overhead' }, DUCTS, false],
    ['ducts that nobody looked at', { 'survey.ducts': 'not looked at' }, DUCTS, false],
  ])('%s', (_, changes, words, told) => {
    const says = saidOfFill(planOf(exampleWith(changes)))
      .map(remarkText)
      .join(' ');
    expect(says.includes(words)).toBe(told);
  });
});

describe('text and JSON say the same beside the figures', () => {
  test.each<[title: string, changes: Readonly<Record<string, unknown>>, word: string]>([
    ['the example', {}, TAKEN],
    ['a machine that was weighed to blow heavier', {}, 'as the machine was weighed to blow'],
    ['a cover that is not metal', { 'roof.cover': 'shingles' }, 'The cover of this roof is shingles'],
    ['another way in', { 'ways.chosen': 'gable end' }, 'the holes of this plan are not cut'],
    [
      'an engineer’s load that does not count yet',
      { 'ceiling.engineer_load': '3 lb/ft2' },
      'counts only once you enter who gave it',
    ],
    ['old insulation of which nobody told how it lies', { heat: {} }, 'is counted as lying loose'],
    ['a skylight', { 'roof.obstacles.0.what': 'skylight' }, 'The well of the skylight'],
    ['ducts overhead', { 'survey.ducts': 'all tight' }, 'The ducts overhead are not counted'],
  ])('%s', (_, changes, word) => {
    const plan = planOf(exampleWith(changes));
    const said = [...saidOfCeiling(plan, rules), ...saidOfHoles(plan), ...saidOfFill(plan)].map(remarkText);
    const text = jobSheet(plan, data.cautions, rules);
    const json = plannedJson(plan, rules, data.cautions, false);
    expect(said.join(' ')).toContain(word);
    expect(said.filter((each) => !text.includes(each))).toEqual([]);
    expect(said.filter((each) => ![...json.ceiling.remarks, ...json.remarks].includes(each))).toEqual([]);
  });

  test('holes that are not to be cut are in neither', () => {
    const plan = planOf(exampleWith({ 'ways.chosen': 'gable end' }));
    const json = plannedJson(plan, rules, data.cautions, false);
    expect('rows' in json && json.rows).toEqual([]);
    expect(jobSheet(plan, data.cautions, rules)).not.toContain('back side: 5 holes');
  });

  test('what settles a stop is told in both', () => {
    const plan = planOf(exampleWith({ 'survey.leaks': 'leaks found' }));
    expect(plannedJson(plan, rules, data.cautions, false).settled_by).toEqual([
      { id: 'caution.before.wet', entries: [{ field: 'survey.leaks', label: 'Leaks' }] },
    ]);
    expect(jobSheet(plan, data.cautions, rules)).toContain('Settled by: Leaks (survey.leaks)');
  });
});
