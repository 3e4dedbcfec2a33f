import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patchKit } from '../../../src/calc/patch/kit.ts';
import { patchLayers } from '../../../src/calc/patch/layers.ts';
import { format } from '../../../src/quantity/format.ts';
import { valueChange } from '../../../src/rulebook/changes/judge.ts';
import { sentRules } from '../../../src/rulebook/generate.ts';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { resolveLocal } from '../../../src/rulebook/local/resolve.ts';
import { formatProblem } from '../../../src/rulebook/problem.ts';
import { openRulebook, type RulebookData } from '../../../src/rulebook/rulebook.ts';
import type { TableValue } from '../../../src/rulebook/schema.ts';
import { valueHeadline } from '../../../src/rulebook/value-text.ts';
import { agency, base, context, EXAMPLE, inLayer, resolved, setting } from './folder.ts';

const FLUE = 'clearance.flue.to-combustibles';
const GUARDRAIL = 'safety.fall.guardrail-height';
const OVERLAP = 'patch.layers.overlap';
const HOLE = 'access.roof-holes.diameter';

describe('the example', () => {
  const { data, local, problems } = resolveLocal(base, [readLayer(EXAMPLE)], context);
  test('has no mistakes, three notes, two stricter values, a caution and a page', () => {
    expect(problems).toEqual([]);
    expect(local.notes).toHaveLength(3);
    expect(local.changes.map(({ rule, kind }) => [rule, kind])).toEqual([
      [FLUE, 'stricter'],
      [OVERLAP, 'stricter'],
    ]);
    expect([local.cautions.length, local.pages.length]).toEqual([1, 1]);
  });
  test('its version stands beside the rulebook’s', () =>
    expect(data.version).toBe(`${base.version} + Harrow Valley 2026-10-01`));
  /** By hand: a hole of 6 in; each layer overlaps the one below by 3 in all round: 6 + 2*3 = 12, 12 + 2*3 = 18. */
  test.each([
    [FLUE, 3],
    ['patch.layers.metal-side', 12],
    ['patch.layers.membrane-side', 18],
  ])('%s comes to %d in', (id, number) =>
    expect(data.rules[id]?.value).toMatchObject({ number, unit: 'in' }),
  );
  test('what follows from a change is told', () =>
    expect(local.recomputed).toContain('patch.layers.metal-side'));
  test('a value carries its local source, with the document of the agency', () => {
    expect(data.rules[FLUE]?.source).toMatchObject({ document: 'harrow-valley.notice-12' });
    expect(data.documents['harrow-valley.notice-12']?.document).toBe('Harrow Valley notice 12');
  });
});

describe('a document that could not be read is told once', () => {
  const values = setting(
    FLUE,
    '{ kind: at-least, number: 3, unit: in }',
    '{ kind: document, document: notice, clause: x, read: read }',
  );
  const notice = 'notice:\n  kind: regulation\n  document: A notice\n  title: Flues\n';
  test.each([
    ['by its entry', notice, /^sources.yaml:2:3 {2}found no "edition"/],
    ['by its file', `${notice}\tedition: "2026"\n`, /^sources.yaml:5:1 {2}found a tab/],
  ])('%s, and not where a value names it', (_, sources, expected) => {
    const problems = resolved({ 'values.yaml': values, 'sources.yaml': sources }).problems.map(formatProblem);
    for (const each of problems) expect(each).toMatch(/^sources\.yaml/);
    expect(problems[0]).toMatch(expected);
  });
});

type Limits = Pick<TableValue, 'columns' | 'rows'>;

/** The loads that ceiling boards carry, as an agency would set them. */
function limits(changed: (of: Limits) => object): string {
  const value = base.rules['ceiling.board.limit']?.value;
  if (value?.kind !== 'table') throw new Error('found no table of limits, expected one');
  return setting('ceiling.board.limit', JSON.stringify({ ...value, ...changed(value) }));
}

