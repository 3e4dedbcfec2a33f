import { format } from '../../quantity/format.ts';
import {
  amountIn,
  byMethod,
  compare,
  inches,
  named,
  plus,
  type Quantity,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type Section, shareOfMembers } from '../cavity/section.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { printed, type Remark, said } from '../declare/remark.ts';
import { inParallel, resistanceOf } from '../layers/layers.ts';
import { type Layering, meanAcross, meanThicknesses } from './across.ts';
import {
  type InsulationLayer,
  noLayer,
  type OldGiven,
  type OldInsulation,
  oldInsulation,
} from './old-insulation.ts';
import { type RestrictedPart, restrictedPart } from './restricted.ts';
import { type Board, type Uniform, uniformResistance } from './uniform.ts';

export const framingShares = ['the federal share of the ceiling', 'from the trusses'] as const;
export type FramingShare = (typeof framingShares)[number];

export interface RoofHeatGiven {
  readonly section: Section;
  readonly board: Board;
  /** For wood-fibre panel only. */
  readonly boardThickness?: Quantity<'length'> | undefined;
  readonly old: OldGiven;
  /** R per inch of the new fill, with the ends of what is uncertain. */
  readonly perInch: {
    readonly value: Quantity<'resistance per length'>;
    readonly low: Quantity<'resistance per length'>;
    readonly high: Quantity<'resistance per length'>;
  };
  readonly framing: FramingShare;
  /** Needed where the framing's share follows from the trusses. */
  readonly trussSpacing?: Quantity<'length'> | undefined;
  /** The depth at which the insulation has its nominal R; left out, the deepest place. */
  readonly nominalDepth?: Quantity<'length'> | undefined;
}

/** The roof at one time, before the work or after it. */
export interface RoofState {
  /** Mean transmittance of the way through the insulation, between the framing. */
  readonly cavity: Quantity<'thermal transmittance'>;
  readonly cavityResistance: Quantity<'thermal resistance'>;
  /** Mean transmittance of the way through the trusses. */
  readonly framing: Quantity<'thermal transmittance'>;
  /** Both side by side, each by its share of the area. */
  readonly transmittance: Quantity<'thermal transmittance'>;
  /** Effective R: 1 over it. */
  readonly resistance: Quantity<'thermal resistance'>;
  /** What the mean depth would claim: R per inch times mean depth, with films and ceiling; no taper, no framing. */
  readonly naive: Quantity<'thermal resistance'>;
}

export interface RoofHeat {
  readonly uniform: Uniform;
  readonly old: OldInsulation | undefined;
  /** The new fill at the deepest place. */
  readonly fill: InsulationLayer;
  readonly framingShare: Quantity<'number'>;
  readonly before: RoofState;
  readonly after: RoofState & {
    /** Effective R with R per inch at its least and at its most. */
    readonly low: Quantity<'thermal resistance'>;
    readonly high: Quantity<'thermal resistance'>;
  };
  readonly restricted: RestrictedPart | undefined;
  readonly remarks: readonly Remark[];
}

const rPerInch = (q: Quantity<'resistance per length'>): number => amountIn(q, 'h ft2 F/(Btu in)');
const three = { figures: 3 } as const;

/**
 * What U and effective R has the roof before and after the fill, in h ft2 F/Btu?
 * The mean of 1/R across the section, the closed form of ISO 6946:2017 annex E for each straight piece and a quadrature over a bow;
 * framing lies in parallel. Before, the air above the old insulation gets no R, as of a leaky space.
 * By hand: films of 0.61 and 0.17, and 10 in at R 3.
 * @throws EntriesClash if entries can't be true together, no room is left for new fill, or the nominal depth is nowhere reached.
 * @example roofHeat({ section: cavitySection({ shape: 'level', width: quantity(14, 'ft'), eave: quantity(10, 'in') }), board: 'other or not known', old: {}, perInch: { value: quantity(3, 'h ft2 F/(Btu in)'), low: quantity(3, 'h ft2 F/(Btu in)'), high: quantity(3, 'h ft2 F/(Btu in)') }, framing: 'the federal share of the ceiling' }, rules).after.cavityResistance.amount.toFixed(4) // => '30.7800'
 */
