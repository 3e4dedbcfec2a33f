import { describe, expect, test } from 'vitest';
import { ceiling } from '../../src/calc/ceiling/declaration.ts';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { heldBy } from '../../src/job/cautions.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { settling } from '../../src/job/settling.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { worked } from '../calc/told.ts';
import { data, exampleWith, planOf, rules } from './entries.ts';

const ways = (changes: Record<string, unknown>): string[] =>
  settling(planOf(exampleWith(changes)), rules).flatMap(({ entries }) => entries.map(({ field }) => field));

const panel = { 'ceiling.board': 'wood-fibre panel' };
const given = { ...panel, 'ceiling.engineer_load': '1.9 lb/ft2', 'ceiling.engineer': 'R. Alder, 2026-11-02' };

describe('each stop leads to the entries that settle it', () => {
  test.each<[string, Record<string, unknown>, readonly string[]]>([
    ['nothing holds it', {}, []],
    ['a leak', { 'survey.leaks': 'leaks found' }, ['survey.leaks']],
    [
      'two conditions of one caution',
      { 'survey.junctions': 'some open', 'survey.wiring': 'old or damaged' },
      ['survey.junctions', 'survey.wiring'],
    ],
    [
      'a roof that nobody goes on',
      { 'survey.roof_carries': 'nobody goes on it' },
      ['ways.chosen', 'survey.roof_carries'],
    ],
    [
      'a roof that nobody goes on, and pests: another way in settles the one alone',
      { 'survey.roof_carries': 'nobody goes on it', 'survey.pests': 'signs of them' },
      ['ways.chosen', 'survey.roof_carries', 'survey.pests'],
    ],
    ['a roof in doubt', { 'survey.roof_carries': 'in doubt' }, ['survey.roof_carries']],
    [
      'a ceiling that nobody rated',
      panel,
      ['ceiling.board', 'ceiling.framing', 'ceiling.engineer_load', 'ceiling.engineer'],
    ],
    [
      'a fill too heavy',
      { 'fill.density': '1.95 lb/ft3' },
      ['fill.density', 'old.depth', 'old.density', 'heat.pressed_depth', 'ceiling.board', 'ceiling.framing'],
    ],
    [
      'a machine that blows too heavy',
      { 'machine.fills': [{ gross: '18 lb', tare: '10 lb' }], old: {}, heat: {} },
      ['fill.density', 'machine.fills', 'ceiling.board', 'ceiling.framing'],
    ],
    // 15 in of it weigh 15/12 · 2.2 = 2.75 of 2.2 lb/ft2.
    [
      'a fill too heavy where no old insulation lies, whatever was said of its state',
      { 'fill.density': '2.2 lb/ft3', 'old.depth': 'none', 'heat.pressed_depth': '' },
      ['fill.density', 'ceiling.board', 'ceiling.framing'],
    ],
    [
      'a fill too heavy over old insulation that lies loose',
      {
        'fill.density': '2.2 lb/ft3',
        'heat.old_condition': 'lies loose at its full depth',
        'heat.pressed_depth': '',
      },
      ['fill.density', 'old.depth', 'old.density', 'ceiling.board', 'ceiling.framing'],
    ],
    // By hand: 4/12 · 8 = 2.67 of the 2.2 lb/ft2 that the board carries: no fill passes, however light.
    [
      'old insulation too heavy by itself',
      { 'old.depth': '4 in', 'old.density': '8 lb/ft3' },
      ['old.depth', 'old.density', 'ceiling.board', 'ceiling.framing'],
    ],
    // By hand: at the 1.525 lb/ft3 that the machine blows, 1.800625 lb/ft2 lie on it, of the 1.8 of the paper.
    [
      'a load beyond an engineer’s',
      { ...given, 'ceiling.engineer_load': '1.8 lb/ft2' },
      [
        'fill.density',
        'machine.fills',
        'old.depth',
        'old.density',
        'heat.pressed_depth',
        'ceiling.board',
        'ceiling.framing',
        'ceiling.engineer_load',
        'ceiling.engineer',
      ],
    ],
  ])('%s', (_, changes, expected) => {
    expect(ways(changes)).toEqual(expected);
  });

  test('old insulation by its group too, since the fill has a density of its own', () => {
    const [stop] = settling(planOf(exampleWith({ 'fill.density': '1.95 lb/ft3' })), rules);
    expect(stop?.entries.map(({ label }) => label)).toEqual([
      'Density wanted',
      'Old insulation: depth',
      'Old insulation: density',
      'Depth once pressed',
      'Ceiling board',
      'Framing of the ceiling',
    ]);
  });

  test('on the text sheet by their names', () => {
    const text = jobSheet(planOf(exampleWith({ 'survey.leaks': 'leaks found' })), data.cautions, rules);
    expect(text).toContain('Settled by: Leaks (survey.leaks).');
  });
});