describe('what can not stand is refused at its place', () => {
  const told = (files: Record<string, string>, more = context) =>
    resolved(files, more).problems.map(formatProblem);
  test.each<[what: string, values: string, expected: RegExp]>([
    [
      'a looser clearance',
      setting(FLUE, '{ kind: at-least, number: 1, unit: in }'),
      /^values.yaml:2:10 {2}found at least 1 in, looser than the rulebook's at least 2 in .*\(looser-value\)$/,
    ],
    [
      'a looser one in another unit',
      setting(FLUE, '{ kind: at-least, number: 0.1, unit: ft }'),
      /looser-value/,
    ],
    ['another dimension', setting(FLUE, '{ kind: at-least, number: 3, unit: lb }'), /found the unit "lb"/],
    ['another kind', setting(FLUE, '{ kind: at-most, number: 3, unit: in }'), /found the kind "at-most"/],
    [
      'a range that moves',
      setting(GUARDRAIL, '{ kind: between, low: 40, high: 46, unit: in }'),
      /looser-value/,
    ],
    ['an empty range', setting(GUARDRAIL, '{ kind: between, low: 44, high: 41, unit: in }'), /empty-range/],
    [
      'a misspelt id',
      setting('clearance.flue.to-combustible', '{ kind: at-least, number: 3, unit: in }'),
      /^values.yaml:1:1 .*did you mean "clearance.flue.to-combustibles"/,
    ],
    [
      'a derived value',
      setting('patch.layers.metal-side', '{ kind: exact, number: 20, unit: in }'),
      /which is worked out {2}expected a value for what it rests on/,
    ],
    [
      'no reason',
      `${FLUE}:\n  value: { kind: at-least, number: 3, unit: in }\n  source: { kind: practice }\n`,
      /found no "reason"/,
    ],
    [
      'no source',
      `${FLUE}:\n  value: { kind: at-least, number: 3, unit: in }\n  reason: So.\n`,
      /found no "source"/,
    ],
    [
      'an unknown document',
      setting(
        FLUE,
        '{ kind: at-least, number: 3, unit: in }',
        '{ kind: document, document: ircc, clause: x, read: read }',
      ),
      /did you mean "irc"/,
    ],
    [
      'a reading of tomorrow',
      setting(
        FLUE,
        '{ kind: at-least, number: 3, unit: in }',
        '{ kind: document, document: irc, clause: x, read: read, on: 2026-11-26 }',
      ),
      /date-in-future/,
    ],
    ['no number', setting(FLUE, '{ kind: at-least, number: .nan, unit: in }'), /shape/],
    [
      'a formula',
      setting(OVERLAP, `{ kind: exact, unit: in, formula: { rule: ${HOLE} } }`),
      /found a formula {2}expected a number/,
    ],
    [
      'other words for a choice',
      setting('ceiling.board.kinds', '{ kind: one-of, choices: [wood] }'),
      /found other words for a choice/,
    ],
    ['a row fewer', limits(({ columns, rows }) => ({ columns, rows: rows.slice(1) })), /found other rows/],
    [
      'a row under another key',
      limits(({ columns, rows: [first = [], ...rows] }) => ({
        columns,
        rows: [[first[0], Number(first[1]) + 1, ...first.slice(2)], ...rows],
      })),
      /found other rows/,
    ],
    [
      'a word for a number',
      limits(({ columns, rows: [first = [], ...rows] }) => ({
        columns,
        rows: [[...first.slice(0, 2), 'none'], ...rows],
      })),
      /found other rows/,
    ],
    [
      'another column',
      limits(({ columns: [first, ...columns], rows }) => ({
        columns: [{ ...first, title: 'Kind' }, ...columns],
        rows,
      })),
      /found other columns/,
    ],
    [
      'one higher limit of a board, and all others lower',
      limits(({ columns, rows }) => ({
        columns,
        rows: rows.map(([kind, framing, limit], place) => [
          kind,
          framing,
          Number(limit) * (place === 0 ? 1.1 : 0.9),
        ]),
      })),
      /looser than the rulebook's/,
    ],
    [
      'a value for safety that has no stricter way',
      setting('safety.ladder.foot', '{ kind: exact, number: 20, unit: percent }'),
      /which can not be called stricter than .*\(not-comparable\)/,
    ],
  ])('%s', (_, values, expected) => {
    const problems = told({ 'values.yaml': values });
    expect(problems.join('\n')).toMatch(expected);
    expect(problems).toHaveLength(1);
  });

  /** By hand: a hundredth and a hundred times 2 in, 12 and 16 ft, 35 ppm, 40 and 50 °F. */
  describe('a number of another size than the rulebook’s', () => {
    const SPACING = 'access.roof-holes.spacing';
    const COLD = 'patch.sealant.coldest-surface';
    const HOT = 'safety.heat.moderate-from';
    test.each<[what: string, id: string, value: string, expected: RegExp]>([
      [
        'in another unit by a slip',
        OVERLAP,
        '{ kind: exact, number: 3000000, unit: ft }',
        /^values.yaml:2:10 {2}found 3000000 ft {2}expected 0.00166667 ft to 16.6667 ft, no more than 100 times off the rulebook’s value {2}\(local-size\)$/,
      ],
      [
        'a little more than a hundred times',
        OVERLAP,
        '{ kind: exact, number: 201, unit: in }',
        /found 201 in {2}expected 0.02 in to 200 in, /,
      ],
      ['a little less than a hundredth', HOLE, '{ kind: exact, number: 0.059, unit: in }', /local-size/],
      ['nothing', HOLE, '{ kind: exact, number: 0, unit: in }', /found 0 in {2}expected .*\(local-size\)/],
      ['below nothing', HOLE, '{ kind: exact, number: -6, unit: in }', /local-size/],
      [
        'the upper end of a range',
        SPACING,
        '{ kind: between, low: 12, high: 1601, unit: ft }',
        /found 1601 ft {2}expected 0.16 ft to 1600 ft/,
      ],
      [
        'the lower end of one below 0',
        SPACING,
        '{ kind: between, low: -1, high: 16, unit: ft }',
        /local-size/,
      ],
      [
        'a temperature',
        COLD,
        '{ kind: between, low: 40, high: 5001, unit: F }',
        /found 5001 °F {2}expected −5000 °F to 5000 °F/,
      ],
    ])('%s is told with its bounds', (_, id, value, expected) => {
      const problems = told({ 'values.yaml': setting(id, value) });
      expect(problems.join('\n')).toMatch(expected);
      expect(problems).toHaveLength(1);
    });
    test.each<[what: string, id: string, value: string]>([
      ['a hundred times', OVERLAP, '{ kind: exact, number: 200, unit: in }'],
      ['the same in another unit', OVERLAP, '{ kind: exact, number: 508, unit: cm }'],
      ['a hundredth', HOLE, '{ kind: exact, number: 0.06, unit: in }'],
      ['a range from 0', SPACING, '{ kind: between, low: 0, high: 16, unit: ft }'],
      ['a temperature below 0', HOT, '{ kind: at-least, number: -5, unit: F }'],
    ])('but %s may stand', (_, id, value) => expect(told({ 'values.yaml': setting(id, value) })).toEqual([]));

    test('in a cell of a table it is told as one', () => {
      const [id, rule] = Object.entries(base.rules).find(
        ([, { safety, value }]) => safety === undefined && value.kind === 'table',
      ) ?? ['', undefined];
      if (rule?.value.kind !== 'table') throw new Error('expected such a rule');
      const { columns, rows } = rule.value;
      const place = columns.findIndex(({ key, unit }) => key === undefined && unit !== undefined);
      const moved = (times: number) =>
        setting(
          id,
          JSON.stringify({
            ...rule.value,
            rows: rows.map((row, line) =>
              line > 0
                ? row
                : row.map((cell, at) => (at === place && typeof cell === 'number' ? cell * times : cell)),
            ),
          }),
        );
      expect(told({ 'values.yaml': moved(99) })).toEqual([]);
      expect(told({ 'values.yaml': moved(101) })).toEqual([expect.stringMatching(/\(local-size\)$/)]);
    });
  });

  test('every mistake of every file at once', () => {
    const problems = told({
      'agency.yaml': agency().replace('area:', 'aera:'),
      'values.yaml': setting(FLUE, '{ kind: at-least, number: three, unit: in }'),
      'notes.yaml': 'one:\n  title: x\n  says: 3\n  on: [do/patching]\n',
      'nots.yaml': '',
    });
    expect(problems).toHaveLength(4);
  });

  test('a safety value without a stricter way', () => {
    const [id, rule] = Object.entries(base.rules).find(
      ([, { safety, value }]) => safety === 'as it stands' && value.kind === 'exact',
    ) ?? ['', undefined];
    const value = rule?.value;
    if (value?.kind !== 'exact') throw new Error('expected such a rule');
    const written = `{ kind: exact, number: ${(value.number ?? 0) + 1}, unit: ${JSON.stringify(value.unit)} }`;
    expect(told({ 'values.yaml': setting(id, written) }).join()).toMatch(/\(not-comparable\)/);
  });

  test('a note on a page that is not there', () => {
    const notes = 'one:\n  title: x\n  says: y\n  on: [do/patchin]\n';
    expect(told({ 'notes.yaml': notes })).toEqual([
      'notes.yaml:4:8  found "do/patchin"  expected the id of a rule or the path of a page; did you mean "do/patching"?  (unknown-place)',
    ]);
  });

  describe('made for an earlier rulebook', () => {
    const flue = base.rules[FLUE];
    if (!flue) throw new Error('expected the rule');
    const earlier: RulebookData = {
      ...base,
      version: '2020.1',
      rules: { ...base.rules, [FLUE]: { ...flue, value: { kind: 'at-least', number: 1, unit: 'in' } } },
    };
    const files = {
      'agency.yaml': agency('a', '"2020.1"'),
      'values.yaml': setting(FLUE, '{ kind: at-least, number: 3, unit: in }'),
    };
    test('it stops, and names what changed of what it sets', () => {
      const problems = told(files, { ...context, releases: [earlier] as never });
      expect(problems).toHaveLength(2);
      expect(problems[0]).toMatch(
        /based on 2020.1; changed since, of the values set here: clearance.flue.to-combustibles/,
      );
      expect(problems[1]).toMatch(/^values.yaml:1:1 .*from at least 1 in to at least 2 in/);
    });
    test('where its value is as it was, what of it is not is named, and how to see it whole', () => {
      const reread: RulebookData = {
        ...earlier,
        rules: { ...base.rules, [FLUE]: { ...flue, source: { kind: 'practice', remark: 'As it was.' } } },
      };
      expect(told(files, { ...context, releases: [reread] as never })[1]).toMatch(
        /changed \(source\): still at least 2 in, but another source, .*expected your value held against the new one, which npm run rules:diff -- 2020\.1 now shows whole/,
      );
    });
    test('it stops where nothing is kept to compare with', () => expect(told(files)).toHaveLength(1));
    test('a later one stops too', () =>
      expect(told({ 'agency.yaml': agency('a', '"2999.1"') }).join()).toMatch(/no later rulebook/));
    test('a number without quotes is told so', () =>
      expect(told({ 'agency.yaml': agency('a', '2026.1') }).join()).toMatch(/year and number in quotes/));
  });
});

