import { describe, expect, test } from 'vitest';
import { movableValues } from '../../src/calc/checks/moved-values.ts';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { type DifferingFigure, noRuleNamed, recheck, sideText } from '../../src/job/recheck.ts';
import { type JobRecord, readRecord, writeRecord } from '../../src/job/record.ts';
import { changedRulebook, restingOn } from '../../src/rulebook/changed.ts';
import { openRulebook, type RulebookData } from '../../src/rulebook/rulebook.ts';
import type { RuleValue } from '../../src/rulebook/schema.ts';
import { data, exampleEntries, exampleWith, planOf } from './entries.ts';

const writtenBy = (book: RulebookData, entries = exampleEntries): string => {
  const rules = openRulebook(book);
  return writeRecord(entries, planOf(entries, rules), rules, book);
};

function recordOf(written: string): JobRecord {
  const read = readRecord(written);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
}

/** A record of before version 3: no rule stands behind words. */
function olderRecord(written: string): JobRecord {
  const file = JSON.parse(written);
  const figures = Object.entries<{ amount?: number }>(file.figures).map(([name, each]) => [
    name,
    each.amount === undefined ? { ...each, rules: [] } : each,
  ]);
  return recordOf(JSON.stringify({ ...file, version: 2, figures: Object.fromEntries(figures) }));
}

const text = writtenBy(data);
const record = recordOf(text);

const under = (book: RulebookData, given: JobRecord = record) => {
  const found = recheck(given, openRulebook(book), book.rules);
  if (!found.ok) throw new Error(found.problems.map(sentence).join(' '));
  return found.value;
};

const named = (differing: readonly DifferingFigure[], name: string): DifferingFigure => {
  const figure = differing.find((each) => each.name === name);
  if (!figure) throw new Error(`found no "${name}" among the figures that differ, expected it`);
  return figure;
};

const rulesOf = ({ because }: DifferingFigure): string[] => because.map(({ rule }) => rule).sort();

const ruleValue = (id: string): RuleValue => {
  const rule = data.rules[id];
  if (!rule) throw new Error(`found no rule "${id}"`);
  return rule.value;
};

/** The board of the example, half an inch at 16 in, carries less than 2.2 lb/ft2. */
function lowerLimit(load: number): RuleValue {
  const limit = ruleValue('ceiling.board.limit');
  if (limit.kind !== 'table') throw new Error('expected a table');
  const rows = limit.rows.map((row) =>
    row[0] === 'gypsum 1/2 in' && row[1] === 16 ? [row[0], 16, load] : row,
  );
  return { ...limit, rows };
}

const wider: Readonly<Record<string, RuleValue>> = {
  'clearance.flue.to-combustibles': { kind: 'at-least', number: 3, unit: 'in' },
  'patch.layers.overlap': { kind: 'exact', number: 75, unit: 'mm' },
};

/*
 * By hand: 1.800625 lb/ft2 lie on the example's ceiling (example.test.ts), and 0.05 in w.c. of trapped air add 0.05 · 5.2023 = 0.2601: 2.0607 in all,
 * which a board of 2.2 carries and one of 2.0 does not. The insulation alone it carries still. So the stop rests on the limit, and on nothing of
 * flues or patches.
 */
