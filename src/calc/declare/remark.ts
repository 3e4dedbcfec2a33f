import { type FormatOptions, format } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { Piece } from '../../rulebook/whose.ts';

/** A quantity in a sentence, printed in some way of its own. */
interface Printed {
  readonly quantity: Quantity;
  readonly options: FormatOptions;
}

/** A sentence with quantities in it, which keep whose they are. */
export interface Said {
  readonly pieces: readonly (string | Printed)[];
}

/** A sentence about an answer that no figure says. */
export type Remark = string | Said;

/** A quantity that a sentence prints in some way of its own. @example remarkText(said`${printed(quantity(5 / 3, 'ft'), { figures: 2 })} wide`) // => '1.7 ft wide' */
export const printed = (quantity: Quantity, options: FormatOptions): Printed => ({ quantity, options });

/** A sentence whose quantities keep whose they are, so that a reader can ask of each. @example remarkText(said`${quantity(6, 'in')} across`) // => '6 in across' */
export const said = (
  words: TemplateStringsArray,
  ...values: readonly (string | number | Quantity | Printed | Said)[]
): Said => ({
  pieces: words.flatMap((word, place) => {
    const value = values[place];
    if (value === undefined) return [word];
    if (typeof value === 'string' || typeof value === 'number') return [word, String(value)];
    if ('pieces' in value) return [word, ...value.pieces];
    return [word, 'quantity' in value ? value : printed(value, {})];
  }),
});

/** Several sentences, or parts of one, as one. @example remarkText(joined([said`a`, said`b`], ' and ')) // => 'a and b' */
export const joined = (all: readonly Said[], between: string): Said => ({
  pieces: all.flatMap(({ pieces }, place) => (place === 0 ? pieces : [between, ...pieces])),
});

/**
 * A remark in pieces, the numbers that are a rule's own with the rule they are of.
 * @example remarkPieces(said`${quantity(6, 'in')} across`) // => ['', '6 in', ' across']
 */
export const remarkPieces = (remark: Remark): Piece[] =>
  typeof remark === 'string'
    ? [remark]
    : remark.pieces.map((piece) => {
        if (typeof piece === 'string') return piece;
        const { quantity, options } = piece;
        const text = format(quantity, options);
        return quantity.origin.from === 'rule' ? { rule: quantity.origin.rule, text } : text;
      });

/**
 * A remark as one line of text.
 * @example remarkText(said`Cut ${quantity(6, 'in')} across.`) // => 'Cut 6 in across.'
 */
export const remarkText = (remark: Remark): string =>
  remarkPieces(remark)
    .map((piece) => (typeof piece === 'string' ? piece : piece.text))
    .join('');
