import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { compare, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { cavitySection } from '../cavity/section.ts';
import { type AnswerTable, calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import type { Values } from '../declare/field.ts';
import { type Remark, said } from '../declare/remark.ts';
import { fillWords } from '../fill/cautions.ts';
import { highEnd, lowEnd } from '../fill/ends.ts';
import type { Material } from '../fill/material.ts';
import { type ResistancePerInch, resistancePerInch } from '../fill/resistance.ts';
import { heatFields } from './fields.ts';
import { type RoofHeat, type RoofState, roofHeat } from './roof-heat.ts';

const three = { figures: 3 } as const;

export const heat = calculation({
  name: 'roof-heat',
  title: 'Heat through the roof',
  question: 'What R does the whole roof have before and after the fill?',
  fields: heatFields,
  example: {
    shape: 'bowed',
    width: '13 ft 10 in',
    eave: '3 in',
    ridge: '15 in',
    board: 'gypsum 1/2 in',
    material: 'glass fibre',
    density: '1.5 lb/ft³',
    old_depth: '2 in',
    old_condition: 'pressed by the new fill',
    pressed_depth: '1 1/2 in',
    framing_share: 'the federal share of the ceiling',
    nominal_depth: '10 in',
    energy_zone: 'zone 2',
  },
  work: (values, rules) => {
    const { perInch, result } = roofHeatFrom(values, rules);
    const words = values.density
      ? fillWords(values.material, values.density, perInch, rules)
      : { cautions: ['caution.fill.maker-governs'] as CautionId[], remarks: [] };
    const figures = figuresOf(result, perInch);
    const remarks = [...result.remarks, ...words.remarks];
    if (values.energy_zone) {
      const limit = rules.find('thermal.whole-home.uo-limit', { zone: values.energy_zone }, 'uo')?.low;
      if (limit) {
        figures.whole_home_limit = {
          label: `Yardstick: limit on the whole home’s mean, Uo, ${values.energy_zone}`,
          value: limit,
        };
        remarks.push(besideWholeHome(result, limit));
      }
    }
    return {
      figures,
      tables: tablesOf(result),
      cautions: ['caution.roof-heat.not-a-receipt', 'caution.roof-heat.sealed-first', ...words.cautions],
      remarks,
    };
  },
});

/** What the entries of the calculation come to; the money that the fill saves starts from the same. */
export function roofHeatFrom(
  values: Values<typeof heatFields>,
  rules: Rulebook,
): { readonly perInch: ResistancePerInch; readonly result: RoofHeat } {
  const perInch = perInchOf(values.material, values.density, values.label_r_per_inch, rules);
  const result = roofHeat(
    {
      section: cavitySection(values),
      board: values.board,
      boardThickness: values.board_thickness,
      old: {
        depth: values.old_depth,
        perInch: values.old_r_per_inch,
        condition: values.old_condition,
        pressedDepth: values.pressed_depth,
      },
      perInch,
      framing: values.framing_share,
      trussSpacing: values.truss_spacing,
      nominalDepth: values.nominal_depth,
    },
    rules,
  );
  return { perInch, result };
}

function perInchOf(
  material: Material,
  density: Quantity<'density'> | undefined,
  label: Quantity<'resistance per length'> | undefined,
  rules: Rulebook,
): ResistancePerInch {
  const found = resistancePerInch(material, density, label, rules);
  if (found) return found;
  throw new EntriesClash({
    field: 'label_r_per_inch',
    label: 'R per inch by the maker',
    found: density
      ? `nothing, and none is published for ${material} at ${format(density)}`
      : 'neither an R per inch nor a density',
    expected: density ? 'the maker’s R per inch at this density' : 'one of the two',
  });
}

function figuresOf(
  { before, after, restricted, framingShare, old }: RoofHeat,
  perInch: ResistancePerInch,
): Record<string, Figure> {
  const figures: Record<string, Figure> = {
    resistance_after: { label: 'Effective R after', value: after.resistance, format: three },
    resistance_before: { label: 'Effective R before', value: before.resistance, format: three },
    naive_after: {
      label: 'R that the mean depth would claim after, which overstates',
      value: after.naive,
      format: three,
    },
    naive_before: { label: 'R that the mean depth would claim before', value: before.naive, format: three },
    transmittance_after: { label: 'U after', value: after.transmittance },
    transmittance_before: { label: 'U before', value: before.transmittance },
    cavity_resistance: {
      label: 'R after, between the framing',
      value: after.cavityResistance,
      format: three,
    },
    cavity_transmittance: { label: 'U after, between the framing', value: after.cavity },
    framing_transmittance: { label: 'U after, through the framing', value: after.framing },
    framing_share: { label: 'Share of the framing', value: framingShare },
    resistance_per_inch: {
      label: `R per inch of the new fill, from ${perInch.from}`,
      value: perInch.value,
      format: three,
    },
  };
  if (compare(after.low, after.high) !== 0) {
    figures.resistance_low = {
      label: 'Effective R after, at the least R per inch',
      value: after.low,
      format: lowEnd,
    };
    figures.resistance_high = {
      label: 'Effective R after, at the most R per inch',
      value: after.high,
      format: highEnd,
    };
  }
  if (old?.kept) figures.old_kept = { label: 'Share of its R that the pressed batt keeps', value: old.kept };
  if (restricted) {
    figures.restricted_share = {
      label: 'Share of the width restricted below the nominal depth',
      value: restricted.share,
      format: three,
    };
    figures.restricted_ratio = {
      label: 'Least to nominal depth there',
      value: restricted.ratio,
      format: three,
    };
    figures.restricted_kept = {
      label: 'Share of the nominal R that the federal table leaves there',
      value: restricted.kept,
      format: three,
    };
    figures.restricted_by_table = {
      label: 'R there by the federal table, films and ceiling added',
      value: restricted.byTable,
      format: three,
    };
    figures.restricted_ours = {
      label: 'R there by the cross-section itself, films and ceiling included',
      value: restricted.ours,
      format: three,
    };
  }
  return figures;
}

function tablesOf({
  uniform,
  old,
  fill,
  before,
  after,
  framingShare,
}: RoofHeat): Record<string, AnswerTable> {
  const none = 'none';
  return {
    layers: {
      title: 'Layers at the deepest place, from the room outwards',
      columns: { layer: 'Layer', before: 'R before', after: 'R after' },
      rows: [
        { layer: 'indoor air film', before: uniform.indoor, after: uniform.indoor },
        { layer: 'ceiling board', before: uniform.board, after: uniform.board },
        ...(old
          ? [{ layer: 'old insulation', before: old.before.resistance, after: old.after.resistance }]
          : []),
        { layer: 'new fill', before: none, after: fill.resistance },
        { layer: 'roof cover', before: none, after: none },
        { layer: 'outdoor air film', before: uniform.outdoor, after: uniform.outdoor },
      ],
      format: { before: three, after: three },
    },
    ways: {
      title: 'Ways through the roof, side by side',
      columns: { way: 'Way', share: 'Share of the area', before: 'U before', after: 'U after' },
      rows: [
        { way: 'between the framing', share: 'the rest', before: before.cavity, after: after.cavity },
        { way: 'through the framing', share: framingShare, before: before.framing, after: after.framing },
        { way: 'both', share: 'all', before: before.transmittance, after: after.transmittance },
      ],
      format: { share: three },
    },
  };
}

const besideWholeHome = (
  { after }: { readonly after: RoofState },
  limit: Quantity<'thermal transmittance'>,
): Remark =>
  said`The federal limit of ${limit} is on the mean of the whole envelope of a new home, not on its ceiling. This ceiling alone, at ${after.transmittance}, lies ${compare(after.transmittance, limit) <= 0 ? 'below' : 'above'} it; that says nothing of the whole home, whose walls, floor and windows let more through.`;
