import { describe, expect, test } from 'vitest';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { recheck } from '../../src/job/recheck.ts';
import { type JobRecord, readRecord, writeRecord } from '../../src/job/record.ts';
import { changedRulebook } from '../../src/rulebook/changed.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { data, exampleEntries, exampleWith, planOf, rules } from './entries.ts';

const text = writeRecord(exampleEntries, planOf(exampleEntries), rules, data);

function recordOf(written: string): JobRecord {
  const read = readRecord(written);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
}
const record = recordOf(text);

describe('a record worked again', () => {
  test('comes out the same under the same rulebook', () => {
    const found = recheck(record, rules, data.rules);
    expect(found.ok && found.value).toMatchObject({ differing: [], changed: [] });
    expect(Object.keys(record.figures).length).toBeGreaterThan(100);
  });

  test('comes out the same where one of the two rulebooks tells how its derived values are worked out, as browsers don’t', () => {
    const derived = Object.keys(record.rules).filter((id) => 'formula' in (data.rules[id]?.value ?? {}));
    expect(derived).toContain('patch.layers.metal-side');
    const sent = Object.fromEntries(
      Object.entries(data.rules).map(([id, rule]) => {
        const { formula, ...value } = rule.value as typeof rule.value & { formula?: unknown };
        return [id, { ...rule, value: value as typeof rule.value }];
      }),
    );
    const found = recheck(record, rules, sent);
    expect(found.ok && found.value.changed).toEqual([]);
  });

  test('differs in the bags, and names the chord of the truss, where the chord is another', () => {
    const book = changedRulebook(data, {
      'framing.truss.chord-depth': { kind: 'exact', number: 3.5, unit: 'in' },
    });
    const found = recheck(record, openRulebook(book), book.rules);
    if (!found.ok) throw new Error('expected the record to be worked');
    const bags = found.value.differing.find(({ name }) => name === 'plan.bags');
    expect(bags?.before).toBe('35.8 bags');
    // A deeper chord leaves less room for fill.
    expect(Number.parseFloat(bags?.after ?? '')).toBeLessThan(35.8);
    expect(bags?.because.map(({ rule }) => rule)).toEqual(['framing.truss.chord-depth']);
    // What stands on no truss is as it was.
    expect(found.value.differing.map(({ name }) => name)).not.toContain('ladder.Ladder.foot');
  });

  test('prints two amounts that rounding would print alike with the digits that tell them apart', () => {
    const chord = data.rules['framing.truss.chord-depth']?.value;
    if (chord?.kind !== 'exact' || chord.number === undefined) throw new Error('expected one number');
    const book = changedRulebook(data, {
      'framing.truss.chord-depth': { ...chord, number: chord.number * 1.00001 },
    });
    const found = recheck(record, openRulebook(book), book.rules);
    if (!found.ok) throw new Error('expected the record to be worked');
    const names = found.value.differing.map(({ name }) => name);
    expect(names).toContain('plan.bags');
    for (const { name, before, after } of found.value.differing) expect(before, name).not.toBe(after);
    // A deeper chord leaves less room for fill, by less than a thousandth of a bag.
    const bags = found.value.differing.find(({ name }) => name === 'plan.bags');
    const [old, now] = [bags?.before, bags?.after].map((text) => Number.parseFloat(text ?? ''));
    expect(Math.abs((old ?? 0) - 35.8)).toBeLessThan(0.05);
    expect(now).toBeLessThan(old ?? 0);
    expect((old ?? 0) - (now ?? 0)).toBeLessThan(0.002);
  });

  test.each<[what: string, recorded: number, unit: string, listed: boolean]>([
    ['the last digit that a number holds', 1 + 2 ** -52, '', false],
    ['a part in a thousand million', 1 + 1e-10, '', false],
    ['a part in ten million', 1 + 1e-7, '', true],
    // 12 in to the foot: the same length told in another unit is no difference.
    ['its unit alone', 1 / 12, 'ft', false],
    ['its unit and a part in ten million', (1 + 1e-7) / 12, 'ft', true],
    ['a unit of something else', 1, 'lb', true],
  ])('of a figure that differs by %s', (_, by, unit, listed) => {
    const name = 'holes.back.1.along';
    const hole = record.figures[name];
    if (hole?.amount === undefined || hole.unit !== 'in') throw new Error('expected inches');
    const odd = { ...hole, amount: hole.amount * by, unit: unit || hole.unit };
    const found = recheck({ ...record, figures: { ...record.figures, [name]: odd } }, rules, data.rules);
    expect(found.ok && found.value.differing.map((each) => each.name)).toEqual(listed ? [name] : []);
  });

  test('tells a figure that differs with no changed rule behind it', () => {
    const odd: JobRecord = {
      ...record,
      figures: {
        ...record.figures,
        'plan.bags': { label: 'Bags', text: '40 bags', amount: 40, unit: 'bag', rules: [] },
      },
    };
    const found = recheck(odd, rules, data.rules);
    expect(found.ok && found.value.differing).toMatchObject([
      { name: 'plan.bags', before: '40 bags', because: [] },
    ]);
  });

  test('tells an amount that became words, and words that became an amount', () => {
    const { 'plan.bags': bags, 'plan.ceiling': ceiling } = record.figures;
    if (!bags || !ceiling) throw new Error('expected both to be recorded');
    const { amount: _amount, unit: _unit, ...words } = bags;
    const odd: JobRecord = {
      ...record,
      figures: {
        ...record.figures,
        'plan.bags': { ...words, text: 'as many as it takes' },
        'plan.ceiling': { ...ceiling, amount: 1, unit: 'lb' },
      },
    };
    const found = recheck(odd, rules, data.rules);
    expect(found.ok && found.value.differing.map(({ name, before }) => [name, before])).toEqual([
      ['plan.bags', 'as many as it takes'],
    ]);
  });

  test('names a rule that is no more, and one that only the figure of today, or that of then, rests on', () => {
    const odd: JobRecord = {
      ...record,
      rules: {
        ...record.rules,
        'framing.gone': { kind: 'exact', number: 2, unit: 'in' },
        'fill.bag.near-enough': { kind: 'at-most', number: 90, unit: 'percent' },
      },
      figures: {
        ...record.figures,
        'plan.bags': { label: 'Bags', text: '40 bags', amount: 40, unit: 'bag', rules: ['framing.gone'] },
        'plan.bags_to_load': { label: 'Bags to load', text: '70 bags', amount: 70, unit: 'bag', rules: [] },
      },
    };
    const found = recheck(odd, rules, data.rules);
    if (!found.ok) throw new Error('expected the record to be worked');
    const behind = (name: string) =>
      found.value.differing.find((each) => each.name === name)?.because.map(({ rule }) => rule);
    expect([...found.value.changed].sort()).toEqual(['fill.bag.near-enough', 'framing.gone']);
    expect(behind('plan.bags')).toEqual(['framing.gone']);
    expect(behind('plan.bags_to_load')).toEqual(['fill.bag.near-enough']);
  });

  test('holds the words of the cautions of its plan', () => {
    const { cautions } = JSON.parse(text);
    for (const { id } of planOf(exampleEntries).cautions) expect(Object.keys(cautions)).toContain(id);
  });

  test('says with a saving that differs what a seller must say with it', () => {
    const name = Object.keys(record.figures).find((each) => each.startsWith('savings.')) ?? '';
    const odd = {
      ...record,
      figures: { ...record.figures, [name]: { label: 'Saved', text: '$9', rules: [] } },
    };
    const found = recheck(odd, rules, data.rules);
    expect(found.ok && found.value.differing.map((each) => each.name)).toEqual([name]);
    expect(found.ok && found.value.cautions).toContain('caution.savings.vary');
    // 16 CFR 460.19(b), as the rule words it.
    expect(text).toContain('Savings vary. Find out why in the seller');
  });

  test('names the stop where one holds the plan now, and gives none of the figures behind it', () => {
    const held = { ...record, job: exampleWith({ 'survey.leaks': 'leaks found' }) };
    const found = recheck(held, rules, data.rules);
    const differing = found.ok ? found.value.differing : [];
    expect(differing.find(({ name: each }) => each === 'plan.held')).toMatchObject({
      before: 'none',
      after: 'caution.before.wet',
    });
    expect(differing.find(({ name: each }) => each === 'plan.bags')).toMatchObject({
      after: undefined,
      stops: ['caution.before.wet'],
    });
    // The stop is told before what stands with the figures that are still there.
    expect(found.ok && found.value.cautions[0]).toBe('caution.before.wet');
  });

  test('tells a figure that is no more, and one that is new', () => {
    const { 'plan.bags': bags, ...rest } = record.figures;
    if (!bags) throw new Error('expected the bags to be recorded');
    const found = recheck({ ...record, figures: { ...rest, 'plan.old': bags } }, rules, data.rules);
    const differing = found.ok ? found.value.differing : [];
    expect(differing.map(({ name, before, after }) => [name, before, after])).toEqual([
      ['plan.old', '35.8 bags', undefined],
      ['plan.bags', undefined, '35.8 bags'],
    ]);
  });

  test('with a job that can’t be read any more, says which entry', () => {
    const found = recheck({ ...record, job: { ...record.job, colour: 'blue' } }, rules, data.rules);
    expect(found.ok ? [] : found.problems.map(sentence)).toEqual([expect.stringContaining('"colour"')]);
  });
});

