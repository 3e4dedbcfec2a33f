import { figuresApart } from '../../../quantity/apart.ts';
import { format } from '../../../quantity/format.ts';
import { compare } from '../../../quantity/quantity.ts';
import { calculation, EntriesClash, type Figure } from '../../declare/calculation.ts';
import { ifAny, lengthField, listField, quantityField } from '../../declare/field.ts';
import { said } from '../../declare/remark.ts';
import { materialFields } from '../../fill/fields.ts';
import { weightField } from '../fields.ts';
import { boxVolume, testBox } from './box.ts';

const MOST_FILLS = 30;

export const testBoxCheck = calculation({
  name: 'test-box',
  title: 'Test box',
  question: 'Does the machine blow the density wanted, and the same each time?',
  fields: {
    length: lengthField('bl', 'Inside length of the box', 'Between its walls.', '24 in', { most: '20 ft' }),
    width: lengthField('bw', 'Inside width of the box', 'Between its walls.', '24 in', { most: '20 ft' }),
    height: lengthField('bh', 'Inside height of the box', 'From its floor to its lid.', '12 in', {
      most: '20 ft',
    }),
    fills: listField(
      'Fills',
      'Every fill that was weighed, good or bad.',
      'a fill',
      {
        gross: weightField('wg', 'Gross weight', 'Box and fill on the scales.', '16.1 lb', '2000 lb'),
        tare: quantityField({
          dimension: 'weight',
          beside: 'lb',
          symbol: 'wt',
          label: 'Tare weight',
          hint: 'The empty box with its lid; 0 if you zeroed the scale with them on it.',
          example: '10 lb',
          zero: 'allowed',
          most: '2000 lb',
        }),
      },
      MOST_FILLS,
    ),
    target: { ...materialFields.density, symbol: 'ρt', label: 'Target density' },
    allowed_spread: ifAny(
      quantityField({
        dimension: 'number',
        beside: 'percent',
        symbol: 'sa',
        label: 'Spread you allow',
        hint: 'Highest less lowest fill, as a share of their mean; your own or the maker’s figure.',
        example: '10 %',
        zero: 'refused',
        most: '100 %',
      }),
    ),
  },
  example: {
    length: '24 in',
    width: '24 in',
    height: '12 in',
    fills: [
      { gross: '16.1 lb', tare: '10 lb' },
      { gross: '15.8 lb', tare: '10 lb' },
      { gross: '16.4 lb', tare: '10 lb' },
    ],
    target: '1.5 lb/ft³',
    allowed_spread: '15 %',
  },
  work: ({ length, width, height, fills, target, allowed_spread }, rules) => {
    if (fills.length === 0)
      throw new EntriesClash({
        field: 'fills',
        label: 'Fills',
        found: 'no fill',
        expected: 'one or more, each with its gross and tare weight',
      });
    for (const [at, { gross, tare }] of fills.entries()) {
      if (compare(gross, tare) > 0) continue;
      throw new EntriesClash({
        field: `fills.${at}.tare`,
        label: 'Tare weight',
        found: `${format(tare)} beside a gross weight of ${format(gross)}`,
        expected: 'a tare below the gross weight',
      });
    }
    const box = testBox(boxVolume(length, width, height), fills, target, allowed_spread, rules);
    const figures: Record<string, Figure> = {
      verdict: { label: 'The machine blows', value: box.verdict },
      mean: { label: 'Mean density', value: box.mean, format: { figures: 3 } },
      departure: {
        label: 'Mean against the target',
        value: box.departure,
        format: { figures: figuresApart(box.departure, box.nearEnough, 2) },
      },
      lowest: { label: 'Lowest fill', value: box.lowest, format: { figures: 3 } },
      highest: { label: 'Highest fill', value: box.highest, format: { figures: 3 } },
    };
    if (box.spread)
      figures.spread = {
        label: 'Spread, as a share of the mean',
        value: box.spread,
        format: { figures: figuresApart(box.spread, allowed_spread ? [allowed_spread] : [], 2) },
      };
    if (box.deviation)
      figures.deviation = {
        label: 'Standard deviation of the fills',
        value: box.deviation,
        format: { figures: 2 },
      };
    figures.off_target = {
      label: 'Fills that are off target by themselves',
      value: `${box.offTarget} of ${box.fills.length}`,
    };
    return {
      figures,
      tables: {
        fills: {
          title: 'Each fill',
          columns: { fill: 'Fill', net: 'Net weight', density: 'Density' },
          rows: box.fills.map(({ net, density }, at) => ({ fill: String(at + 1), net, density })),
          format: { density: { figures: 3 } },
        },
      },
      cautions: box.cautions,
      remarks: [
        ...(box.spread ? [] : ['One fill has no spread: fill and weigh the box again.']),
        ...(box.cautions.includes('caution.machine.few-fills')
          ? [
              said`Of the ${rules.value('fill.test-box.fills')} fills that are asked for, ${box.fills.length === 1 ? 'one was' : `${box.fills.length} were`} weighed.`,
            ]
          : []),
      ],
    };
  },
});
