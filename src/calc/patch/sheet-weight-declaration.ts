import { named, times } from '../../quantity/quantity.ts';
import { calculation, type Figure } from '../declare/calculation.ts';
import { choiceField, lengthField, optional, quantityField } from '../declare/field.ts';
import { sheetMetals, sheetWeight } from './sheet-weight.ts';

export const sheetWeightCalculation = calculation({
  name: 'sheet-weight',
  title: 'Weight of sheet metal',
  question: 'What does this sheet metal weigh, to be carried up and to be lifted?',
  fields: {
    metal: choiceField('Metal', 'What the sheet is.', sheetMetals),
    thickness: optional(
      lengthField(
        't',
        'Thickness of the sheet',
        'For steel and aluminium; a gauge has its own.',
        '0.019 in',
        {
          most: '1 in',
        },
      ),
    ),
    area: optional(
      quantityField({
        dimension: 'area',
        symbol: 'A',
        label: 'Area',
        hint: 'Of all the sheet; the patch kit gives length and width.',
        example: '5 ft²',
        zero: 'allowed',
        most: '10000 ft2',
      }),
    ),
  },
  example: { metal: 'aluminium', thickness: '0.019 in', area: '5 ft²' },
  common: { metal: ['steel', 'aluminium'], thickness: ['0.016 in', '0.019 in', '0.024 in', '0.032 in'] },
  work: ({ metal, thickness, area }, rules) => {
    const perArea = sheetWeight(metal, thickness, rules);
    const figures: Record<string, Figure> = {
      weight_per_area: { label: 'Weight of a square foot', value: perArea },
    };
    if (area) {
      figures.weight = {
        label: 'Weight of the sheet',
        value: named(times(area, perArea), 'W', 'Weight of the sheet'),
        format: { figures: 3 },
      };
    }
    return { figures, cautions: ['caution.patch.sharp', 'caution.patch.metals'], remarks: [] };
  },
});
