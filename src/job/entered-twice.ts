import { EntriesClash } from '../calc/declare/calculation.ts';
import { hotKinds } from '../calc/holes/fields.ts';
import { format } from '../quantity/format.ts';
import { amountIn, type Quantity } from '../quantity/quantity.ts';
import type { JobValues } from './job-fields.ts';

/** What keeps a ring open: where it stands, and where its place is entered. */
interface Place {
  readonly field: string;
  readonly what: string;
  readonly side: 'back' | 'front';
  readonly along: Quantity<'length'>;
  readonly across: Quantity<'length'>;
}

/**
 * Is each hot flue and each light entered once? The ring of one that is entered twice would be taken off twice.
 * @throws EntriesClash at the second.
 */
export function checkOnce({ roof, ceiling }: JobValues): void {
  refuseTwice(
    (roof.obstacles ?? []).flatMap(({ what, side, along, from_peak }, place) =>
      hotKinds.includes(what)
        ? [{ field: `roof.obstacles.${place}.along`, what: 'a flue', side, along, across: from_peak }]
        : [],
    ),
  );
  refuseTwice(
    (ceiling.lights ?? []).map(({ side, along, from_eave }, place) => ({
      field: `ceiling.lights.${place}.along`,
      what: 'a light',
      side,
      along,
      across: from_eave,
    })),
  );
}

/** The same place told in another unit differs in the last digits. */
const NOISE = 1e-6;
const same = (a: Quantity<'length'>, b: Quantity<'length'>): boolean =>
  Math.abs(amountIn(a, 'in') - amountIn(b, 'in')) <= NOISE;

function refuseTwice(places: readonly Place[]): void {
  const second = places.find((each, place) =>
    places
      .slice(0, place)
      .some(
        ({ side, along, across }) =>
          side === each.side && same(along, each.along) && same(across, each.across),
      ),
  );
  if (!second) return;
  throw new EntriesClash({
    field: second.field,
    label: 'Place along the roof',
    found: `${second.what} at ${format(second.along, { tape: 8 })}, ${second.side} side, a second time`,
    expected: 'each of them once: take one away, or mend its place',
  });
}
