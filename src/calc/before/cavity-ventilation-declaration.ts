import type { CautionId } from '../../generated/rule-types.ts';
import { compare, inUnit, named, type Quantity, times } from '../../quantity/quantity.ts';
import { calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import { choiceField, lengthField, optional, quantityField } from '../declare/field.ts';
import { type Remark, said } from '../declare/remark.ts';
import { cavityVents, known, ventilationAsked } from './cavity-vents.ts';

/** What may not be undershot is not rounded down. */
const least = { round: 'up' } as const;

export const cavityVentilation = calculation({
  name: 'cavity-ventilation',
  title: 'Ventilation of the cavity',
  question: 'Does the federal code ask for vents in this roof cavity, and of what free area?',
  fields: {
    sections: choiceField('Sections', 'Of the home.', ['single', 'double']),
    bare_metal: choiceField(
      'Metal roof with neither sheathing nor underlayment',
      'Look through a fan or light opening, or at the edge.',
      known,
    ),
    sealed: choiceField(
      'Ceiling leaks sealed',
      'At electrical outlets, junctions and cables, pipes, flues and exhaust vents.',
      known,
    ),
    area: optional(
      quantityField({
        dimension: 'area',
        beside: 'ft2',
        symbol: 'A',
        label: 'Floor of the cavity',
        hint: 'All sections that the vents serve; or give length and width.',
        example: '924 ft²',
        zero: 'refused',
        most: '10000 ft2',
      }),
    ),
    length: optional(lengthField('L', 'Length of the cavity', 'Along the ridge, end to end.', '66 ft')),
    width: optional(
      lengthField('W', 'Width of the cavity', 'Across all sections that the vents serve.', '14 ft', {
        most: '100 ft',
      }),
    ),
    clear_above: optional(
      lengthField('ch', 'Clear height above the fill', 'Nothing where the fill reaches the roof.', '0 in', {
        zero: 'allowed',
        most: '6 ft',
      }),
    ),
  },
  example: { sections: 'double', bare_metal: 'no', sealed: 'yes', area: '1232 ft²', clear_above: '0 in' },
  work: ({ sections, bare_metal, sealed, area, length, width, clear_above }, rules) => {
    const verdict = ventilationAsked({ sections, bareMetal: bare_metal, sealed });
    const vents = cavityVents(floorOf(area, length, width), rules);
    const figures: Record<string, Figure> = {
      verdict: { label: 'By what is entered, it is', value: verdict },
    };
    if (verdict !== 'not asked for') {
      figures.free_area = { label: 'Free area of the vents, at least', value: vents.free, format: least };
      figures.free_area_in = { label: 'The same', value: inUnit(vents.free, 'in2'), format: least };
      figures.high = { label: 'Of it high up, at least', value: vents.high, format: least };
      figures.low = { label: 'Of it low down, at least', value: vents.low, format: least };
      figures.clear_above = {
        label: 'Clear above the insulation, at least',
        value: vents.clearAbove,
        format: least,
      };
      figures.mechanical = { label: 'Or by a fan, at least', value: vents.mechanical, format: least };
    }
    const tooLow = clear_above !== undefined && compare(clear_above, vents.clearAbove) < 0;
    return {
      figures,
      cautions: cautionsOf(verdict !== 'not asked for', tooLow),
      remarks: remarksOf(sections, bare_metal, sealed, clear_above, vents.clearAbove, verdict),
    };
  },
});

function floorOf(
  area: Quantity<'area'> | undefined,
  length: Quantity<'length'> | undefined,
  width: Quantity<'length'> | undefined,
): Quantity<'area'> {
  if (area && !length && !width) return area;
  if (!area && length && width) return named(times(length, width), 'A', 'Floor of the cavity');
  throw new EntriesClash({
    field: 'area',
    label: 'Floor of the cavity',
    found: area ? 'an area beside a length or width' : 'neither an area nor both length and width',
    expected: 'the area, or length and width',
  });
}

const cautionsOf = (asked: boolean, tooLow: boolean): CautionId[] => [
  ...(asked && tooLow ? (['caution.ventilation.filled-to-roof'] as const) : []),
  'caution.ventilation.keep-vents',
];

function remarksOf(
  sections: string,
  bareMetal: string,
  sealed: string,
  clear: Quantity<'length'> | undefined,
  clearAsked: Quantity<'length'>,
  verdict: string,
): Remark[] {
  const remarks: Remark[] = [];
  if (sections === 'single' && bareMetal === 'yes' && sealed === 'no')
    remarks.push('Once the ceiling leaks are sealed, the paragraph asks for no ventilation here.');
  if (verdict === 'not known')
    remarks.push('What is not known decides it; until it is known, plan as if ventilation were asked for.');
  if (verdict !== 'not asked for') {
    remarks.push(
      'Free area is the open area of the vents, screens and louvres taken off; the maker of a vent gives it. Vents are placed so that air crosses the whole cavity, and keep out rain and insects.',
    );
    if (clear === undefined)
      remarks.push(
        said`A cavity filled up to the roof has no ${clearAsked} of clear passage: then what the section says and what is planned do not agree, and the local building authority decides.`,
      );
  }
  return remarks;
}
