import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import {
  amountIn,
  byMethod,
  compare,
  excess,
  inUnit,
  named,
  number,
  plus,
  type Quantity,
  smaller,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { type Remark, said } from '../declare/remark.ts';
import type { Material } from '../fill/material.ts';
import { isConnector, publishedRing } from './flue-rings.ts';
import type { HotThing, HotThingKind } from './hot-things.ts';
import { isLight, ringOf } from './rings.ts';

/** The space kept open about one flue or light. */
export interface ClearSpace {
  /** From its outside to the fill, all round. */
  readonly ring: Quantity<'length'>;
  /** Whose distance that is. */
  readonly from: string;
  /** How wide the space without fill is, the thing itself within it; undefined where the fill may bury it. */
  readonly across: Quantity<'length'> | undefined;
  /** How high the shield or barrier stands; undefined where there is none. */
  readonly shield: Quantity<'length'> | undefined;
  /** Does the shield run up to the roof, since the cavity has no more height? */
  readonly toTheRoof: boolean;
  /** The fill that the ring leaves out. */
  readonly ringVolume: Quantity<'volume'>;
  /** The fill that ring and thing together leave out. */
  readonly takenOff: Quantity<'volume'>;
  readonly mayLieAbove: boolean;
  readonly cautions: readonly CautionId[];
  readonly remarks: readonly Remark[];
}

/**
 * How much room is kept open about one flue or light, how high is its shield, and how much fill does it leave out?
 * A listed clearance governs a flue, whether it is less or more than the published one. About a chimney, and about a light
 * that is not rated for contact, the larger of the two holds; cellulose keeps off every recessed light.
 * The volume is that of the column through the depth of the new fill, in ft3.
 * `place` is its place in the list, for the letters of the working. Method ours; the distances are those of the rules named.
 * By hand: 6 in, and 3 in on both sides of it.
 * @throws EntriesClash where the fill is deeper than the cavity, or a single-wall connector is listed for contact.
 * @example clearSpace({ kind: 'listed double-wall vent or chimney', across: quantity(6, 'in'), depth: quantity(8, 'in'), listed: quantity(3, 'in') }, 'glass fibre', rules).across.amount // => 12
 */
export function clearSpace(thing: HotThing, material: Material, rules: Rulebook, place?: number): ClearSpace {
  const { kind, across, depth, cavity, listed } = thing;
  if (isConnector(kind) && listed?.amount === 0) {
    throw new EntriesClash({
      field: place === undefined ? 'listed' : `things.${place}.listed`,
      label: 'Clearance of its listing',
      found: `${format(listed)} for a single-wall ${kind}`,
      expected: 'more than 0, or nothing where it has no listing: what burns never touches such a pipe',
    });
  }
  if (cavity && compare(depth, cavity) > 0) {
    throw new EntriesClash({
      field: place === undefined ? 'depth' : `things.${place}.depth`,
      label: 'Depth of the fill there',
      found: `${format(depth)} in a cavity of ${format(cavity)}`,
      expected: 'a depth that the cavity has',
    });
  }
  const { ring: distance, from } = ringOf(thing, material, rules);
  const letter = (of: string) => (place === undefined ? of : `${of}${place + 1}`);
  const fill = newFill(thing, place);
  const ring = named(distance, letter('c'), `Ring about the ${kind}`);
  const kept = ring.amount > 0;
  // A light that the fill may touch is buried in it; a flue without a ring still takes up its own room.
  const out = kept || !isLight(kind);
  const open = named(plus(across, times(ring, number(2))), letter('Dk'), 'Width of the open space');
  const column = named(
    out ? columnOf(open, { ...thing, depth: fill }, ring) : none(depth),
    letter('Vk'),
    `Fill left out by the ${kind}, its ring with it`,
  );
  const itself = named(
    columnOf(across, { ...thing, depth: fill }, undefined),
    letter('Vf'),
    'Of it, by the thing itself',
  );
  const above = plus(depth, rules.value('clearance.flue.shield-above'));
  // The label of cellulose asks for a barrier about every flue, whatever the listing of the flue.
  const shielded = kept || (!isLight(kind) && material === 'cellulose');
  const toTheRoof = shielded && cavity !== undefined && compare(above, cavity) >= 0;
  return {
    ring,
    // An agency's distance is no document's of the rulebook.
    from: (distance.origin.from === 'rule' && rules.whose(distance.origin.rule)) || from,
    across: out ? open : undefined,
    shield: shielded
      ? named(cavity ? smaller(above, cavity) : above, letter('hs'), 'Height of the shield')
      : undefined,
    toTheRoof,
    ringVolume: out ? named(excess(column, itself), letter('Vr'), 'Of it, by the ring') : column,
    takenOff: column,
    mayLieAbove: isLight(kind) && !kept,
    cautions: cautionsOf(kind, kept),
    remarks: remarksOf(thing, ring, { shielded, toTheRoof }, material, rules),
  };
}

/** The new fill there: the old insulation takes nothing off it that was not there before. */
function newFill({ depth, old_depth }: HotThing, place?: number): Quantity<'length'> {
  if (!old_depth || old_depth.amount === 0) return depth;
  if (compare(old_depth, depth) > 0) {
    throw new EntriesClash({
      field: place === undefined ? 'old_depth' : `things.${place}.old_depth`,
      label: 'Of it, old insulation',
      found: `${format(old_depth)} of ${format(depth)}`,
      expected: 'no more than all of it',
    });
  }
  return named(
    excess(depth, old_depth),
    place === undefined ? 'dn' : `dn${place + 1}`,
    'Depth of the new fill there',
  );
}

const none = (depth: Quantity<'length'>): Quantity<'volume'> =>
  byMethod('nothing is kept open', [depth], 0, 'ft3');

/** The column of one width through the depth of the fill, round or rectangular. */
function columnOf(
  width: Quantity<'length'>,
  { other_side, depth }: HotThing,
  ring: Quantity<'length'> | undefined,
): Quantity<'volume'> {
  const [wide, deep] = [amountIn(width, 'in'), amountIn(depth, 'in')];
  const [D, d] = [width.symbol ?? 'D', depth.symbol ?? 'd'];
  if (!other_side) {
    return inUnit(
      byMethod(`π/4 · ${D}² · ${d}`, [width, depth], (Math.PI / 4) * wide * wide * deep, 'in3'),
      'ft3',
    );
  }
  const other = amountIn(other_side, 'in') + (ring ? 2 * amountIn(ring, 'in') : 0);
  return inUnit(
    byMethod(
      ring ? `${D} · (Do + 2 · ${ring.symbol ?? 'c'}) · ${d}` : `${D} · Do · ${d}`,
      [width, other_side, ...(ring ? [ring] : []), depth],
      wide * other * deep,
      'in3',
    ),
    'ft3',
  );
}

function cautionsOf(kind: HotThingKind, kept: boolean): readonly CautionId[] {
  const cautions: CautionId[] = [];
  if (isConnector(kind)) cautions.push('caution.flue.connector');
  if (!isLight(kind)) cautions.push('caution.flue.keep-clear');
  else if (kept) cautions.push('caution.before.lights');
  if (kind === 'light, rated for contact, leakage not known') cautions.push('caution.before.seal-first');
  return cautions;
}

function remarksOf(
  { kind, listed }: HotThing,
  ring: Quantity<'length'>,
  { shielded, toTheRoof }: { readonly shielded: boolean; readonly toTheRoof: boolean },
  material: Material,
  rules: Rulebook,
): readonly Remark[] {
  const remarks: Remark[] = [];
  const gauge = rules.value('clearance.flue.shield-gauge');
  if (!isLight(kind)) {
    remarks.push(
      !shielded
        ? `The listing of the ${kind} lets the fill touch it, so no shield is given here: go by its instructions.`
        : said`The shield is of ${gauge}-gauge sheet steel or heavier and ends ${rules.value('clearance.flue.shield-above')} or more above the fill. Both figures are those for gas vents, so go by the instructions of this one.`,
    );
    if (listed && compare(listed, publishedRing(kind, rules).ring) < 0)
      remarks.push(
        kind === 'masonry chimney'
          ? said`The ${kind} keeps the published ${ring}; a masonry chimney has no listing that makes it less.`
          : `The listing of the ${kind} gives less than the published distance: keep a copy of it with the job.`,
      );
    if (kind === 'masonry chimney')
      remarks.push(
        'The air space about a masonry chimney is left empty. Only where it passes the ceiling is it closed, by fire-blocking that does not burn.',
      );
    if (material === 'cellulose')
      remarks.push(
        'The label of cellulose gives no distance for flues, only that a lasting barrier keeps it away from them.',
      );
  } else if (ring.amount > 0) {
    remarks.push(
      said`None may lie above the light. Anything that burns stays ${rules.value('clearance.light.to-combustibles')} or more from its recessed parts. No height is published for its barrier; the one for vents stands in.`,
    );
  } else {
    const { leak, pressure } = airtight(rules);
    const limit = said`${leak} or less at ${pressure} (ASTM E283)`;
    remarks.push(
      kind === 'light, rated for contact and airtight'
        ? said`Airtight means that its label says it leaks ${limit}.`
        : said`The light may leak air: its label says whether it leaks ${limit}. If not, it is sealed or changed first.`,
    );
  }
  if (toTheRoof)
    remarks.push(
      `The cavity is too low at the ${kind} for a shield above the fill, so it runs up to the roof.`,
    );
  return remarks;
}

/** How little air does a recessed light pass to count as airtight, and at which pressure? */
export const airtight = (rules: Rulebook) => ({
  leak: rules.value('clearance.light.airtight'),
  pressure: rules.value('clearance.light.airtight-pressure'),
});