describe('a file that is no record is refused in a sentence', () => {
  const changed = (more: object) => JSON.stringify({ ...JSON.parse(text), ...more });
  test.each([
    ['not JSON', '{', 'not JSON'],
    ['a job file', '{"format":"heel-to-ridge job"}', 'another kind'],
    ['a newer record', changed({ version: 4 }), 'version 4, made by a newer copy of this site'],
    ['of no version', changed({ version: undefined }), 'version'],
    [
      'with a job of a newer copy',
      changed({ job: { ...JSON.parse(text).job, version: 99 } }),
      'Job file (version): found version 99, made by a newer copy',
    ],
    ['with bare entries in place of a job file', changed({ job: exampleEntries }), 'Job file (format)'],
    ['without figures', changed({ figures: undefined }), 'a part missing'],
    ['with a figure that is none', changed({ figures: { bags: 3 } }), 'the figure "bags"'],
    [
      'with an amount in words',
      changed({ figures: { b: { label: 'x', text: 'y', rules: [], amount: 'z' } } }),
      'the figure "b"',
    ],
    ['without its rulebook', changed({ rulebook: undefined }), 'a part missing'],
    ['without its rules', changed({ rules: undefined }), 'a part missing'],
    [
      'with an amount of no unit',
      changed({ figures: { b: { label: 'x', text: '3', rules: [], amount: 3 } } }),
      'the figure "b"',
    ],
    [
      'with an amount that rests on no list of rules',
      changed({ figures: { b: { label: 'x', text: '3 in', amount: 3, unit: 'in' } } }),
      'the figure "b"',
    ],
    [
      'with a rule that is no id',
      changed({ figures: { b: { label: 'x', text: 'y', rules: [7] } } }),
      'the figure "b"',
    ],
    ['a list', '[]', 'Record: found JSON that is not a set'],
    ['far too long', ' '.repeat(4_000_001), '4000001 characters'],
  ])('%s', (_, given, says) => {
    const read = readRecord(given);
    expect(read.ok ? '' : read.problems.map(sentence).join()).toContain(says);
  });
});