export function roofHeat(given: RoofHeatGiven, rules: Rulebook): RoofHeat {
  const { section, perInch } = given;
  const uniform = uniformResistance(given.board, given.boardThickness, rules);
  const old = oldInsulation(given.old, rules);
  const [oldBefore, oldAfter] = [old?.before ?? noLayer, old?.after ?? noLayer];
  const freshDepth = inches(section.deepest) - inches(oldAfter.depth);
  if (compare(section.deepest, oldAfter.depth) <= 0) {
    throw new EntriesClash({
      field: 'old_depth',
      label: 'Depth of the old insulation',
      found: format(oldAfter.depth, { tape: 8 }),
      expected: `less than the cavity’s ${format(section.deepest, { tape: 8 })}: no room is left for new fill`,
    });
  }
  const { nominalDepth } = given;
  if (nominalDepth && compare(nominalDepth, section.deepest) > 0) {
    throw new EntriesClash({
      field: 'nominal_depth',
      label: 'Nominal depth of the insulation',
      found: format(nominalDepth, { tape: 8 }),
      expected: `no more than the cavity’s ${format(section.deepest, { tape: 8 })}, or the insulation has its full R nowhere`,
    });
  }
  const depth = named(
    byMethod('deepest place less the old insulation', [section.deepest, oldAfter.depth], freshDepth, 'in'),
    'dn',
    'New fill at the deepest place',
  );
  const fill = {
    depth,
    perInch: perInch.value,
    resistance: named(times(perInch.value, depth), 'Rn', 'R of the new fill at the deepest place'),
  };
  const share = framingShare(given, rules);
  const roof: Roof = { section, uniform, share, rules };
  const before = stateOf(roof, oldBefore, undefined);
  const after = stateOf(roof, oldAfter, perInch.value);
  return {
    uniform,
    old,
    fill,
    framingShare: share,
    before,
    after: {
      ...after,
      low: named(
        stateOf(roof, oldAfter, perInch.low).resistance,
        'Re least',
        'Effective R after, at the least R per inch',
      ),
      high: named(
        stateOf(roof, oldAfter, perInch.high).resistance,
        'Re most',
        'Effective R after, at the most R per inch',
      ),
    },
    restricted: restrictedPart(
      section,
      nominalDepth ?? section.deepest,
      uniform.total,
      oldAfter,
      perInch.value,
      throughCavity(uniform, oldAfter, perInch.value),
      rules,
    ),
    remarks: [
      ...uniform.remarks,
      whyTheyDiffer(after),
      stillAir(old, rules),
      ...(old && !given.old.perInch ? [oldTaken(old, rules)] : []),
      woodTaken(rules),
    ],
  };
}

interface Roof {
  readonly section: Section;
  readonly uniform: Uniform;
  readonly share: Quantity<'number'>;
  readonly rules: Rulebook;
}

function framingShare({ framing, trussSpacing }: RoofHeatGiven, rules: Rulebook): Quantity<'number'> {
  if (framing === 'the federal share of the ceiling') return rules.value('framing.share.ceiling');
  if (!trussSpacing)
    throw new EntriesClash({
      field: 'truss_spacing',
      label: 'Truss spacing',
      found: 'nothing',
      expected: 'a spacing, since the framing is taken from the trusses',
    });
  return named(shareOfMembers(trussSpacing, rules), 'f', 'Share of the framing');
}

/** From the ceiling up: old insulation, then new fill to the roof; with no new fill, nothing above the old. */
const throughCavity = (
  uniform: Uniform,
  old: InsulationLayer,
  fill: Quantity<'resistance per length'> | undefined,
): Layering => ({
  constant: amountIn(uniform.total, 'h ft2 F/Btu'),
  layers: [
    { thickness: inches(old.depth), perInch: rPerInch(old.perInch) },
    ...(fill ? [{ thickness: Number.POSITIVE_INFINITY, perInch: rPerInch(fill) }] : []),
  ],
});

/**
 * Through a truss: its chords are wood, what stands between them is insulation, the webs are left out. With fill the top chord
 * counts; without, it keeps its place but lies beyond a space that gets no R. The order of the layers does not matter to their sum, so both chords
 * are put first: where the roof leaves room for less than the chords, all of it is wood.
 */
function throughFraming(
  uniform: Uniform,
  old: InsulationLayer,
  fill: Quantity<'resistance per length'> | undefined,
  rules: Rulebook,
): Layering {
  const chord = inches(rules.value('framing.truss.chord-depth'));
  const wood = rPerInch(rules.range('thermal.wood.softwood-r').low);
  const oldAbove = Math.max(0, inches(old.depth) - chord);
  return {
    constant: amountIn(uniform.total, 'h ft2 F/Btu'),
    layers: [
      { thickness: chord, perInch: wood },
      { thickness: chord, perInch: fill ? wood : 0 },
      { thickness: oldAbove, perInch: rPerInch(old.perInch) },
      ...(fill ? [{ thickness: Number.POSITIVE_INFINITY, perInch: rPerInch(fill) }] : []),
    ],
  };
}