describe('the comparison of the ways in stands before a stop that a choice among them settles', () => {
  const states = (changes: Record<string, unknown>) =>
    workParts(planOf(exampleWith(changes)), rules)
      .filter(({ name }) => name === 'ways-in' || name === 'gable-lanes')
      .map(({ state }) => state);
  test.each<[string, Record<string, unknown>, readonly string[]]>([
    ['a roof that nobody goes on', { 'survey.roof_carries': 'nobody goes on it' }, ['answered', 'held']],
    ['a leak', { 'survey.leaks': 'leaks found' }, ['held', 'held']],
    [
      'a leak, and a roof that nobody goes on',
      { 'survey.leaks': 'leaks found', 'survey.roof_carries': 'nobody goes on it' },
      ['answered', 'held'],
    ],
    ['no stop', {}, ['answered', 'answered']],
  ])('%s', (_, changes, expected) => {
    expect(states(changes)).toEqual(expected);
  });
});

describe('an engineer’s written load settles a ceiling that nobody rated, and raises no published limit', () => {
  // By hand: 13.5/12 · 1.525 + 2/12 · 0.51 = 1.800625 lb/ft2 lie on it.
  test.each<[string, Record<string, unknown>, string, readonly string[]]>([
    ['no paper', panel, 'unrated', ['caution.ceiling.unrated']],
    // Of 1.9 lb/ft2 the fill leaves 0.099 for the air, whose 0.05 in of water are 0.26.
    ['a paper that carries it, and not the air with it', given, 'carries it', ['caution.machine.pressed']],
    ['a paper that carries both', { ...given, 'ceiling.engineer_load': '2.1 lb/ft2' }, 'carries it', []],
    [
      'a paper that does not',
      { ...given, 'ceiling.engineer_load': '1.8 lb/ft2' },
      'does not carry it',
      ['caution.ceiling.overloaded'],
    ],
    ['nobody’s paper', { ...given, 'ceiling.engineer': ' ' }, 'unrated', ['caution.ceiling.unrated']],
    [
      'a paper above the published limit of 2.2',
      {
        ...given,
        'ceiling.board': 'gypsum 1/2 in',
        'ceiling.engineer_load': '9 lb/ft2',
        'fill.density': '2 lb/ft3',
      },
      'does not carry it',
      ['caution.ceiling.overloaded'],
    ],
    [
      'a paper below the published limit',
      { ...given, 'ceiling.board': 'gypsum 1/2 in', 'ceiling.engineer_load': '1.7 lb/ft2' },
      'does not carry it',
      ['caution.ceiling.overloaded'],
    ],
  ])('%s', (_, changes, verdict, held) => {
    const plan = planOf(exampleWith(changes));
    expect(plan.load.verdict).toBe(verdict);
    expect(heldBy(plan).map(({ id }) => id)).toEqual(held);
    // Trapped air goes by the same limit.
    const [air] = workParts(plan, rules, true).filter(({ name }) => name === 'trapped-air');
    const limit = air?.state === 'answered' ? air.answer.figures.limit?.value : undefined;
    expect(limit).toEqual(plan.load.limit && expect.objectContaining({ amount: plan.load.limit.amount }));
  });

  test('it is printed with who gave it', () => {
    expect(jobSheet(planOf(exampleWith(given)), data.cautions, rules)).toContain(
      'given in writing by: R. Alder, 2026-11-02',
    );
  });

  test('in the calculator as in the job', () => {
    const entries = {
      board: 'other or not known',
      framing: '16 in',
      depth: '12 in',
      density: '1.5 lb/ft3',
      old_depth: 'none',
    };
    const verdict = (more: Record<string, string>) => {
      const { figures, remarks } = worked(ceiling, { ...entries, ...more });
      return [figures.verdict?.value, remarks.map(remarkText).join()];
    };
    expect(verdict({ engineer_load: '1.5 lb/ft2', engineer: 'R. Alder' })[0]).toBe('carries it');
    expect(verdict({ engineer_load: '1.49 lb/ft2', engineer: 'R. Alder' })[0]).toBe('does not carry it');
    expect(verdict({ engineer_load: '1.5 lb/ft2' })).toEqual([
      'unrated',
      'An engineer’s load counts only once you enter who gave it.',
    ]);
  });
});
