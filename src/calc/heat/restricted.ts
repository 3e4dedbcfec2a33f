import {
  amountIn,
  byMethod,
  compare,
  inUnit,
  minus,
  named,
  over,
  plus,
  type Quantity,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { Section } from '../cavity/section.ts';
import { resistanceOf } from '../layers/layers.ts';
import { type Layering, meanAcross } from './across.ts';
import type { InsulationLayer } from './old-insulation.ts';

/** The part of the roof where the insulation is thinner than its nominal depth, judged by the federal table and by us. */
export interface RestrictedPart {
  readonly nominal: Quantity<'length'>;
  readonly least: Quantity<'length'>;
  /** Least depth over nominal depth. */
  readonly ratio: Quantity<'number'>;
  /** Share of the width. */
  readonly share: Quantity<'number'>;
  /** Share of the nominal R that the table leaves to blown fill. */
  readonly kept: Quantity<'number'>;
  /** R over the part, films and ceiling included, by the table. */
  readonly byTable: Quantity<'thermal resistance'>;
  /** The same, by the mean transmittance of the section itself. */
  readonly ours: Quantity<'thermal resistance'>;
}

/** Depths that differ by less than this share are one depth read twice. */
const NOISE = 1e-9;

/**
 * What R has the part that the roof restricts, near the eaves, by the table of 24 CFR 3280.509(c) and by the section itself?
 * The table knows one straight taper of blown fill from the least depth to the nominal depth; old insulation in it is taken with the
 * rest. Framing is left out of both. Undefined where nothing is restricted.
 * By hand: 5 in at the eave of the nominal 10 in.
 * @example restrictedPart(cavitySection({ shape: 'one-slope', width: quantity(10, 'ft'), eave: quantity(5, 'in'), ridge: quantity(10, 'in') }), quantity(10, 'in'), quantity(1, 'h ft2 F/Btu'), { depth: quantity(0, 'in'), perInch: quantity(0, 'h ft2 F/(Btu in)') }, quantity(3, 'h ft2 F/(Btu in)'), { constant: 1, layers: [{ thickness: Infinity, perInch: 3 }] }, rules).ratio.amount // => 50
 */
export function restrictedPart(
  section: Section,
  nominal: Quantity<'length'>,
  uniform: Quantity<'thermal resistance'>,
  old: InsulationLayer,
  perInch: Quantity<'resistance per length'>,
  layering: Layering,
  rules: Rulebook,
): RestrictedPart | undefined {
  const { profile } = section;
  const height = amountIn(nominal, 'in');
  const part = meanAcross(profile, section.shape !== 'bowed', layering, height * (1 - NOISE));
  if (!part) return undefined;
  const leastDepth = Math.min(...profile.corners.map((across) => profile.depthAt(across)));
  const least = named(
    byMethod('least depth of the cross-section', section.told, leastDepth, 'in'),
    'dl',
    'Least depth of the insulation',
  );
  const ratio = named(inUnit(over(least, nominal), 'percent'), 'p', 'Least to nominal depth');
  const kept = rules.find('thermal.taper.restricted', { ratio }, 'blown')?.low;
  if (!kept) return undefined;
  const oldThere = compare(old.depth, nominal) < 0 ? old.depth : nominal;
  const full = named(
    old.depth.amount === 0
      ? times(perInch, nominal)
      : plus(times(old.perInch, oldThere), times(perInch, minus(nominal, oldThere))),
    'Rf',
    'Nominal R of the insulation',
  );
  const transmittance = byMethod(
    'mean of 1/R over the restricted part',
    [uniform, old.perInch, old.depth, perInch, nominal, ...section.told],
    part.transmittance,
    'Btu/(h ft2 F)',
  );
  return {
    nominal,
    least,
    ratio,
    share: named(
      inUnit(
        byMethod('width of the part over the whole width', [nominal, ...section.told], part.share, '1'),
        'percent',
      ),
      'sr',
      'Share of the width that is restricted',
    ),
    kept: named(kept, 'kb', 'Share of the nominal R that the table leaves'),
    byTable: named(
      plus(uniform, times(kept, full)),
      'Rt',
      'R over the restricted part, by the federal table',
    ),
    ours: named(
      resistanceOf(named(transmittance, 'Ur', 'Transmittance of the restricted part')),
      'Rr',
      'R over the restricted part, by its cross-section',
    ),
  };
}