describe('several folders', () => {
  const layerOf = (id: string, values: string) =>
    inLayer({ 'agency.yaml': agency(id, undefined, `Valley ${id}`), 'values.yaml': values }, readLayer);
  const comparable = Object.values(base.rules).filter(
    ({ safety, value }) =>
      safety !== undefined &&
      safety !== 'as it stands' &&
      value.kind !== 'one-of' &&
      !(value.kind === 'exact' && value.formula !== undefined),
  );
  const stricterBy = (share: number, { value, safety }: (typeof comparable)[number]) => {
    const up = safety === 'lower is stricter' ? -1 : 1;
    const move = (number: number, way = up) => number + way * share * (Math.abs(number) || 1);
    if (value.kind === 'between')
      return safety === 'narrower is stricter'
        ? {
            ...value,
            low: value.low + share * (value.high - value.low),
            high: value.high - share * (value.high - value.low),
          }
        : { ...value, low: move(value.low), high: move(value.high) };
    if (value.kind === 'table')
      return {
        ...value,
        rows: value.rows.map((row) =>
          row.map((cell, place) =>
            value.columns[place]?.key !== undefined || typeof cell === 'string'
              ? cell
              : typeof cell === 'number'
                ? move(cell)
                : [move(cell[0]), move(cell[1])],
          ),
        ),
      };
    return value.kind === 'one-of' ? value : { ...value, number: move(value.number ?? 0) };
  };

  test('in whatever order, they come to the same; each safety value as strict as the strictest, and the rulebook untouched', () => {
    const shares = fc.array(fc.constantFrom(0, 0.05, 0.1, 0.2), { minLength: 4, maxLength: 4 });
    const some = fc.uniqueArray(fc.constantFrom(...comparable), {
      minLength: 1,
      maxLength: 3,
      selector: ({ id }) => id,
    });
    fc.assert(
      fc.property(
        some,
        shares,
        fc.shuffledSubarray(['a', 'b', 'c', 'd'], { minLength: 4 }),
        (rules, by, order) => {
          const layers = ['a', 'b', 'c', 'd'].map((id, place) =>
            layerOf(
              id,
              rules
                .map((rule) => setting(rule.id, JSON.stringify(stricterBy(by[place] ?? 0, rule))))
                .join(''),
            ),
          );
          const inOrder = resolveLocal(base, layers, context);
          const shuffled = resolveLocal(
            base,
            order.map((id) => layers['abcd'.indexOf(id)] as never),
            context,
          );
          expect(shuffled.data).toEqual(inOrder.data);
          expect(new Set(shuffled.problems.map(formatProblem))).toEqual(
            new Set(inOrder.problems.map(formatProblem)),
          );
          if (inOrder.problems.length > 0) return;
          for (const rule of rules)
            for (const layer of layers) {
              const set = layer.values.find(({ id }) => id === rule.id)?.entry.value;
              const after = inOrder.data.rules[rule.id]?.value;
              if (set && after)
                expect([undefined, 'stricter']).toContain(valueChange(set, after, rule.safety));
            }
        },
      ),
      { numRuns: 40 },
    );
  });

  test.each<
    [
      what: string,
      one: readonly [id: string, short: string],
      two: readonly [id: string, short: string],
      expected: RegExp,
    ]
  >([
    [
      'the same id',
      ['a', 'Valley'],
      ['a', 'Hills'],
      /agency.yaml:1:5 {2}found "a", which another folder has too/,
    ],
    ['the same name in short', ['a', 'Valley'], ['b', 'Valley'], /agency.yaml:3:8 {2}found "Valley", which /],
    ['it with other capitals', ['a', 'Valley'], ['b', 'VALLEY'], /agency.yaml:3:8 {2}found "VALLEY", which /],
    [
      'one name spaced out',
      ['a', 'East Side'],
      ['b', 'East  Side'],
      /agency.yaml:3:8 {2}found "East {2}Side", which /,
    ],
    ['both', ['a', 'Valley'], ['a', 'Valley'], /agency.yaml:1:5 {2}found "a", which another folder has too/],
  ])('two with %s are refused, once', (_, one, two, expected) => {
    const layers = [one, two].map(([id, short]) =>
      inLayer({ 'agency.yaml': agency(id, undefined, short) }, readLayer),
    );
    const problems = resolveLocal(base, layers, context).problems.map(formatProblem);
    expect(problems).toEqual([expect.stringMatching(expected)]);
  });

  test('two ranges that share nothing are refused', () => {
    const layers = [
      layerOf('a', setting(GUARDRAIL, '{ kind: between, low: 39, high: 41, unit: in }')),
      layerOf('b', setting(GUARDRAIL, '{ kind: between, low: 42, high: 45, unit: in }')),
    ];
    const { problems } = resolveLocal(base, layers, context);
    expect(problems.map(({ check }) => check)).toEqual(['empty-range', 'empty-range']);
  });

  test('ends from both, in two units', () => {
    const layers = [
      layerOf('a', setting(GUARDRAIL, '{ kind: between, low: 40, high: 45, unit: in }')),
      layerOf('b', setting(GUARDRAIL, '{ kind: between, low: 3.25, high: 3.5, unit: ft }')),
    ];
    const { data, problems } = resolveLocal(base, layers, context);
    expect(problems).toEqual([]);
    expect(data.rules[GUARDRAIL]?.value).toEqual({ kind: 'between', low: 40, high: 42, unit: 'in' });
  });

  test('two values for what is no safety value clash, and both places are told, with whose the other is', () => {
    const id = 'access.roof-holes.diameter';
    const layers = ['a', 'b'].map((each, place) =>
      layerOf(each, setting(id, `{ kind: exact, number: ${5 + place}, unit: in }`)),
    );
    const { problems } = resolveLocal(base, layers, context);
    expect(problems.map(({ check, found }) => [check, found])).toEqual([
      ['local-clash', `5 in for "${id}", and 6 in in the folder of b`],
      ['local-clash', `6 in for "${id}", and 5 in in the folder of a`],
    ]);
  });

  test.each([
    ['the one that has the strictest', '{ kind: between, low: 41, high: 43, unit: in }', 'Two'],
    ['both, where each gives an end', '{ kind: between, low: 39, high: 42, unit: in }', 'One and Two'],
  ])('a value of two folders is that of %s', (_, second, by) => {
    const named = (id: string, short: string, value: string) =>
      inLayer(
        {
          'agency.yaml': agency(id, undefined, short),
          'values.yaml': setting(GUARDRAIL, value),
        },
        readLayer,
      );
    const one = named('one', 'One', '{ kind: between, low: 40, high: 45, unit: in }');
    const { data } = resolveLocal(base, [one, named('two', 'Two', second)], context);
    expect(data.rules[GUARDRAIL]?.by).toBe(by);
  });

  /** By hand: 3 in is 7.62 cm; 9 cm is more, 7 cm less. */
  test.each([
    ['the strictest alone', ['{ kind: at-least, number: 9, unit: cm }'], 'at least 9 cm (3 9/16 in)'],
    [
      'the strictest of two units, whichever comes first',
      ['{ kind: at-least, number: 3, unit: in }', '{ kind: at-least, number: 9, unit: cm }'],
      'at least 9 cm (3 9/16 in)',
    ],
    [
      'the stricter in inches',
      ['{ kind: at-least, number: 7, unit: cm }', '{ kind: at-least, number: 3, unit: in }'],
      'at least 3 in',
    ],
  ])('a value shows as it was set, with the tape beside it: %s', (_, values, shown) => {
    const layers = values.map((value, place) => layerOf('abc'[place] as string, setting(FLUE, value)));
    for (const order of [layers, layers.toReversed()]) {
      const { data, problems } = resolveLocal(base, order, context);
      expect(problems).toEqual([]);
      expect(valueHeadline(data.rules[FLUE]?.value as never)).toBe(shown);
    }
  });

  test.each([
    ['in inches', '{ kind: exact, number: 8, unit: in }', '8 in'],
    ['in centimetres', '{ kind: exact, number: 20, unit: cm }', '20 cm (7 7/8 in)'],
  ])('a hole of another size has a cap of that size, %s', (_, value, shown) => {
    const { data } = resolveLocal(
      base,
      [layerOf('a', setting('access.roof-holes.diameter', value))],
      context,
    );
    for (const id of ['access.roof-holes.diameter', 'patch.layers.cap-diameter'])
      expect(valueHeadline(data.rules[id]?.value as never)).toBe(shown);
    const book = openRulebook(data);
    expect(format(patchLayers(undefined, book).cap)).toBe(shown);
    expect(format(patchKit(5, undefined, {}, book).layers.cap)).toBe(shown);
  });

  test('two folders of one name', () => {
    const { problems } = resolveLocal(base, [layerOf('a', ''), layerOf('a', '')], context);
    expect(problems.map(({ check }) => check)).toEqual(['local-agency']);
  });
});

