import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculations } from '../../../src/calc/calculations.ts';
import { type Answer, type AnyCalculation, answer } from '../../../src/calc/declare/calculation.ts';
import type { QuantityField } from '../../../src/calc/declare/field.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { parseQuantity } from '../../../src/quantity/parse.ts';
import { amountIn } from '../../../src/quantity/quantity.ts';
import { type UnitName, units } from '../../../src/quantity/units.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import {
  digits,
  type Entries,
  fieldsFrom,
  type Leaf,
  leavesIn,
  rewritten,
  unitsOf,
  withAt,
} from './entries.ts';
import { differences, unsound } from './sound.ts';

const { data, files } = theProject();
const rules = openRulebook(data);

interface Base {
  readonly title: string;
  readonly entries: Entries;
}

/** What each calculation is tried with: its own example, and every set of entries that its checks give, but those to be refused. */
const basesOf = ({ name, example }: AnyCalculation): Base[] => [
  { title: 'its example', entries: example },
  ...files.checks
    .filter(({ entry }) => entry.refuses === undefined && entry.calculation === name)
    .map(({ entry }) => ({ title: entry.title, entries: entry.given })),
];

const each = calculations.map((one) => ({ name: one.name, one, bases: basesOf(one) }));

const quantitiesIn = (one: AnyCalculation, entries: Entries) =>
  leavesIn(one.fields, entries).flatMap((leaf) =>
    leaf.field.kind === 'quantity' ? [{ ...leaf, field: leaf.field as QuantityField }] : [],
  );

