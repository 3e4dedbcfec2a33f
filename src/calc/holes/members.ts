import { format } from '../../quantity/format.ts';
import { byMethod, inches, named, type Quantity, quantity } from '../../quantity/quantity.ts';
import { EntriesClash } from '../declare/calculation.ts';
import type { Values } from '../declare/field.ts';
import type { alongFields } from './fields.ts';
import { TIE } from './marks.ts';

/** What is told of a roof along its length: its trusses, its seams, what stands through it. */
export type AlongValues = Values<typeof alongFields>;

/**
 * Nothing on a roof stands closer than this: the members themselves are about as wide. A smaller spacing is a slip, and would make more places
 * than the search takes. It is a limit of entries and no rule: no roof comes near it, it holds for seams too, and the longest log that a job file may have is
 * counted from it, which no agency's value may change.
 */
export const CLOSEST = quantity(2, 'in');

/**
 * Places every so far from the first, up to a length. One that floating noise puts past it stands at it. A first one off the roof is a slip:
 * it would leave a roof of which nothing is known to be in the way.
 */
function everySoFar(
  what: 'truss' | 'seam',
  spacing: Quantity<'length'> | undefined,
  first: Quantity<'length'> | undefined,
  length: number,
  end = length,
): number[] {
  if (!spacing) return [];
  const step = inches(spacing);
  if (step < inches(CLOSEST) - TIE) {
    throw new EntriesClash({
      field: `${what}_spacing`,
      label: spacing.label || 'Spacing',
      found: format(spacing),
      expected: `${format(CLOSEST)} or more`,
    });
  }
  const start = first ? inches(first) : 0;
  if (first && start > end + TIE)
    throw new EntriesClash({
      field: `first_${what}`,
      label: first.label || 'First',
      found: format(first),
      expected: 'a place on the roof',
    });
  const places: number[] = [];
  for (let count = 0; start + count * step <= length + TIE; count++)
    places.push(Math.min(length, start + count * step));
  return places;
}

type Measured = readonly { readonly at: Quantity<'length'> }[];

const eachPlace = (measured: Measured = []): Quantity<'length'>[] => measured.map(({ at }) => at);

/** What was measured one by one, in order from the starting end. */
function inOrder(field: string, measured: Measured, end: number): number[] {
  const places: number[] = [];
  measured.forEach(({ at }, number) => {
    const place = inches(at);
    if (place > end + TIE || places.some((other) => Math.abs(other - place) <= TIE))
      throw new EntriesClash({
        field: `${field}.${number}.at`,
        label: 'Place',
        found: format(at),
        expected: 'a place of its own on the roof',
      });
    places.push(place);
  });
  return places.sort((a, b) => a - b);
}

export type TrussValues = Pick<AlongValues, 'truss_spacing' | 'first_truss' | 'trusses_measured'>;

/**
 * Where the trusses stand, in inches from the starting end. Where the roof goes on beyond that length, it may
 * have them there too.
 * @throws EntriesClash for a spacing that no roof has, for a first one off the roof, and for one that was measured off the roof or twice.
 * @example trussPlaces({ truss_spacing: quantity(24, 'in'), first_truss: quantity(12, 'in') }, quantity(6, 'ft')) // => [12, 36, 60]
 */
export const trussPlaces = (
  { truss_spacing, first_truss, trusses_measured }: TrussValues,
  length: Quantity<'length'>,
  end = inches(length),
): number[] =>
  trusses_measured?.length
    ? inOrder('trusses_measured', trusses_measured, end)
    : everySoFar('truss', truss_spacing, first_truss, inches(length), end);

/**
 * Is it known where the trusses stand?
 * @example knowsTrusses({ trusses_measured: [] }) // => false
 */
export const knowsTrusses = (values: Partial<TrussValues>): boolean =>
  values.truss_spacing !== undefined || eachPlace(values.trusses_measured).length > 0;

/**
 * How far apart do the trusses stand? The spacing; where they were measured, from the first to the last over the bays between, as long as
 * there are two. Undefined where neither tells.
 * @example spacingOf({ truss_spacing: quantity(2, 'ft') })?.amount // => 2
 */
export function spacingOf(values: Partial<TrussValues>): Quantity<'length'> | undefined {
  const measured = eachPlace(values.trusses_measured);
  if (measured.length < 2) return values.truss_spacing;
  const places = measured.map(inches);
  const between = Math.max(...places) - Math.min(...places);
  if (between === 0) return values.truss_spacing;
  const method = 'from the first truss that was measured to the last, over the bays between them';
  return named(byMethod(method, measured, between / (measured.length - 1), 'in'), 's', 'Truss spacing');
}

/**
 * Where the seams run, in inches from the starting end. Without a first seam, one lies at the end.
 * @throws EntriesClash for a spacing that no roof has, for a first one off the roof, and for one that was measured off the roof or twice.
 * @example seamPlaces({ seam_spacing: quantity(4, 'ft') }, quantity(9, 'ft')) // => [0, 48, 96]
 */
export const seamPlaces = (
  { seam_spacing, first_seam, seams_measured }: AlongValues,
  length: Quantity<'length'>,
): number[] =>
  seams_measured?.length
    ? inOrder('seams_measured', seams_measured, inches(length))
    : everySoFar('seam', seam_spacing, first_seam, inches(length));

/** What was measured one by one; where nothing was, the spacing and the first, as far as they are known. */
const toldBy = (
  measured: Measured | undefined,
  regular: readonly (Quantity<'length'> | undefined)[],
): Quantity<'length'>[] => {
  const places = eachPlace(measured);
  return places.length > 0 ? places : regular.filter((each) => each !== undefined);
};

/** The lengths that tell where the trusses stand. */
export const trussesTold = ({
  truss_spacing,
  first_truss,
  trusses_measured,
}: TrussValues): Quantity<'length'>[] => toldBy(trusses_measured, [truss_spacing, first_truss]);

/** The lengths that tell where the seams run. */
export const seamsTold = ({ seam_spacing, first_seam, seams_measured }: AlongValues): Quantity<'length'>[] =>
  toldBy(seams_measured, [seam_spacing, first_seam]);