describe('what an agency says beside the rulebook', () => {
  const mist = (on: string, source = '{ kind: practice }') => ({
    'cautions.yaml': `mist:\n  level: warn\n  says: Mist makes it slippery.\n  do: Wait until it is dry.\n  on: [${on}]\n  source: ${source}\n`,
  });

  test('stands at each caution that it names, the first and the last', () => {
    const { data, problems } = resolved(mist('caution.roof.falls, caution.roof.carries-crew'));
    expect(problems).toEqual([]);
    const at = (id: string) => data.cautions[id]?.beside?.map(({ says }) => says);
    expect(at('caution.roof.falls')).toEqual(['Mist makes it slippery.']);
    expect(at('caution.roof.carries-crew')).toEqual(['Mist makes it slippery.']);
    expect(at('caution.before.wet')).toBeUndefined();
  });

  // The day of these tests is 2026-11-25.
  test.each<[day: string, sound: boolean]>([
    ['2026-11-24', true],
    ['2026-11-25', true],
    ['2026-11-26', false],
  ])('read on %s', (day, sound) => {
    const source = `{ kind: document, document: doe-sws, clause: 'x', read: reprint, on: '${day}' }`;
    const found = resolved(mist('caution.roof.falls', source)).problems.map(({ check }) => check);
    expect(found).toEqual(sound ? [] : ['date-in-future']);
  });
});