const worked = (one: AnyCalculation, entries: Entries): Answer => {
  const read = answer(one, entries, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
};

describe('a field that may not be left out is named where it is', () => {
  test.each(each)('$name', ({ one, bases }) => {
    const wrong: string[] = [];
    for (const { title, entries } of bases)
      for (const { way, field } of leavesIn(one.fields, entries)) {
        if (field.optional) continue;
        for (const empty of [undefined, null, '', '  ']) {
          const read = answer(one, withAt(entries, way, empty), rules);
          const says = read.ok ? 'answered' : read.problems.map(sentence).join(' ');
          // Of a list it says which one: "Tare weight (fill 3)".
          const place = way.find((key) => /^\d+$/.test(key));
          const [label, end] =
            place === undefined ? ['', field.label] : [`${field.label} (`, ` ${Number(place) + 1})`];
          if (!says.includes(label) || !says.includes(`${end} (${way.join('.')}): found nothing; expected `))
            wrong.push(`${title}: without ${way.join('.')}: ${says}`);
        }
      }
    expect(wrong).toEqual([]);
  });
});

describe('the same figures come out, whatever units are typed', () => {
  test.each(each)('$name', ({ name, one, bases }) => {
    const wrong: string[] = [];
    let tried = 0;
    for (const { title, entries } of bases) {
      const plain = worked(one, entries);
      for (const { way, field, given } of quantitiesIn(one, entries))
        for (const unit of unitsOf(field, given)) {
          const other = rewritten(field, given, unit);
          const found = answer(one, withAt(entries, way, other), rules);
          const off = found.ok ? differences(name, plain, found.value) : found.problems.map(sentence);
          if (off.length > 0)
            wrong.push(`${title}: ${way.join('.')} as ${other} for ${given}: ${off.join('; ')}`);
          tried += 1;
        }
    }
    expect(wrong).toEqual([]);
    expect(tried > 0).toBe(bases.some(({ entries }) => quantitiesIn(one, entries).length > 0));
  });
});

/** Amounts that a slip of the finger types, or somebody who wants to see what happens. */
const oddAmounts = [0, -1, -1e-9, 1e-12, 1e-6, 0.01, 1, 13.75, 1000, 1e6, 1e12, 1e30, 9.9e48];
const oddCounts: readonly unknown[] = [
  0,
  -1,
  1,
  1.5,
  7,
  1e9,
  '1e3',
  '-3',
  Number.NaN,
  Number.POSITIVE_INFINITY,
];
const oddWords: readonly unknown[] = ['x', '<b>', '--3 ft', '1/0 in', '1e5 ft', '٣ ft', {}, [], true, 12];

/** What no other field has a say in: words are read, or not, whatever stands beside them, and so are units. */
function unreadable({ field }: Leaf): unknown[] {
  switch (field.kind) {
    case 'quantity':
      return [
        ...unitsOf(field).flatMap((unit) => oddAmounts.map((amount) => `${digits(amount)} ${unit}`)),
        ...oddWords,
        'NaN',
        'Infinity in',
      ];
    case 'count':
    case 'year':
      return [...oddCounts, ...oddWords];
    default:
      return [...oddWords];
  }
}

/** What can be read, or is too much or too little beside the other entries. */
function oddFor({ field }: Leaf): unknown[] {
  switch (field.kind) {
    case 'quantity': {
      const [unit] = unitsOf(field);
      return [
        ...oddAmounts.map((amount) => `${digits(amount)} ${unit}`),
        ...(field.most === undefined ? [] : [field.most]),
      ];
    }
    case 'count':
    case 'year':
      return [...oddCounts];
    case 'choice':
      return [...field.choices];
    default:
      return [];
  }
}

describe('nothing that is typed at a field makes a figure that is no number, or is thrown', () => {
  test.each(each)('$name', ({ one, bases }) => {
    const wrong = new Set<string>();
    for (const [place, { entries }] of bases.entries())
      for (const leaf of leavesIn(one.fields, entries))
        for (const odd of [...oddFor(leaf), ...(place === 0 ? unreadable(leaf) : [])]) {
          const says = unsound(one, withAt(entries, leaf.way, odd), rules);
          if (says) wrong.add(`${leaf.way.join('.')} as ${JSON.stringify(odd)}: ${says}`);
        }
    expect([...wrong]).toEqual([]);
  });
});

const RUNS = 100;

/** An amount from the very small to the most that the field takes, in two figures, in any of its units. */
const amountFor = (field: QuantityField): fc.Arbitrary<string> => {
  const most = parseQuantity(field.most ?? `1000000 ${unitsOf(field)[0]}`, { dimension: field.dimension });
  return fc
    .tuple(
      fc.integer({ min: 1, max: 100 }),
      fc.integer({ min: -7, max: -2 }),
      fc.constantFrom(...unitsOf(field)),
    )
    .map(
      ([figures, power, unit]) => `${digits(amountIn(most, unit as never) * figures * 10 ** power)} ${unit}`,
    );
};

/** Every amount that the rulebook holds, with its unit: where an answer turns, if anywhere. */
const turningPoints: readonly string[] = Object.values(data.rules).flatMap(({ value }): string[] => {
  if (value.kind === 'table')
    return value.columns.flatMap(({ unit }, at) =>
      unit === undefined
        ? []
        : value.rows.flatMap((row) =>
            [row[at] ?? []].flat().flatMap((cell) => (typeof cell === 'number' ? [`${cell} ${unit}`] : [])),
          ),
    );
  if (value.kind === 'between') return [`${value.low} ${value.unit}`, `${value.high} ${value.unit}`];
  return 'number' in value && value.number !== undefined ? [`${value.number} ${value.unit}`] : [];
});

const turningFor = ({ dimension }: QuantityField): string[] =>
  turningPoints.filter(
    (written) => units[written.slice(written.indexOf(' ') + 1) as UnitName].dimension === dimension,
  );

/** Something to type at a field, sensible or not; what other fields hold and what the rulebook holds, so that limits are met exactly. */
function valueFor({ field }: Leaf, beside: readonly string[]): fc.Arbitrary<unknown> {
  switch (field.kind) {
    case 'quantity': {
      const [unit] = unitsOf(field);
      return fc.oneof(
        { weight: 6, arbitrary: amountFor(field) },
        fc.constantFrom('', field.example, `0 ${unit}`),
        { weight: 2, arbitrary: fc.constantFrom(...beside, field.example) },
        {
          weight: 2,
          arbitrary: fc.constantFrom(...turningFor(field), field.example),
        },
      );
    }
    case 'count':
      return fc.oneof(fc.integer({ min: field.least, max: field.most }), fc.constant(field.example));
    case 'year':
      return fc.integer({ min: 1900, max: 2050 });
    case 'choice':
      return fc.constantFrom(...field.choices);
    case 'words':
    case 'date':
      return fc.constantFrom('', field.example);
    default:
      return fc.constant(undefined);
  }
}

/** What the other fields hold that measure the same. */
const heldBeside = (one: AnyCalculation, entries: Entries, leaf: Leaf): string[] =>
  quantitiesIn(one, entries).flatMap(({ field, given }) =>
    leaf.field.kind === 'quantity' && field.dimension === leaf.field.dimension ? [String(given)] : [],
  );

/** A base with up to five of its fields, given or left out in it, typed anew. */
const changed = (one: AnyCalculation, bases: readonly Base[]): fc.Arbitrary<Entries> =>
  fc.constantFrom(...bases).chain(({ entries }) => {
    const leaves = fieldsFrom(one.fields, entries);
    return fc
      .uniqueArray(fc.nat({ max: leaves.length - 1 }), { minLength: 1, maxLength: 5 })
      .chain((places) => {
        const chosen = places.flatMap((place) => leaves[place] ?? []);
        return fc
          .tuple(...chosen.map((leaf) => valueFor(leaf, heldBeside(one, entries, leaf))))
          .map((values) =>
            chosen.reduce((running, { way }, place) => withAt(running, way, values[place]), entries),
          );
      });
  });

describe('whatever is typed at several fields at once', () => {
  test.each(each)('$name answers with sound figures or names a field', ({ one, bases }) => {
    fc.assert(
      fc.property(changed(one, bases), (entries) => {
        expect(unsound(one, entries, rules)).toBe('');
      }),
      { numRuns: RUNS },
    );
  });

  test.each(each)('$name answers the same in other units', ({ name, one, bases }) => {
    fc.assert(
      fc.property(changed(one, bases), fc.infiniteStream(fc.nat()), (entries, stream) => {
        const plain = answer(one, entries, rules);
        if (!plain.ok) return;
        const other = quantitiesIn(one, entries).reduce((running, { way, field, given }) => {
          const choices = unitsOf(field, given);
          const unit = choices[(stream.next().value ?? 0) % choices.length] ?? choices[0];
          return unit ? withAt(running, way, rewritten(field, given, unit)) : running;
        }, entries);
        const found = answer(one, other, rules);
        expect(found.ok ? differences(name, plain.value, found.value) : found.problems).toEqual([]);
      }),
      { numRuns: RUNS },
    );
  });
});
