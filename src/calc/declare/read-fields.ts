import type { Dimension } from '../../quantity/dimension.ts';
import { format } from '../../quantity/format.ts';
import { ParseError, parseQuantity } from '../../quantity/parse.ts';
import { compare, type Quantity } from '../../quantity/quantity.ts';
import type { Field, Fields, QuantityField, Values } from './field.ts';

/** What is wrong with one field, in a sentence: which field, what was found, what is expected. */
export interface FieldProblem {
  /** The way to the field: `roof.obstacles.1.along`; empty where all entries are meant. */
  readonly field: string;
  /** Its name on the form, so that a person finds it. */
  readonly label: string;
  readonly found: string;
  readonly expected: string;
  /** The keys that would have been known, where one was not. */
  readonly known?: readonly string[];
}

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly FieldProblem[] };

/** A problem as a sentence on one line, whatever was typed. @example sentence({ field: 'width', label: 'Width', found: '"12"', expected: 'a length' }) // => 'Width (width): found "12"; expected a length.' */
export const sentence = ({ field, label, found, expected }: FieldProblem): string =>
  onOneLine(`${label}${field === '' ? '' : ` (${field})`}: found ${found}; expected ${expected}.`);

/** Words on one line, without what no reader sees and a terminal obeys. @example onOneLine(' Lot\u001b 4\n') // => 'Lot 4' */
export const onOneLine = (words: string): string => words.replace(UNSEEN, ' ').trim();

/** Line breaks, control characters, and those that turn the direction of writing. */
const UNSEEN = /[\s\p{Cc}\p{Cf}]+/gu;

/** A year is that of something built. One far ahead is a slip of a key, 2079 for 1979, and from the year follow lead and asbestos. */
export const EARLIEST_YEAR = 1900;
export const LATEST_YEAR = 2050;
export const MOST_LETTERS = 200;

/** How people write nought of what need not be there. */
const NONE = /^\s*(?:none|no|nothing)\.?\s*$/i;

/**
 * Reads what a person or a file gave for a set of fields; every problem at once, nothing half read.
 * An unknown key is a problem that names the known ones; `guessed` picks the nearest of them. Text is trimmed; an empty text counts as left out.
 * @example readFields({}, { widht: '13 ft' }).ok // => false
 */
export function readFields<F extends Fields>(fields: F, given: unknown): Read<Values<F>> {
  return readBy(readGroup, fields, given);
}

/** Reads a set of fields by a way of reading their groups. */
export function readBy<F extends Fields>(read: ReadGroup, fields: F, given: unknown): Read<Values<F>> {
  const problems: FieldProblem[] = [];
  const value = read(fields, given, [], 'The entries', problems);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: value as Values<F> };
}

export type ReadGroup = (
  fields: Fields,
  given: unknown,
  path: readonly string[],
  label: string,
  problems: FieldProblem[],
) => Record<string, unknown>;

export function readGroup(
  fields: Fields,
  given: unknown,
  path: readonly string[],
  label: string,
  problems: FieldProblem[],
  readInner: ReadGroup = readGroup,
): Record<string, unknown> {
  if (given === null || typeof given !== 'object' || Array.isArray(given)) {
    problems.push({
      field: path.join('.'),
      label,
      found: shown(given),
      expected: 'a set of named entries',
    });
    return {};
  }
  const entries = new Map(Object.entries(given));
  const known = Object.keys(fields);
  for (const key of entries.keys()) {
    if (known.includes(key)) continue;
    problems.push(unknownKey(path, key, known));
  }
  return Object.fromEntries(
    Object.entries(fields).map(([name, field]) => {
      const raw: unknown = entries.get(name);
      const empty = raw === undefined || raw === null || (typeof raw === 'string' && raw.trim() === '');
      if (empty && field.kind === 'list') return [name, []];
      if (empty && field.optional) return [name, undefined];
      return [name, readOne(field, empty ? undefined : raw, [...path, name], problems, readInner)];
    }),
  );
}

/** What is wrong where a key is none of those that are known. */
export const unknownKey = (path: readonly string[], key: string, known: readonly string[]): FieldProblem => ({
  field: [...path, clipped(key)].join('.'),
  label: 'Unknown entry',
  found: `the unknown key "${clipped(key)}"`,
  expected: `one of ${known.join(', ')}`,
  known,
});

