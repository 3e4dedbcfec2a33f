import { format } from '../../quantity/format.ts';
import {
  compare,
  inUnit,
  named,
  number,
  over,
  plus,
  type Quantity,
  quantity,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';

export const oldConditions = ['lies loose at its full depth', 'pressed by the new fill'] as const;
export type OldCondition = (typeof oldConditions)[number];

interface OldDepth {
  readonly depth: Quantity<'length'> | undefined;
  readonly condition?: OldCondition | undefined;
  /** Its depth once the new fill presses it. */
  readonly pressedDepth?: Quantity<'length'> | undefined;
}

export interface OldGiven extends OldDepth {
  readonly perInch?: Quantity<'resistance per length'> | undefined;
}

/** One layer of insulation: how thick it lies where the roof leaves room, and what an inch of it gives. */
export interface InsulationLayer {
  readonly depth: Quantity<'length'>;
  readonly perInch: Quantity<'resistance per length'>;
  readonly resistance: Quantity<'thermal resistance'>;
}

export interface OldInsulation {
  readonly before: InsulationLayer;
  readonly after: InsulationLayer;
  /** The share of its R that it keeps when pressed; absent where it lies loose. */
  readonly kept: Quantity<'number'> | undefined;
}

const clash = (field: string, label: string, found: string, expected: string): never => {
  throw new EntriesClash({ field, label, found, expected });
};

/**
 * How deep does the old insulation lie once the new fill is on it? The new fill takes up what it gives way. Undefined where there is none.
 * @throws EntriesClash if a pressed depth is missing, not asked for, or more than the full depth.
 * @example depthOnceFilled({ depth: quantity(2, 'in'), condition: 'pressed by the new fill', pressedDepth: quantity(1, 'in') })?.amount // => 1
 */
export function depthOnceFilled({
  depth,
  condition,
  pressedDepth,
}: OldDepth): Quantity<'length'> | undefined {
  const pressed = condition === 'pressed by the new fill';
  if (!depth || depth.amount === 0) {
    if (pressed || pressedDepth)
      clash(
        'old_depth',
        'Depth of the old insulation',
        'none, though it is pressed',
        'its depth as it lies now',
      );
    return undefined;
  }
  if (!pressed) {
    if (pressedDepth)
      clash(
        'pressed_depth',
        'Depth once pressed',
        `${format(pressedDepth, { tape: 8 })} of insulation that lies loose`,
        'no such depth, or insulation pressed by the new fill',
      );
    return depth;
  }
  const thin =
    pressedDepth ??
    clash(
      'pressed_depth',
      'Depth once pressed',
      'nothing',
      'its depth under the new fill, since it is pressed',
    );
  if (compare(thin, depth) > 0)
    clash(
      'pressed_depth',
      'Depth once pressed',
      `${format(thin, { tape: 8 })}, more than its full ${format(depth, { tape: 8 })}`,
      'a depth no more than the full one',
    );
  return thin;
}

/**
 * What does the old insulation give before and after? Pressed from its full depth to a lesser one it keeps the share of its R that
 * the federal table gives for a batt between parallel planes, so an inch of it gives more and the whole of it less.
 * Undefined where there is none.
 * By hand: 2 in × R 3, of which a batt pressed to half keeps 61 %.
 * @throws EntriesClash if a pressed depth is missing, not asked for, or more than the full depth.
 * @example oldInsulation({ depth: quantity(2, 'in'), perInch: quantity(3, 'h ft2 F/(Btu in)'), condition: 'pressed by the new fill', pressedDepth: quantity(1, 'in') }, rules).after.resistance.amount.toFixed(2) // => '3.66'
 */
export function oldInsulation(given: OldGiven, rules: Rulebook): OldInsulation | undefined {
  const { depth, condition } = given;
  const thin = depthOnceFilled(given);
  if (!depth || !thin) return undefined;
  const batt = rules.range('thermal.batt.light-r');
  const perInch =
    given.perInch ??
    named(over(plus(batt.low, batt.high), number(2)), 'ro', 'R per inch of the old insulation');
  const whole = named(times(perInch, depth), 'Ro', 'R of the old insulation, loose');
  const before = { depth, perInch, resistance: whole };
  if (condition !== 'pressed by the new fill') return { before, after: before, kept: undefined };
  const ratio = named(inUnit(over(thin, depth), 'percent'), 'p', 'Pressed to full depth');
  const kept =
    rules.find('thermal.taper.restricted', { ratio }, 'batt-even')?.low ??
    clash('pressed_depth', 'Depth once pressed', format(ratio), 'a ratio that the table holds');
  const resistance = named(times(kept, whole), 'Rop', 'R of the old insulation, pressed');
  const perPressedInch = named(
    inUnit(over(resistance, thin), 'h ft2 F/(Btu in)'),
    'rop',
    'R per inch of the old insulation, pressed',
  );
  return {
    before,
    after: { depth: thin, perInch: perPressedInch, resistance },
    kept: named(kept, 'kp', 'Share of its R that the pressed batt keeps'),
  };
}

/** No old insulation, as a layer of no depth. */
export const noLayer: InsulationLayer = {
  depth: quantity(0, 'in'),
  perInch: quantity(0, 'h ft2 F/(Btu in)'),
  resistance: quantity(0, 'h ft2 F/Btu'),
};
