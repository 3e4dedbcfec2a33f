import {
  amountIn,
  byMethod,
  named,
  plus,
  type Quantity,
  quantity,
  roundedUp,
  times,
} from '../../../quantity/quantity.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';

/** How a leaning ladder stands against an edge. */
export interface LadderStand {
  /** From its foot to its top support, along the ladder. */
  readonly working: Quantity<'length'>;
  /** The edge above the ground. */
  readonly height: Quantity<'length'>;
  /** From the foot to the point below the top support. */
  readonly foot: Quantity<'length'>;
  readonly angle: Quantity<'angle'>;
  /** The rails from the foot to their top, the part above the edge with them. */
  readonly inUse: Quantity<'length'>;
  /** The same in whole feet. */
  readonly needed: Quantity<'length'>;
}

/** Where the ladder leans: the height of the edge, or the ladder's working length. */
export type Lean = { readonly height: Quantity<'length'> } | { readonly working: Quantity<'length'> };

const DEGREES_IN_HALF_TURN = 180;

/**
 * Where does the foot of the ladder stand, and how long a ladder is needed?
 * The foot is the rule's share of the working length out, so height, foot and working length make a right triangle;
 * the rails above the edge are measured upright, as the landing is.
 * @example ladderStand({ working: quantity(16, 'ft') }, rules).foot.amount // => 4
 */
export function ladderStand(lean: Lean, rules: Rulebook): LadderStand {
  const share = rules.value('safety.ladder.foot');
  const q = amountIn(share, '1');
  const upright = Math.sqrt(1 - q ** 2);
  const working =
    'working' in lean
      ? lean.working
      : named(
          byMethod('h/√(1 − q²)', [lean.height, share], amountIn(lean.height, 'ft') / upright, 'ft'),
          'W',
          'Working length',
        );
  const height =
    'height' in lean
      ? lean.height
      : named(
          byMethod('W·√(1 − q²)', [lean.working, share], amountIn(lean.working, 'ft') * upright, 'ft'),
          'h',
          'Height of the edge',
        );
  const above = named(rules.value('safety.roof.ladder-above'), 'ha', 'Rails above the edge, upright');
  const rails = named(
    byMethod('ha/√(1 − q²)', [above, share], amountIn(above, 'ft') / upright, 'ft'),
    'ra',
    'Rails above the edge, along the ladder',
  );
  const inUse = named(plus(working, rails), 'Wu', 'Ladder in use, foot to top of the rails');
  return {
    working,
    height,
    foot: named(times(share, working), 'f', 'Foot of the ladder out'),
    angle: named(
      byMethod('arccos q', [share], (Math.acos(q) / Math.PI) * DEGREES_IN_HALF_TURN, 'degree'),
      'θ',
      'Angle with the ground',
    ),
    inUse,
    needed: named(roundedUp(inUse, quantity(1, 'ft')), 'Wn', 'Ladder needed, in whole feet'),
  };
}