describe('a record under an agency that asks more of the ceiling, of flues and of patches', () => {
  const agency = changedRulebook(data, { ...wider, 'ceiling.board.limit': lowerLimit(2) });
  const { differing, cautions } = under(agency);

  test.each<[name: string, before: string, after: string]>([
    ['plan.held', 'none', 'caution.machine.pressed'],
    ['readiness.Ready or not.verdict', 'ready', 'not ready'],
    ['trapped-air.Trapped air.verdict', 'carries it', 'does not carry it'],
    ['plan.limit', '2.2 lb/ft²', '2 lb/ft²'],
  ])('%s: %s, then %s, because of the limit of the board alone', (name, before, after) => {
    const figure = named(differing, name);
    expect(figure).toMatchObject({ before, after, stops: [] });
    expect(rulesOf(figure)).toEqual(['ceiling.board.limit']);
  });

  test('the ring of the flue differs because of its clearance', () => {
    const figure = named(differing, 'clear-spaces.Clear spaces.widest_ring');
    expect(figure).toMatchObject({ before: '2 in', after: '3 in', stops: [] });
    expect(rulesOf(figure)).toEqual(['clearance.flue.to-combustibles']);
  });

  test.each(['plan.bags', 'holes.back.1.along', 'patch-kit.Patch kit.kit', 'patch-layers.Patch.metal_side'])(
    '%s is held back by the stop, which is named with the rule behind it',
    (name) => {
      const figure = named(differing, name);
      expect(figure).toMatchObject({ after: undefined, stops: ['caution.machine.pressed'] });
      expect(rulesOf(figure)).toEqual(['ceiling.board.limit']);
      expect(sideText(figure.after, figure.stops)).toBe('held back');
      expect(sideText(figure.before, figure.stops)).toBe(figure.before);
    },
  );

  test('no figure is left without a rule, and what does not rest on the three is as it was', () => {
    expect(differing.filter(({ because }) => because.length === 0).map(({ name }) => name)).toEqual([]);
    const names = differing.map(({ name }) => name);
    // The weight is the same, and 2.0 carries it; a ladder and the heat of the day know nothing of the roof.
    for (const name of ['plan.load', 'plan.ceiling', 'ladder.Ladder.foot', 'heat-index-band.Heat band.band'])
      expect(names).not.toContain(name);
  });

  test('what differs by itself is told before what the stop holds back', () => {
    const held = differing.map(({ stops }) => stops.length > 0);
    expect(held).toContain(false);
    expect(held).toContain(true);
    expect(held.lastIndexOf(false)).toBeLessThan(held.indexOf(true));
  });

  test('the stop stands first among the cautions, and those of what it holds back are left out', () => {
    expect(cautions[0]).toBe('caution.machine.pressed');
    expect(cautions).toContain('caution.flue.keep-clear');
    expect(cautions).not.toContain('caution.savings.vary');
  });

  test('a record made there is worked again under the rulebook: what was held back is there, and the stop is named', () => {
    const found = under(data, recordOf(writtenBy(agency)));
    const bags = named(found.differing, 'plan.bags');
    expect(bags).toMatchObject({
      before: undefined,
      after: '35.8 bags',
      stops: ['caution.machine.pressed'],
    });
    expect(rulesOf(bags)).toEqual(['ceiling.board.limit']);
    expect(found.cautions).not.toContain('caution.machine.pressed');
    expect(named(found.differing, 'readiness.Ready or not.verdict')).toMatchObject({
      before: 'not ready',
      after: 'ready',
      stops: [],
    });
  });

  test('words of an older record are told by the rules that they rest on today', () => {
    const found = under(agency, olderRecord(text));
    const ready = named(found.differing, 'readiness.Ready or not.verdict');
    expect(rulesOf(ready)).toEqual(['ceiling.board.limit']);
    expect(named(found.differing, 'plan.bags').stops).toEqual(['caution.machine.pressed']);
  });
});

test('a stop that no rule is behind is named alone, whatever else changed', () => {
  const leaking = { ...record, job: exampleWith({ 'survey.leaks': 'leaks found' }) };
  // A limit of 2.1 carries the 2.0607 lb/ft2 too, so that the leak alone holds the plan.
  const { differing } = under(
    changedRulebook(data, { ...wider, 'ceiling.board.limit': lowerLimit(2.1) }),
    leaking,
  );
  const kit = named(differing, 'patch-kit.Patch kit.kit');
  expect(kit).toMatchObject({ after: undefined, stops: ['caution.before.wet'], because: [] });
  // The ring of the flue is told while the home leaks too.
  expect(rulesOf(named(differing, 'clear-spaces.Clear spaces.widest_ring'))).toEqual([
    'clearance.flue.to-combustibles',
  ]);
});

