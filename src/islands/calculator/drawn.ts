import type { Calculation } from '../../calc/declare/calculation.ts';
import type { Fields, Values } from '../../calc/declare/field.ts';
import type { Drawing } from '../../drawings/svg.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { SheetOfAnswer } from '../results/PlainSheet.tsx';

/** A drawing in both layouts, with the words under it. */
interface Layouts {
  readonly caption: string;
  readonly wide: Drawing;
  readonly narrow: Drawing;
}

/** A drawing beside an answer. */
export interface DrawnAnswer extends Layouts {
  /** What shows it: it comes with the drawing, since most calculators have none. */
  readonly View: typeof SheetOfAnswer;
}

/** How a calculation's entries, once they are read and worked out, are drawn. */
export interface Drawn {
  readonly name: string;
  // biome-ignore lint/suspicious/noExplicitAny: a list over calculations with different fields has no narrower type
  readonly draw: (values: any, rules: Rulebook) => readonly DrawnAnswer[];
}

/** Joins a calculation to its drawings: the values are those of its own fields. A pattern's id must be its own on the page. */
export const drawn = <F extends Fields>(
  of: Calculation<F>,
  draw: (values: Values<F>, rules: Rulebook) => readonly Layouts[],
): Drawn => ({
  name: of.name,
  draw: (values: Values<F>, rules) => draw(values, rules).map((each) => ({ ...each, View: SheetOfAnswer })),
});
