import {
  amountIn,
  byMethod,
  inUnit,
  named,
  number,
  over,
  type Quantity,
  quantity,
  roundedUp,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';

/** Squares cut in rows from a coil or a roll of one width. */
export interface Cut {
  readonly width: Quantity<'length'>;
  /** Whole squares, side by side across the width; 1 where a square takes the whole width or more. */
  readonly abreast: Quantity<'number'>;
  /** How much comes off the coil or roll. */
  readonly length: Quantity<'length'>;
  /** The share of it that ends in no square: offcuts, and laps. Undefined where nothing is cut. */
  readonly waste: Quantity<'number'> | undefined;
  /** Whole rolls; undefined where the length of a roll is not known. */
  readonly rolls: Quantity<'pieces'> | undefined;
}

export interface MembraneCut extends Cut {
  /** Strips to a square, lapped where the roll is narrower than the square; 1 is one piece. */
  readonly strips: Quantity<'number'>;
}

/** Where a square is one of so many, and a length of so much: what is on the truck. */
interface Rows {
  readonly what: 'coil' | 'membrane';
  readonly side: Quantity<'length'>;
  readonly squares: Quantity<'number'>;
  readonly width: Quantity<'length'>;
  readonly abreast: Quantity<'number'>;
  readonly rows: Quantity<'number'>;
  readonly roll: Quantity<'length of a piece'> | undefined;
}

/** 24 in hold two squares of 12 in, though floating arithmetic makes them a trillionth less. */
const NOISE = 1e-9;
const wholeIn = (long: number, short: number): number => Math.floor(long / short + NOISE);

const sides = (q: Quantity<'length'>): string => `${Number(amountIn(q, 'in').toFixed(3))} in`;

/**
 * How is the metal cut from the coil? In rows of whole squares across its width; what is left of a last row counts as waste.
 * Squares have no better nesting than rows: turned, they are the same.
 * By hand: two abreast of 24 in, so three rows of 10 in.
 * @throws EntriesClash for a coil narrower than the square, or a roll shorter: a seam in the metal would leak.
 * @example cutMetal(number(5), quantity(10, 'in'), { width: quantity(24, 'in') }).length.amount // => 30
 */
export function cutMetal(
  squares: Quantity<'number'>,
  side: Quantity<'length'>,
  coil: { readonly width: Quantity<'length'>; readonly roll: Quantity<'length of a piece'> },
): Cut {
  const width = inUnit(coil.width, 'in');
  const abreast = wholeIn(width.amount, amountIn(side, 'in'));
  if (abreast === 0) {
    throw new EntriesClash({
      field: 'coil_width',
      label: 'Width of the coil',
      found: `${sides(width)}, narrower than the metal`,
      expected: `${sides(side)} or more, for the metal in one piece`,
    });
  }
  const many = acrossTheWidth(abreast, width, side, 'wc', 'sm');
  return cut({
    what: 'coil',
    side,
    squares,
    width,
    abreast: many,
    rows: named(roundedUp(over(squares, many), number(1)), 'r', 'Rows from the coil'),
    roll: coil.roll,
  });
}

const acrossTheWidth = (
  abreast: number,
  width: Quantity<'length'>,
  side: Quantity<'length'>,
  w: string,
  s: string,
): Quantity<'number'> =>
  named(byMethod(`${w} ÷ ${s}, rounded down`, [width, side], abreast, '1'), 'a', 'Squares side by side');

/**
 * How is the membrane cut from the roll? In one piece where the roll is as wide as the square or wider; else each square is laid in the
 * fewest strips that cover it, every strip lapping the next by the rulebook's overlap of a patch layer.
 * Without a width, the narrowest roll usually sold that covers the square.
 * By hand: two strips of 8 in with a lap of 2 in cover 14 in, one does not cover 12 in.
 * @throws EntriesClash where no usual roll is so wide, a roll no wider than its own lap, or one shorter than the square.
 * @example cutMembrane(number(4), quantity(12, 'in'), { width: quantity(8, 'in') }, rules).strips.amount // => 2
 */
export function cutMembrane(
  squares: Quantity<'number'>,
  side: Quantity<'length'>,
  roll: {
    readonly width: Quantity<'length'> | undefined;
    readonly roll: Quantity<'length of a piece'> | undefined;
  },
  rules: Rulebook,
): MembraneCut {
  const clash = (found: string, expected: string) =>
    new EntriesClash({ field: 'membrane_width', label: 'Width of the membrane roll', found, expected });
  const given = roll.width ?? rules.find('patch.stock.membrane-width', { square: side }, 'roll')?.low;
  if (!given)
    throw clash('nothing', `a width, since no usual roll is as wide as the square of ${sides(side)}`);
  const width = inUnit(given, 'in');
  const abreast = wholeIn(width.amount, amountIn(side, 'in'));
  const shared = { what: 'membrane', side, squares, width, roll: roll.roll } as const;
  if (abreast > 0) {
    const many = acrossTheWidth(abreast, width, side, 'wm', 'sb');
    return {
      ...cut({
        ...shared,
        abreast: many,
        rows: named(roundedUp(over(squares, many), number(1)), 'r', 'Rows from the roll'),
      }),
      strips: number(1),
    };
  }
  const lap = rules.value('patch.layers.overlap');
  const [w, v, s] = [width.amount, amountIn(lap, 'in'), amountIn(side, 'in')];
  if (w <= v)
    throw clash(`${sides(width)}, no wider than the lap`, `more than ${sides(lap)}, which each strip laps`);
  const strips = named(
    byMethod(
      'fewest n with n·wm − (n − 1)·ov not below sb',
      [width, lap, side],
      Math.max(2, Math.ceil((s - v) / (w - v) - NOISE)),
      '1',
    ),
    'n',
    'Strips to a square',
  );
  return {
    ...cut({
      ...shared,
      abreast: number(1),
      rows: named(times(squares, strips), 'r', 'Strips from the roll'),
    }),
    strips,
  };
}

function cut({ what, side, squares, width, abreast, rows, roll }: Rows): Cut {
  const coil = what === 'coil';
  const length = named(
    inUnit(times(rows, side), 'in'),
    coil ? 'Lm' : 'Lb',
    coil ? 'Length of coil' : 'Length of membrane',
  );
  const [s, taken] = [amountIn(side, 'in'), length.amount * width.amount];
  const left = 1 - (squares.amount * s * s) / taken;
  return {
    width,
    abreast,
    length,
    waste:
      taken > 0
        ? named(
            byMethod(
              `1 − N·${coil ? 'sm² ÷ (Lm·wc)' : 'sb² ÷ (Lb·wm)'}`,
              [squares, side, length, width],
              // Nothing left over comes out a trillionth below 0 or above it here and there.
              left > NOISE ? left * 100 : 0,
              'percent',
            ),
            'o',
            coil ? 'Share in offcuts' : 'Share in offcuts and laps',
          )
        : undefined,
    rolls: roll && wholeRolls(coil, rows, side, roll),
  };
}

/** No row goes over the end of a roll: the rest of each roll that is too short for one more is left. */
function wholeRolls(
  coil: boolean,
  rows: Quantity<'number'>,
  side: Quantity<'length'>,
  roll: Quantity<'length of a piece'>,
): Quantity<'pieces'> {
  const long = times(roll, quantity(1, 'roll'));
  const each = wholeIn(amountIn(long, 'in'), amountIn(side, 'in'));
  if (each === 0) {
    throw new EntriesClash({
      field: coil ? 'coil_length' : 'membrane_length',
      label: coil ? 'Length of a roll of coil' : 'Length of a roll of membrane',
      found: `${sides(long)}, shorter than the square`,
      expected: `${sides(side)} or more`,
    });
  }
  const fromOne = named(
    byMethod(`${coil ? 'Lc ÷ sm' : 'Lr ÷ sb'}, rounded down`, [roll, side], each, '1'),
    're',
    'Rows from one roll',
  );
  return named(
    roundedUp(times(quantity(1, 'roll'), over(rows, fromOne)), quantity(1, 'roll')),
    'nr',
    coil ? 'Rolls of coil' : 'Rolls of membrane',
  );
}
