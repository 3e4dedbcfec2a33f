import type { CautionId } from '../../generated/rule-types.ts';
import type { FormatOptions } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { Fields, Values } from './field.ts';
import { type FieldProblem, type Read, readFields } from './read-fields.ts';
import type { Remark } from './remark.ts';
import { whichOfList } from './which-of-list.ts';

/** One figure that comes out: its value, and how it is printed. */
export interface Figure {
  readonly label: string;
  readonly value: Quantity | string;
  readonly format?: FormatOptions;
}

/** What a row rests on: a caution, which a page shows by its source. */
export interface RestsOn {
  readonly caution: CautionId;
}

/** What stands in a cell of a table. */
export type Cell = Quantity | string | RestsOn;

/**
 * A cell as a figure is: what a row rests on by its id.
 * @example cellValue({ caution: 'caution.before.pests' }) // => 'caution.before.pests'
 */
export const cellValue = (cell: Cell): Quantity | string =>
  typeof cell !== 'string' && 'caution' in cell ? cell.caution : cell;

/** A table that comes out: a row a lane, an opening, a layer. */
export interface AnswerTable {
  readonly title: string;
  /** The columns in order; the first names the row. */
  readonly columns: Readonly<Record<string, string>>;
  /** A row holds a cell for each column, by the column's name. */
  readonly rows: readonly Readonly<Record<string, Cell>>[];
  /** How the quantities of a column are printed. */
  readonly format?: Readonly<Record<string, FormatOptions>>;
}

/** What a calculation answers. The first figure is the answer; the rest stand under it. */
export interface Answer {
  readonly figures: Readonly<Record<string, Figure>>;
  readonly tables?: Readonly<Record<string, AnswerTable>>;
  /** Cautions that this answer trips, the gravest first. */
  readonly cautions: readonly CautionId[];
  /** Sentences about this answer that no figure says. */
  readonly remarks: readonly Remark[];
}

/** Entries that read well one by one but can't be true together. */
export class EntriesClash extends Error {
  override name = 'EntriesClash';
  readonly problem: FieldProblem;
  constructor(problem: FieldProblem) {
    super(`${problem.label}: found ${problem.found}, expected ${problem.expected}`);
    this.problem = problem;
  }
}

/** A calculation: declared once, it feeds its form, the command line, the checks and its page. */
export interface Calculation<F extends Fields = Fields> {
  /** Its name on the command line and in the address. */
  readonly name: string;
  readonly title: string;
  /** The question it answers, as the crew would ask it. */
  readonly question: string;
  readonly fields: F;
  /** Entries that show it at work; the page opens with them. */
  readonly example: Readonly<Record<string, unknown>>;
  /**
   * Entries that its page changes in turn, by the way to each, with the usual values: `{ 'periods.0.level': ['85 dBA', '90 dBA'] }`.
   * Left out, the example's first choice and first amount are changed.
   */
  readonly common?: Readonly<Record<string, readonly string[]>>;
  /**
   * Works it out. Pure.
   * @throws EntriesClash for entries that can't be true together.
   */
  readonly work: (values: Values<F>, rules: Rulebook) => Answer;
}

/** Declares a calculation, with the types of its values following from its fields. */
export const calculation = <const F extends Fields>(declared: Calculation<F>): Calculation<F> => declared;

/** A calculation whose field types don't matter to the caller: the form, the command line, the checks. */
// biome-ignore lint/suspicious/noExplicitAny: a list of calculations with different fields has no narrower type
export type AnyCalculation = Calculation<any>;

/**
 * Reads the entries and works the calculation out; problems come back, they are not thrown.
 * @example answer(calculationNamed('fill'), { volume: '130 ft3' }, rules).ok // => false
 */
export function answer(declared: AnyCalculation, given: unknown, rules: Rulebook): Read<Answer> {
  const read = readFields(declared.fields, given);
  let problems: readonly FieldProblem[];
  if (read.ok) {
    try {
      return { ok: true, value: declared.work(read.value, rules) };
    } catch (error) {
      if (!(error instanceof EntriesClash)) throw error;
      problems = [error.problem];
    }
  } else problems = read.problems;
  return { ok: false, problems: problems.map((each) => whichOfList(declared.fields, each)) };
}
