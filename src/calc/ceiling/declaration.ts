import type { Quantity } from '../../quantity/quantity.ts';
import { calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import { ifAny, lengthField, optional, quantityField } from '../declare/field.ts';
import { boards, ceilingFields } from './fields.ts';
import {
  asLimit,
  besideLimit,
  ceilingLoad,
  engineersLoad,
  mostThatPasses,
  type NewFill,
  ofEngineer,
  ofOldDensity,
  oldOnCeiling,
} from './load.ts';

interface Given {
  readonly depth: Quantity<'length'> | undefined;
  readonly density: Quantity<'density'> | undefined;
  readonly weight: Quantity<'load'> | undefined;
}

export const ceiling = calculation({
  name: 'ceiling-load',
  title: 'Ceiling load',
  question: 'Will the ceiling carry the fill at its deepest place?',
  fields: {
    ...ceilingFields,
    depth: optional(
      lengthField('dn', 'Depth of the new fill', 'At the deepest place, above the old insulation.', '13 in', {
        most: '6 ft',
      }),
    ),
    density: optional(
      quantityField({
        dimension: 'density',
        beside: 'lb/ft3',
        symbol: 'ρ',
        label: 'Density of the new fill',
        hint: 'As it will lie.',
        example: '1.5 lb/ft³',
        zero: 'refused',
        most: '8 lb/ft3',
      }),
    ),
    weight: optional(
      quantityField({
        dimension: 'load',
        beside: 'lb/ft2',
        symbol: 'qn',
        label: 'Weight per area instead',
        hint: 'The label’s weight for the R wanted; in place of depth and density.',
        example: '1.2 lb/ft²',
        zero: 'refused',
        most: '100 lb/ft2',
      }),
    ),
    old_depth: ifAny(
      lengthField('do', 'Depth of the old insulation', 'As it lies now.', '2 in', {
        zero: 'or none',
        most: '6 ft',
      }),
    ),
    old_density: optional(
      quantityField({
        dimension: 'density',
        beside: 'lb/ft3',
        symbol: 'ρo',
        label: 'Density of the old insulation',
        hint: 'Left empty, the heavier of the lightest published batts.',
        example: '0.5 lb/ft³',
        zero: 'refused',
        most: '8 lb/ft3',
      }),
    ),
  },
  example: {
    board: 'gypsum 1/2 in',
    framing: '16 in',
    depth: '13 in',
    density: '1.5 lb/ft³',
    old_depth: '2 in',
  },
  common: {
    board: boards,
    framing: ['16 in', '24 in'],
    depth: ['8 in', '10 in', '12 in', '13 in', '15 in'],
    density: ['1 lb/ft³', '1.25 lb/ft³', '1.5 lb/ft³', '1.75 lb/ft³', '2 lb/ft³'],
  },
  work: (values, rules) => {
    const old = { depth: values.old_depth, density: values.old_density };
    const load = ceilingLoad(
      values.board,
      values.framing,
      newFill(values),
      oldOnCeiling(old, rules),
      rules,
      engineersLoad(values),
    );
    const figures: Record<string, Figure> = {
      verdict: { label: 'The ceiling', value: load.verdict },
      total: {
        label: 'Weight on the ceiling',
        value: load.total,
        format: besideLimit(load.total, load.limit),
      },
    };
    if (load.limit) figures.limit = { label: 'What the board may carry', value: load.limit, format: asLimit };
    figures.new_weight = { label: 'Of the new fill', value: load.new, format: { figures: 3 } };
    if (load.old)
      figures.old_weight = { label: 'Of the old insulation', value: load.old, format: { figures: 2 } };
    if (load.highestDensity)
      figures.highest_density = {
        label: 'Highest density that passes',
        value: load.highestDensity,
        format: mostThatPasses,
      };
    if (load.greatestDepth)
      figures.greatest_depth = {
        label: 'Greatest depth of new fill that passes',
        value: load.greatestDepth,
        format: { ...mostThatPasses, tape: 8 },
      };
    return {
      figures,
      cautions: load.cautions,
      remarks: [
        ...ofEngineer(values, load.limit),
        ...ofOldDensity(old, rules),
        ...(values.old_depth
          ? []
          : ['No old insulation is counted: enter how deep it lies, if there is any.']),
      ],
    };
  },
});

function newFill({ depth, density, weight }: Given): NewFill {
  if (weight && !depth && !density) return { weight };
  if (depth && density && !weight) return { depth, density };
  throw new EntriesClash({
    field: 'depth',
    label: 'Depth of the new fill',
    found: weight
      ? 'a weight per area beside a depth or density'
      : 'neither depth and density nor a weight per area',
    expected: 'depth and density, or the weight per area alone',
  });
}