function stateOf(
  { section, uniform, share, rules }: Roof,
  old: InsulationLayer,
  fill: Quantity<'resistance per length'> | undefined,
): RoofState {
  const straight = section.shape !== 'bowed';
  const how = straight
    ? 'mean of 1/R across, ln(R2/R1)/(R2 − R1) over each straight piece'
    : 'mean of 1/R across the bow, by double exponential quadrature';
  const insulation = [
    uniform.total,
    ...(old.depth.amount === 0 ? [] : [old.perInch, old.depth]),
    ...(fill ? [fill] : []),
    section.width,
    section.area,
  ];
  const mean = (layering: Layering): number =>
    meanAcross(section.profile, straight, layering)?.transmittance ?? 1 / layering.constant;
  const cavityLayers = throughCavity(uniform, old, fill);
  const cavity = named(
    byMethod(how, insulation, mean(cavityLayers), 'Btu/(h ft2 F)'),
    'Uc',
    'Transmittance between the framing',
  );
  const framing = named(
    byMethod(
      `${how}; wood for the chords, insulation between them`,
      [...insulation, rules.value('framing.truss.chord-depth'), rules.range('thermal.wood.softwood-r').low],
      mean(throughFraming(uniform, old, fill, rules)),
      'Btu/(h ft2 F)',
    ),
    'Uf',
    'Transmittance through the framing',
  );
  const transmittance = inParallel(cavity, framing, share);
  return {
    cavity,
    cavityResistance: named(resistanceOf(cavity), 'Rcav', 'R between the framing'),
    framing,
    transmittance,
    resistance: named(resistanceOf(transmittance), 'Re', 'Effective R'),
    naive: naive(section, uniform, old, fill, meanThicknesses(section.profile, cavityLayers)),
  };
}

/** R per inch times mean depth, for each insulation, with films and ceiling: what a taper must not be given. */
function naive(
  section: Section,
  uniform: Uniform,
  old: InsulationLayer,
  fill: Quantity<'resistance per length'> | undefined,
  [oldMean = 0, fillMean = 0]: readonly number[],
): Quantity<'thermal resistance'> {
  const meanDepth = (method: string, amount: number, symbol: string, label: string) =>
    named(byMethod(method, [section.area, section.width, old.depth], amount, 'in'), symbol, label);
  let claim = uniform.total;
  if (old.depth.amount > 0)
    claim = plus(
      claim,
      times(
        old.perInch,
        meanDepth(
          'area of the old insulation over the width',
          oldMean,
          'mo',
          'Mean depth of the old insulation',
        ),
      ),
    );
  if (fill)
    claim = plus(
      claim,
      times(
        fill,
        meanDepth('rest of the cross-section over the width', fillMean, 'mn', 'Mean depth of the new fill'),
      ),
    );
  return named(claim, 'Rm', 'R of the mean depth');
}

const NOISE = 1e-9;

const whyTheyDiffer = ({ naive: claimed, cavityResistance, resistance }: RoofState): Remark => {
  const more = amountIn(claimed, 'h ft2 F/Btu') / amountIn(cavityResistance, 'h ft2 F/Btu') - 1;
  const thin =
    more > NOISE
      ? said`Heat takes the thin places by preference, so the cross-section gives ${printed(cavityResistance, three)}`
      : 'It is as deep everywhere, so the cross-section gives the same';
  return said`The mean depth would claim ${printed(claimed, three)}. ${thin}; with the framing beside it the roof has ${printed(resistance, three)}.`;
};

/** What an inch of the old insulation is taken for, where its label is gone. */
const oldTaken = ({ before }: OldInsulation, rules: Rulebook): Remark => {
  const { low, high } = rules.range('thermal.batt.light-r');
  return said`The old insulation is taken at ${printed(before.perInch, three)}, half-way between the ${low} and ${high} of the lightest published batts; wet, pressed or torn it has less.`;
};

const woodTaken = (rules: Rulebook): Remark => {
  const { low, high } = rules.range('thermal.wood.softwood-r');
  return said`The wood of the trusses is taken at ${low}, the lower end of the published ${low} to ${high}.`;
};

const stillAir = (old: OldInsulation | undefined, rules: Rulebook): Remark => {
  const { low, high } = rules.range('thermal.air-space.heat-up');
  return said`Before, the air above the ${old ? 'old insulation' : 'ceiling'} gets no R, since such a space leaks. Were it sealed and still it would add ${low} to ${high} there, and the fill would add that much less.`;
};
