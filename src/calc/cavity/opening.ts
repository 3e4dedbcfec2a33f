import { amountIn, byMethod, named, number, over, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { Section } from './section.ts';

/**
 * Where across is the ridge? At the far side of a single slope, at the deepest of the measured places, else in the middle, also where
 * the eave is as deep as the ridge.
 * @example ridgeAcross({ shape: 'two-slope', width: quantity(14, 'ft') }).amount // => 7
 */
export function ridgeAcross(section: Section): Quantity<'length'> {
  if (section.shape === 'one-slope') return section.width;
  return section.shape === 'measured' ? section.deepestAt : over(section.width, number(2));
}

/**
 * Where across does a roof hole open into the cavity, from the eave on its side? Down from the ridge by the usual distance. The ridge of
 * a double-section home stands over its marriage line, whatever the shape of a half.
 * By hand: the ridge at half of 10 ft, less 16 in.
 * @example openingAcross(cavitySection({ shape: 'level', width: quantity(10, 'ft'), eave: quantity(12, 'in') }), rules).amount // => 44
 */
export function openingAcross(
  section: Section,
  rules: Rulebook,
  ridge: Quantity<'length'> = ridgeAcross(section),
): Quantity<'length'> {
  const below = rules.value('access.roof-holes.below-peak');
  return named(
    byMethod(
      'the ridge, less the distance of a hole below the peak; the slope is slight enough to count as level',
      [...section.told, below],
      Math.max(0, amountIn(ridge, 'in') - amountIn(below, 'in')),
      'in',
    ),
    'y0',
    'Place of the opening, from the eave',
  );
}
