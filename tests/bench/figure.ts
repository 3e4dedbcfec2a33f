/** One thing that was measured. */
export interface Figure {
  /** What was measured, and on what. */
  readonly what: string;
  readonly unit: 'B' | 'ms' | '';
  readonly found: number;
  /** What it may be; undefined where it only stands for comparison. */
  readonly budget?: number;
  /** What it is compared with, where it has no budget: the same of this site, in the same run. */
  readonly beside?: number;
  /** What it consists of, the heaviest first. */
  readonly parts?: readonly Part[];
  /** What its parts are counted in, if in something else. */
  readonly partsIn?: 'B' | 'ms';
}

export type Part = readonly [name: string, amount: number];

/** Is a figure above its budget? A figure that is not a number is: nothing was measured. */
export const isOver = ({ found, budget }: Figure): boolean => budget !== undefined && !(found <= budget);

/**
 * An amount as a table shows it: bytes with a space between thousands, times to a tenth of a millisecond.
 * @example amount(20000, 'B') // => '20 000 B'
 */
export function amount(value: number, unit: Figure['unit']): string {
  const digits = unit === 'ms' && Math.abs(value) < 100 ? 1 : 0;
  const [whole = '', rest] = value.toFixed(digits).split('.');
  const parted = whole.replace(/\B(?=(\d{3})+$)/g, ' ');
  return [parted + (rest === undefined ? '' : `.${rest}`), unit].filter(Boolean).join(' ');
}

/** Figures as one table: what, budget, found, found over budget, and whether it is within. */
export function tableOf(figures: readonly Figure[]): string {
  const rows = [
    ['what', 'budget', 'found', 'ratio', ''],
    ...figures.map((figure) => {
      const { what, unit, found, budget, beside } = figure;
      if (budget === undefined)
        return [
          what,
          '-',
          amount(found, unit),
          beside ? (found / beside).toFixed(2) : '-',
          beside ? 'of ours' : '',
        ];
      // Where nothing at all is allowed there is nothing to divide by.
      const ratio = budget === 0 ? '-' : (found / budget).toFixed(2);
      return [what, amount(budget, unit), amount(found, unit), ratio, isOver(figure) ? 'OVER' : 'within'];
    }),
  ];
  const widths = [0, 1, 2, 3, 4].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((cell, column) =>
          column === 0 || column === 4
            ? cell.padEnd(widths[column] ?? 0)
            : cell.padStart(widths[column] ?? 0),
        )
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/** How many parts a sentence names: enough to know where to begin. */
const NAMED = 5;

/** What to say of a figure above its budget: where, found, expected, and what to make lighter. */
export function overrun({ what, unit, found, budget = 0, parts = [], partsIn }: Figure): string {
  const said = `${what}: found ${amount(found, unit)}, expected ${amount(budget, unit)} or less`;
  if (parts.length === 0) return `${said}.`;
  const heaviest = parts.slice(0, NAMED).map(([name, size]) => `${name} ${amount(size, partsIn ?? unit)}`);
  return `${said}; make it lighter where most of it lies: ${heaviest.join(', ')}.`;
}

/** The middle one of some figures; the mean of the middle two. @throws where there is none. @example median([3, 1, 2]) // => 2 */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  if (upper === undefined || lower === undefined) throw new Error('found no figures, expected one or more');
  return (lower + upper) / 2;
}