function readOne(
  field: Field,
  raw: unknown,
  path: readonly string[],
  problems: FieldProblem[],
  readInner: ReadGroup,
): unknown {
  const complain = (found: string, expected: string): undefined => {
    problems.push({ field: path.join('.'), label: field.label, found, expected });
  };
  switch (field.kind) {
    case 'group':
      return readInner(field.of, raw ?? {}, path, field.label, problems);
    case 'list': {
      if (!Array.isArray(raw)) return complain(shown(raw), 'a list');
      if (raw.length > field.most) return complain(`${raw.length} entries`, `${field.most} at most`);
      return raw.map((each, place) =>
        readInner(field.of, each, [...path, String(place)], field.one, problems),
      );
    }
    case 'choice':
      if (typeof raw === 'string' && field.choices.includes(raw.trim())) return raw.trim();
      return complain(shown(raw), `one of: ${field.choices.join('; ')}`);
    case 'words':
      if (typeof raw !== 'string') return complain(shown(raw), `words such as "${field.example}"`);
      return raw.length <= MOST_LETTERS
        ? onOneLine(raw) // As a field shows it: an address or a file may hold more.
        : complain(`${raw.length} letters`, `${MOST_LETTERS} at most`);
    case 'year': {
      const year = typeof raw === 'string' && /^\s*\d{4}\s*$/.test(raw) ? Number(raw) : raw;
      return typeof year === 'number' &&
        Number.isInteger(year) &&
        year >= EARLIEST_YEAR &&
        year <= LATEST_YEAR
        ? year
        : complain(shown(raw), `a year such as ${field.example}`);
    }
    case 'count': {
      const count = typeof raw === 'string' && /^\s*\d{1,9}\s*$/.test(raw) ? Number(raw) : raw;
      return typeof count === 'number' &&
        Number.isInteger(count) &&
        count >= field.least &&
        count <= field.most
        ? count
        : complain(
            shown(raw),
            `a whole number from ${field.least} to ${field.most}, such as ${field.example}`,
          );
    }
    case 'date':
      return typeof raw === 'string' && isDay(raw.trim())
        ? raw.trim()
        : complain(shown(raw), `a day of the calendar written as ${field.example}`);
    case 'quantity':
      return readQuantity(field, raw, path, complain);
  }
}

const mosts = new WeakMap<QuantityField, Quantity>();

/** The most that a field takes, read once: a form of a hundred fields is read anew at every key. */
function mostOf(field: QuantityField, written: string): Quantity {
  const known = mosts.get(field);
  if (known) return known;
  const most = parseQuantity<Dimension>(written, field);
  mosts.set(field, most);
  return most;
}

/** Is this a day that the calendar has? 2026-02-30 is not. */
function isDay(text: string): boolean {
  const [, year = '', month = '', day = ''] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  if (year === '') return false;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  return date.getUTCMonth() === Number(month) - 1 && date.getUTCDate() === Number(day);
}

function readQuantity(
  field: QuantityField,
  raw: unknown,
  path: readonly string[],
  complain: (found: string, expected: string) => undefined,
): Quantity | undefined {
  if (typeof raw !== 'string') return complain(shown(raw), `text with a unit, such as "${field.example}"`);
  try {
    const none = field.zero === 'or none' && NONE.test(raw);
    const read = parseQuantity<Dimension>(none ? '0' : (field.plainly || String)(raw), field);
    // The form would make 0.8 % of it; who writes it elsewhere may mean 80 %.
    if (read.unit === '1' && field.beside !== undefined)
      return complain(`"${raw.trim()}", a number with no unit`, `a share such as ${field.example}`);
    // Bags are no screws, though both are counted.
    if (read.dimension === 'pieces' && field.beside !== undefined && read.unit !== field.beside)
      return complain(`"${raw.trim()}"`, `a count such as ${field.example}`);
    if (read.amount < 0 && field.negative !== 'allowed')
      return complain(`"${raw.trim()}"`, `an amount above 0, such as ${field.example}`);
    if (read.amount === 0 && field.zero === 'refused') {
      return complain(`"${raw.trim()}"`, `more than 0, such as ${field.example}`);
    }
    if (field.most !== undefined) {
      const most = mostOf(field, field.most);
      if (compare<Dimension>(read, most) > 0)
        return complain(`"${raw.trim()}"`, `${format(most)} at most: this entry takes no more`);
    }
    return {
      ...read,
      // A nought below nought is nought: what is divided by it must not end below nothing.
      amount: read.amount === 0 ? 0 : read.amount,
      symbol: field.symbol,
      label: field.label,
      origin: { from: 'input', field: path.join('.') },
    };
  } catch (error) {
    if (error instanceof ParseError) return complain(error.found, error.expected);
    throw error;
  }
}

/**
 * A text short enough to be shown.
 * @example clipped('x'.repeat(41)) // => `${'x'.repeat(37)}...`
 */
export const clipped = (text: string): string => (text.length > 40 ? `${text.slice(0, 37)}...` : text);

/**
 * What was found, in few words.
 * @example shown(12) // => '"12"'
 */
export function shown(value: unknown): string {
  if (value === undefined || value === null || value === '') return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a set of entries';
  return `"${clipped(String(value))}"`;
}