describe('what follows from a local value', () => {
  /** The rulebook with one of its rules changed: none that is derived is for safety yet. */
  const withRule = (id: string, more: Readonly<Record<string, unknown>>): RulebookData => ({
    ...base,
    rules: { ...base.rules, [id]: { ...base.rules[id], ...more } as RulebookData['rules'][string] },
  });
  const checks = (book: RulebookData, ...values: string[]) =>
    inLayer({ 'values.yaml': values.join('') }, (folder) =>
      resolveLocal(book, [readLayer(folder)], context).problems.map(({ check }) => check),
    );
  const hole = (number: number) => setting(HOLE, `{ kind: exact, number: ${number}, unit: in }`);

  // By hand: a hole of 6 in has metal of 6 + 2*2 = 10 in, one of 5 in 9 in, one of 7 in 11 in.
  test.each<[title: string, safety: string | undefined, number: number, expected: readonly string[]]>([
    ['may not be looser, if it is for safety', 'higher is stricter', 5, ['looser-value']],
    ['may be stricter', 'higher is stricter', 7, []],
    ['may not be looser in the other direction', 'lower is stricter', 7, ['looser-value']],
    ['may be anything, if it is not for safety', undefined, 5, []],
  ])('%s', (_, safety, number, expected) => {
    expect(checks(withRule('patch.layers.metal-side', { safety }), hole(number))).toEqual(expected);
  });

  test('each value says whose it is, and of one worked out again from whose it follows', () => {
    const { data } = resolved({ 'values.yaml': hole(7) });
    expect(data.rules[HOLE]?.by).toBe('Valley');
    expect(data.rules['patch.layers.metal-side']?.by).toBe('follows from Valley');
    expect(data.rules[FLUE]?.by).toBeUndefined();
    expect(sentRules(data, () => true).rules[HOLE]?.by).toBe('Valley');
  });

  test('a value said again as the rulebook has it stays the rulebook’s', () => {
    expect(resolved({ 'values.yaml': hole(6) }).data.rules[HOLE]?.by).toBeUndefined();
  });

  test('what was worked out by hand from it has to be set too', () => {
    const byHand = withRule('patch.layers.cap-diameter', { value: { kind: 'exact', number: 6, unit: 'in' } });
    expect(checks(byHand, hole(7))).toEqual(['local-derived']);
    const cap = setting('patch.layers.cap-diameter', '{ kind: exact, number: 7, unit: in }');
    expect(checks(byHand, hole(7), cap)).toEqual([]);
  });
});
