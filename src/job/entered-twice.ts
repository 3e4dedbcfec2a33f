import { EntriesClash } from '../calc/declare/calculation.ts';
import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import type { HotPlace } from './kept-open.ts';

/** The same place told in another unit, or from the other eave, differs in the last digits. */
const NOISE = 1e-6;
const same = (a: Quantity<'length'>, b: Quantity<'length'>): boolean =>
  Math.abs(inches(a) - inches(b)) <= NOISE;

const isLight = ({ entry }: HotPlace): boolean => entry.startsWith('ceiling.lights.');

/**
 * Is each hot flue and each light entered once? The ring of one that is entered twice would be taken off twice. Under one roof a place at the
 * peak is the same from either side; of a double home each side is a section of its own.
 * @throws EntriesClash at the second.
 */
export function checkOnce(hot: readonly HotPlace[], sections: 'single' | 'double'): void {
  const second = hot.find((each, place) =>
    hot
      .slice(0, place)
      .some(
        (other) =>
          isLight(other) === isLight(each) &&
          (sections === 'single' || other.side === each.side) &&
          same(other.along, each.along) &&
          same(other.at, each.at),
      ),
  );
  if (!second) return;
  throw new EntriesClash({
    field: `${second.entry}.along`,
    label: 'Place along the roof',
    found: `${isLight(second) ? 'a light' : 'a flue'} at ${format(second.along, { tape: 8 })}, ${second.side} side, a second time`,
    expected: 'each of them once: take one away, or mend its place',
  });
}
