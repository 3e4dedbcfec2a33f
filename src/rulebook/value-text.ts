import { format, formatNumber, tapeBeside, withSign } from '../quantity/format.ts';
import { type Quantity, quantity } from '../quantity/quantity.ts';
import { isUnitName, type UnitName } from '../quantity/units.ts';
import type { RuleValue, TableValue } from './schema.ts';
import type { CellValue } from './table.ts';

/**
 * A number of a rule as printed: number and unit, in the unit of its source; a metric length, and inches that no tape has a mark for, with the tape
 * reading beside it, on the side on which a bound holds.
 * @example amountText(6, 'ft') // => '6 ft'
 * @example amountText(11.9055, 'in') // => '11.9055 in (11 7/8 in)'
 */
export function amountText(amount: number, unit: string, bound?: Bound): string {
  if (!isUnitName(unit)) return `${formatNumber(amount, 6)} ${unit}`;
  const length = ofRule(amount, unit, bound);
  const text = format(length, { figures: 6 });
  // Inches with a mark of their own stand as a fraction.
  return unit === 'in' && text.includes('.') ? `${text} (${format(length, { tape: 16 })})` : text;
}

/** Which way a value bounds: it may not be undershot, or not be passed. */
type Bound = 'least' | 'most';

const ofRule = (amount: number, unit: UnitName, bound: Bound | undefined): Quantity =>
  quantity(amount, unit, { from: 'rule', rule: '', ...(bound ? { bound } : {}) });

/**
 * A range with its unit said once.
 * @example rangeText(6, 8, 'ft') // => '6 to 8 ft'
 * @example rangeText(0.25, 0.5, 'in') // => '1/4 to 1/2 in'
 */
export function rangeText(low: number, high: number, unit: string): string {
  if (low === high) return amountText(low, unit);
  if (!isUnitName(unit)) return `${formatNumber(low, 6)} to ${amountText(high, unit)}`;
  const [from, to] = [tapeBeside(ofRule(low, unit, 'least')), tapeBeside(ofRule(high, unit, 'most'))];
  if (from !== undefined && to !== undefined)
    return `${formatNumber(low, 6)} to ${withSign(formatNumber(high, 6), unit)} (${from} to ${to})`;
  const prefix = withSign('', unit);
  return prefix.startsWith('R-')
    ? `${amountText(low, unit).replace(' per in', '')} to ${amountText(high, unit)}`
    : `${unit === 'in' ? amountText(low, unit).replace(/ in$/, '') : formatNumber(low, 6)} to ${amountText(high, unit)}`;
}

/**
 * The value of a rule as it stands in a sentence; undefined for a table, or for a part that the value does not have.
 * @example valueText({ kind: 'between', low: 6, high: 8, unit: 'ft' }) // => '6 to 8 ft'
 */
export function valueText(value: RuleValue, part?: string): string | undefined {
  if (value.kind === 'between') {
    if (part === 'low' || part === 'high')
      return amountText(value[part], value.unit, part === 'low' ? 'least' : 'most');
    return part === undefined ? rangeText(value.low, value.high, value.unit) : undefined;
  }
  if (part !== undefined || value.kind === 'table') return undefined;
  if (value.kind === 'one-of') return value.choices.join(', ');
  return amountText(value.number ?? Number.NaN, value.unit, boundOf[value.kind]);
}

const boundOf = { exact: undefined, 'at-least': 'least', 'at-most': 'most' } as const;
const bounds = { exact: '', 'at-least': 'at least ', 'at-most': 'at most ' } as const;

/**
 * The value of a rule as it stands on its own, its kind said: "at least 2 in". Tables say how many rows they have.
 * @example valueHeadline({ kind: 'at-least', number: 2, unit: 'in' }) // => 'at least 2 in'
 * @example valueHeadline({ kind: 'one-of', choices: ['safety monitor alone'] }) // => 'safety monitor alone'
 */
export function valueHeadline(value: RuleValue): string {
  if (value.kind === 'table') return `a table of ${value.rows.length} rows`;
  const text = valueText(value) ?? '';
  if (value.kind === 'between') return `between ${text.replace(' to ', ' and ')}`;
  if (value.kind === 'one-of') return value.choices.length > 1 ? `one of: ${text}` : text;
  return `${bounds[value.kind]}${text}`;
}

/** A cell of a table as printed, in the unit of its column. @example cellText([3.43, 3.7], 'h ft2 F/(Btu in)') // => 'R-3.43 to per in' */
export function cellText(cell: CellValue, unit: string | undefined): string {
  if (typeof cell === 'string') return cell;
  return typeof cell === 'number' ? amountText(cell, unit ?? '1') : rangeText(cell[0], cell[1], unit ?? '1');
}

/** What a page asks of a table: the words its row begins with, a column, and an end where the cell is a range. */
export interface CellAsked {
  readonly row?: string | undefined;
  readonly column?: string | undefined;
  readonly part?: string | undefined;
}

/**
 * The cell of a table as it stands in a sentence, or what is wrong with what was asked. A row is named by what its first cells say,
 * parted by semicolons, as many of them as tell it from every other: `gypsum 1/2 in; 24`.
 * @example tableCellText({ kind: 'table', columns: [{ name: 'fill', title: 'Fill' }, { name: 'weight', title: 'Weight', unit: 'lb' }], rows: [['wool', 40]] }, { row: 'wool', column: 'weight' }) // => { text: '40 lb' }
 */
export function tableCellText(
  { columns, rows }: Pick<TableValue, 'columns' | 'rows'>,
  { row, column, part }: CellAsked,
): { text: string } | { found: string; expected: string } {
  const names = columns.map(({ name }) => name);
  const place = names.indexOf(column ?? '');
  if (place < 0)
    return {
      found: column === undefined ? 'no column' : `the column "${column}"`,
      expected: `one of ${names.join(', ')}`,
    };
  const words = (row ?? '').split(';').map((each) => each.trim());
  const begins = rows.filter((cells) =>
    words.every((word, at) => cells[at] !== undefined && plainCell(cells[at]) === word),
  );
  const [cells] = begins;
  const cell = cells?.[place];
  if (cell === undefined || begins.length > 1)
    return {
      found: row === undefined ? 'no row' : `${begins.length} rows that begin "${row}"`,
      expected: `one, such as "${rows[0]?.slice(0, 2).map(plainCell).join('; ')}"`,
    };
  if (part === undefined) return { text: cellText(cell, columns[place]?.unit) };
  if (typeof cell === 'object' && (part === 'low' || part === 'high'))
    return { text: cellText(cell[part === 'low' ? 0 : 1], columns[place]?.unit) };
  return { found: `part "${part}" of ${plainCell(cell)}`, expected: 'low or high, of a range' };
}

const plainCell = (cell: CellValue): string => (typeof cell === 'object' ? cell.join(' to ') : String(cell));