describe('words name the rule that is behind them', () => {
  test('trapped air, which asks for no weight of old insulation, where that was taken to be heavier', () => {
    // By hand: the example's 2 in of old insulation at 2 lb/ft3 in place of 0.51 weigh 2/12 · 1.49 = 0.2483 lb/ft2 more: 1.800625 become 2.0490, which a
    // board of 2.2 carries, and with 0.2601 of trapped air 2.3091, which it does not.
    const { differing } = under(
      changedRulebook(data, {
        'thermal.batt.light-density': { kind: 'between', low: 0.47, high: 2, unit: 'lb/ft3' },
      }),
    );
    const air = named(differing, 'trapped-air.Trapped air.verdict');
    expect(air).toMatchObject({ before: 'carries it', after: 'does not carry it', stops: [] });
    expect(rulesOf(air)).toEqual(['thermal.batt.light-density']);
  });

  test('the patch kit, where only flues and patches ask for more', () => {
    const { differing } = under(
      changedRulebook(data, { 'patch.layers.overlap': wider['patch.layers.overlap'] as RuleValue }),
    );
    const kit = named(differing, 'patch-kit.Patch kit.kit');
    expect(kit.stops).toEqual([]);
    // Both sides follow from the overlap.
    expect(rulesOf(kit)).toEqual([
      'patch.layers.membrane-side',
      'patch.layers.metal-side',
      'patch.layers.overlap',
    ]);
  });

  test('the receipt, where the log has more in an opening than a lower limit allows', () => {
    // By hand: 8 bags in place of 6.98 at 1.5 lb/ft3 are 1.72 lb/ft3 there. A limit of 2.2 lb/ft2 leaves (2.2 − 0.085)/(13.5/12) = 1.88 lb/ft3 and one
    // of 1.9 leaves 1.61, while the plan, 1.8006 lb/ft2, passes under both.
    const entries = exampleWith({
      'machine.pressure': '',
      log: { openings: [{ side: 'back', opening: 1, bags: '8 bags', state: 'full' }] },
    });
    const { differing } = under(
      changedRulebook(data, { 'ceiling.board.limit': lowerLimit(1.9) }),
      recordOf(writtenBy(data, entries)),
    );
    const receipt = named(differing, 'receipt.Receipt and certificate.verdict');
    expect(receipt).toMatchObject({
      before: 'not complete',
      after: 'not to be signed before that stop is settled',
      stops: [],
    });
    expect(rulesOf(receipt)).toEqual(['ceiling.board.limit']);
  });

  test('the band of the heat, at 88 F and 15 F more for full sun: 103 F is high from 103 F on, and not from 104 F', () => {
    const { differing } = under(
      changedRulebook(data, { 'safety.heat.high-from': { kind: 'at-least', number: 104, unit: 'F' } }),
    );
    const band = named(differing, 'heat-index-band.Heat band.band');
    expect(band).toMatchObject({ before: 'high', after: 'moderate' });
    expect(rulesOf(band)).toEqual(['safety.heat.high-from']);
  });

  test('a figure that is there only now rests on what its part asked: more homes are taken to hold lead', () => {
    const year = ruleValue('safety.built.lead-before');
    if (year.kind !== 'exact') throw new Error('expected one number');
    // The example home was built in 1979, and is asked about from the year after on.
    const { differing } = under(
      changedRulebook(data, { 'safety.built.lead-before': { ...year, number: 1980 } }),
    );
    const paint = named(differing, 'readiness.Ready or not.paint_indoors');
    expect(paint).toMatchObject({ before: undefined, stops: [] });
    expect(rulesOf(paint)).toEqual(['safety.built.lead-before']);
    expect(sideText(paint.before, paint.stops)).toBe('not there');
  });
});

