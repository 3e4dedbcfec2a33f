import { format } from '../../quantity/format.ts';
import { parseQuantity } from '../../quantity/parse.ts';
import { amountIn, type Quantity, QuantityError } from '../../quantity/quantity.ts';
import type { UnitOf } from '../../quantity/units.ts';
import { nearest } from '../../rulebook/nearest.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { Check } from '../../rulebook/schema.ts';
import { calculationNamed, calculations } from '../calculations.ts';
import { type Answer, answer, cellValue, type Figure } from '../declare/calculation.ts';
import { guessed } from '../declare/guess.ts';
import { sentence } from '../declare/read-fields.ts';
import { remarkText } from '../declare/remark.ts';

/** One figure of a check, held against what was computed. */
export interface Held {
  readonly figure: string;
  readonly expected: string;
  readonly found: string;
  readonly holds: boolean;
}

export interface CheckResult {
  readonly title: string;
  readonly holds: boolean;
  readonly figures: readonly Held[];
  /** Why nothing could be held against anything. */
  readonly trouble?: string;
}

const troubled = (check: Check, trouble: string): CheckResult => ({
  title: check.title,
  holds: false,
  figures: [],
  trouble,
});

/** Does the calculation give what the check expects, figure by figure, within its tolerance? */
export function runCheck(check: Check, rules: Rulebook): CheckResult {
  const declared = calculationNamed(check.calculation);
  if (!declared) {
    const names = calculations.map(({ name }) => name);
    return troubled(
      check,
      `found no calculation "${check.calculation}", expected one of ${names.join(', ')}`,
    );
  }
  const read = answer(declared, check.given, rules);
  if (!read.ok) {
    const refusal = read.problems.map(guessed).map(sentence).join(' ');
    return check.refuses === undefined
      ? troubled(check, refusal)
      : result(check, [refused(check.refuses, refusal)]);
  }
  if (check.refuses !== undefined) return result(check, [refused(check.refuses, 'an answer')]);
  const figures = Object.entries(check.expect).map(([name, expected]) =>
    hold(name, expected, read.value, check.tolerance),
  );
  const said = (check.says ?? []).map((words) => holdWords(words, read.value));
  const unsaid = (check.does_not_say ?? []).map((words) => holdUnsaid(words, read.value));
  const cautioned = (check.cautions ?? []).map((id) => holdCaution(id, read.value, true));
  const uncautioned = (check.no_cautions ?? []).map((id) => holdCaution(id, read.value, false));
  return result(check, [...figures, ...said, ...unsaid, ...cautioned, ...uncautioned]);
}

const result = ({ title }: Check, figures: readonly Held[]): CheckResult => ({
  title,
  holds: figures.length > 0 && figures.every(({ holds }) => holds),
  figures,
});

/** Does the refusal say these words? */
const refused = (words: string, found: string): Held => ({
  figure: 'refusal',
  expected: words,
  found,
  holds: found.includes(words),
});

function hold(
  name: string,
  expected: string | number | boolean,
  given: Answer,
  tolerance: string | undefined,
): Held {
  const figure = given.figures[name] ?? cellAt(name, given);
  const bad = (found: string): Held => ({ figure: name, expected: String(expected), found, holds: false });
  if (!figure) {
    const guess = nearest(name, Object.keys(given.figures));
    return bad(`no such figure${guess ? `; did you mean "${guess}"?` : ''}`);
  }
  if (typeof figure.value === 'string') {
    return {
      figure: name,
      expected: String(expected),
      found: figure.value,
      holds: figure.value === expected,
    };
  }
  try {
    const wanted = parseQuantity(String(expected), { dimension: figure.value.dimension });
    const found = amountIn(figure.value, wanted.unit as UnitOf<Quantity['dimension']>);
    const shown = format({ ...figure.value, amount: found, unit: wanted.unit }, { figures: 8 });
    return {
      figure: name,
      expected: String(expected),
      found: shown,
      holds: Math.abs(found - wanted.amount) <= allowed(wanted, tolerance),
    };
  } catch (error) {
    // The expected value or the tolerance can't be read, or measures something else: its own sentence begins with "found".
    if (error instanceof QuantityError) return bad(error.message.replace(/^found /, ''));
    throw error;
  }
}

/** A cell of a table by its way: table, row counted from 1, column. */
function cellAt(way: string, { tables = {} }: Answer): Pick<Figure, 'value'> | undefined {
  const [name = '', row = '', ...rest] = way.split('.');
  const value = tables[name]?.rows[Number(row) - 1]?.[rest.join('.')];
  return value === undefined ? undefined : { value: cellValue(value) };
}

/** Does a remark of the answer say these words? */
function holdWords(words: string, { remarks }: Answer): Held {
  const told = remarks.map(remarkText);
  const holds = told.some((remark) => remark.includes(words));
  return { figure: 'remarks', expected: words, found: holds ? words : told.join(' '), holds };
}

/** Does no remark of the answer say these words? */
function holdUnsaid(words: string, { remarks }: Answer): Held {
  const told = remarks.map(remarkText).find((remark) => remark.includes(words));
  return { figure: 'remarks', expected: `not "${words}"`, found: told ?? `not "${words}"`, holds: !told };
}

/** Does a caution stand with the answer, or not, as it is expected to? */
function holdCaution(id: string, { cautions }: Answer, wanted: boolean): Held {
  const stands = cautions.some((each) => each === id);
  const told = (does: boolean) => (does ? id : `no ${id}`);
  return { figure: 'cautions', expected: told(wanted), found: told(stands), holds: stands === wanted };
}

/** What floating arithmetic itself may be off, where a check allows nothing. */
const NOISE = 1e-9;

/** How far the figure may be off, in the unit of the expected one. */
function allowed(wanted: Quantity, tolerance: string | undefined): number {
  const noise = NOISE * Math.max(1, Math.abs(wanted.amount));
  if (tolerance === undefined) return noise;
  const share = /^([\d.]+)\s*%$/.exec(tolerance.trim());
  if (share && wanted.unit !== 'percent') return (Number(share[1]) / 100) * Math.abs(wanted.amount) + noise;
  const given = parseQuantity(tolerance, {
    dimension: wanted.dimension,
    assume: wanted.unit as UnitOf<Quantity['dimension']>,
  });
  return amountIn(given, wanted.unit as UnitOf<Quantity['dimension']>) + noise;
}
