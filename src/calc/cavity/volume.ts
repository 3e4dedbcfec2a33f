import { format } from '../../quantity/format.ts';
import {
  byMethod,
  compare,
  inUnit,
  minus,
  named,
  type Quantity,
  quantity,
  times,
  total,
} from '../../quantity/quantity.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { type KeptOpen, openWithin, type Part } from './open-within.ts';
import type { FreeSection, Section } from './section.ts';

/**
 * The volume of one space kept open, above the old insulation; what of it lies beyond the edge of the section was never counted there.
 * By hand: π/4 × 2 ft × 2 ft × (12 in − 6 in), which is π/2 ft3.
 * @example keptOpenVolume(cavitySection({ shape: 'level', width: quantity(10, 'ft'), eave: quantity(12, 'in') }), { across: quantity(2, 'ft'), at: quantity(5, 'ft') }, quantity(6, 'in')).amount.toFixed(4) // => '1.5708'
 */
export function keptOpenVolume(
  section: Section,
  space: KeptOpen,
  oldDepth: Quantity<'length'> | undefined,
): Quantity<'volume'> {
  const everywhere: Part = { across: [0, section.profile.width], along: [-Infinity, Infinity] };
  const [amount = 0] = openWithin(section, [{ ...space, along: quantity(0, 'in') }], everywhere, oldDepth);
  const volume = byMethod(
    'round column from the old insulation to the roof, as far as it stands in the section: π/4 · D² · depth there',
    [space.across, space.at, ...section.told, ...(oldDepth ? [oldDepth] : [])],
    amount,
    'in3',
  );
  return inUnit(volume, 'ft3');
}

/**
 * How much new fill does a length of the cavity hold, less the spaces kept open in it?
 * By hand: 10 ft2 × 66 ft − 4 ft3.
 * @throws EntriesClash if those spaces leave nothing to fill.
 * @example fillVolume({ free: quantity(10, 'ft2') }, quantity(66, 'ft'), [quantity(4, 'ft3')]).net.amount // => 656
 */
export function fillVolume(
  free: FreeSection,
  length: Quantity<'length'>,
  keptOpen: readonly Quantity<'volume'>[],
): {
  readonly whole: Quantity<'volume'>;
  readonly open: Quantity<'volume'> | undefined;
  readonly net: Quantity<'volume'>;
} {
  const whole = named(times(free.free, length), 'Vn', 'Volume free for new fill');
  if (keptOpen.length === 0)
    return { whole, open: undefined, net: named(times(free.free, length), 'V', 'Volume to fill') };
  const open = named(total(keptOpen), 'Vk', 'Volume of the spaces kept open');
  if (compare(open, whole) >= 0) {
    throw new EntriesClash({
      field: 'kept_open',
      label: 'Spaces kept open',
      found: `${format(open)} of them in a cavity of ${format(whole)}`,
      expected: 'less than the cavity holds',
    });
  }
  return { whole, open, net: named(minus(whole, open), 'V', 'Volume to fill') };
}