describe('a figure of one side alone is told by the rules of its whole part', () => {
  const agency = changedRulebook(data, wider);

  test('as they were recorded, where the part is no more: of that part, and of none whose name only begins alike', () => {
    const [flues, overlap, heat] = [
      'clearance.flue.to-combustibles',
      'patch.layers.overlap',
      'safety.heat.high-from',
    ];
    const figures = {
      'gone.Part.first': { label: 'First', text: '1 ft', rules: [heat] },
      'gone.Part.second': { label: 'Second', text: '2 ft', rules: [flues] },
      'gone.Parts.third': { label: 'Third', text: '3 ft', rules: [overlap] },
    };
    const { differing } = under(agency, { ...record, figures: { ...record.figures, ...figures } });
    // The heat did not change, so that the first names what its neighbour in the part rests on.
    expect(rulesOf(named(differing, 'gone.Part.first'))).toEqual([flues]);
    expect(rulesOf(named(differing, 'gone.Part.second'))).toEqual([flues]);
    expect(rulesOf(named(differing, 'gone.Parts.third'))).toEqual([overlap]);
  });

  test('as they are asked today, where the part was none', () => {
    const year = ruleValue('safety.built.lead-before');
    const without = Object.entries(record.figures).filter(([name]) => !name.startsWith('readiness.'));
    // The example home was built in 1979. How much paint a small job disturbs did not change; that it is asked at all, did.
    const { differing } = under(
      changedRulebook(data, { 'safety.built.lead-before': { ...year, number: 1980 } as RuleValue }),
      { ...record, figures: Object.fromEntries(without) },
    );
    const paint = named(differing, 'readiness.Ready or not.paint_outdoors');
    expect(paint.before).toBeUndefined();
    expect(rulesOf(paint)).toEqual(['safety.built.lead-before']);
  });
});

describe('words that differ with no changed rule behind them', () => {
  const band = 'heat-index-band.Heat band.band';
  const otherwise = (given: JobRecord): DifferingFigure => {
    const figure = given.figures[band];
    if (!figure) throw new Error('expected the band to be recorded');
    const figures = { ...given.figures, [band]: { ...figure, text: 'low' } };
    return named(under(data, { ...given, figures }).differing, band);
  };

  test('come from a change of the program where their rules were recorded', () => {
    const figure = otherwise(record);
    expect(figure.because).toEqual([]);
    expect(noRuleNamed(figure)).toBe('no rule behind it changed');
  });

  test('are not said to, where an older copy recorded none', () => {
    const figure = otherwise(olderRecord(text));
    expect(figure.because).toEqual([]);
    expect(noRuleNamed(figure)).toBe('its rules were not recorded');
  });
});

describe('every figure of a record that moves with a rule names it, or a rule that rests on it', () => {
  const moved = Object.values(data.rules).filter(
    ({ id, value }) =>
      (value.kind !== 'table' || id === 'ceiling.board.limit') &&
      [...restingOn(data, id)].some((each) => each in record.rules),
  );

  test('words are among them', () => {
    const words = Object.values(record.figures).filter(({ amount }) => amount === undefined);
    expect(words.length).toBeGreaterThan(10);
    expect(words.filter(({ rules }) => !rules || rules.length === 0)).toEqual([]);
  });

  test.each(moved.map((rule) => ({ id: rule.id, rule })))('$id', ({ id, rule }) => {
    const resting = restingOn(data, id);
    const moves = movableValues(rule)
      .flatMap((value) => value.moves)
      // A range that is upside down is refused, and rightly.
      .filter(({ how }) => how !== 'ends swapped');
    for (const { how, value } of moves) {
      const { differing } = under(changedRulebook(data, { [id]: value }));
      const untold = differing.filter(({ because }) => !because.some((each) => resting.has(each.rule)));
      expect(
        untold.map(({ name }) => name),
        how,
      ).toEqual([]);
    }
  });
});
