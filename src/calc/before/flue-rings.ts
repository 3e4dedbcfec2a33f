import { compare, larger, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { FlueKind } from './flue-kinds.ts';
import type { HotThingKind } from './hot-things.ts';

/** The connectors, by the appliance they serve as the table names it. */
const connectors: { readonly [K in HotThingKind]?: string } = {
  'connector, listed gas with draft hood': 'listed gas with draft hood',
  'connector, unlisted gas with draft hood': 'unlisted gas with draft hood',
  'connector, gas without draft hood': 'gas without draft hood',
  'connector, oil': 'oil',
  'connector, solid fuel': 'solid fuel',
};

/** Is it a connector, which joins an appliance to its chimney? @example isConnector('masonry chimney') // => false */
export const isConnector = (kind: HotThingKind): boolean => connectors[kind] !== undefined;

/** The distance kept open all round a flue or a light. */
export interface Ring {
  readonly ring: Quantity<'length'>;
  /** Whose distance that is. */
  readonly from: string;
}

export const LISTING = 'its listing';

/** What a flue is taken for until its label is read. */
export const USUAL_FLUE: FlueKind = 'listed double-wall vent or chimney';

/**
 * How far do fill and patch stay from a flue? Its listing governs; else the published least distance of its kind, and of the
 * usual kind while its own is not known.
 * @example ringOfFlue(undefined, undefined, rules).from // => 'the federal work specifications'
 */
export function ringOfFlue(
  kind: FlueKind = USUAL_FLUE,
  listed: Quantity<'length'> | undefined,
  rules: Rulebook,
): Ring {
  const published = publishedRing(kind, rules);
  // A single-wall connector is too hot for any listing to let the fill touch it: clearSpace refuses such a one.
  if (!listed || (isConnector(kind) && listed.amount === 0)) return published;
  // A masonry chimney has no listing that could make its air space less.
  if (kind === 'masonry chimney') return widest(published, { ring: listed, from: LISTING });
  return { ring: listed, from: LISTING };
}

/**
 * What is the published distance of a flue or chimney, whatever its listing? @throws Error where the table lacks the connector.
 * @example publishedRing('masonry chimney', rules).from // => 'the residential code'
 */
export function publishedRing(kind: HotThingKind, rules: Rulebook): Ring {
  if (kind === 'masonry chimney')
    return { ring: rules.value('clearance.flue.masonry-chimney'), from: 'the residential code' };
  const appliance = connectors[kind];
  const vent: Ring = {
    ring: rules.value('clearance.flue.to-combustibles'),
    from: 'the federal work specifications',
  };
  if (appliance === undefined) return vent;
  const found = rules.find('clearance.flue.connector', { appliance }, 'clearance');
  if (!found) throw new Error(`found no clearance for "${appliance}", expected a row of the table`);
  return widest(vent, { ring: found.low, from: 'the chimney standard' });
}

/**
 * The wider of two rings; the first where they are alike.
 * @example widest({ ring: quantity(2, 'in'), from: 'one' }, { ring: quantity(2, 'in'), from: 'other' }).from // => 'one'
 */
export function widest(a: Ring, b: Ring): Ring {
  return { ring: larger(a.ring, b.ring), from: compare(b.ring, a.ring) > 0 ? b.from : a.from };
}
