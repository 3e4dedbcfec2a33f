import { inUnit, named, over, type Quantity, times } from '../../../quantity/quantity.ts';
import { timeInOneUnit } from '../../../quantity/time-in-two-units.ts';
import { type AnswerTable, calculation, EntriesClash, type Figure } from '../../declare/calculation.ts';
import {
  lengthField,
  listField,
  optional,
  quantityField,
  type Values,
  wordsField,
} from '../../declare/field.ts';
import { materialFields } from '../../fill/fields.ts';
import { weightField } from '../fields.ts';
import { drawBack, minutesFor, rateOf } from './draw-back.ts';

interface RateGiven {
  readonly rate: Quantity<'weight rate'> | undefined;
  readonly weight: Quantity<'weight'> | undefined;
  readonly time: Quantity<'time'> | undefined;
}

/** The rate as given, or from a weighed run; told in one way only. */
function rateFrom({ rate, weight, time }: RateGiven): Quantity<'weight rate'> {
  if (rate && !weight && !time) return rate;
  if (weight && time && !rate) return rateOf(weight, time);
  throw new EntriesClash({
    field: 'rate',
    label: 'Rate of the machine',
    found: rate
      ? 'a rate beside a weighed run'
      : weight || time
        ? 'half of a weighed run'
        : 'neither a rate nor a weighed run',
    expected: 'the rate alone, or the weight and the time of a run',
  });
}

const bagsField = (symbol: string, label: string, hint: string, example: string, most: string) =>
  optional(
    quantityField({
      dimension: 'pieces',
      beside: 'bag',
      symbol,
      label,
      hint,
      example,
      zero: 'refused',
      most,
    }),
  );

const openingFields = {
  what: optional(wordsField('Which', 'Its name, for the table.', 'opening 1')),
  volume: quantityField({
    dimension: 'volume',
    beside: 'ft3',
    symbol: 'Vo',
    label: 'Volume',
    hint: 'What is filled through it.',
    example: '40 ft³',
    zero: 'refused',
    most: '20000 ft3',
  }),
  pushed: optional(
    lengthField('h', 'Hose pushed in', 'All its pushes together.', '20 ft', { most: '5000 ft' }),
  ),
};

/** Minutes and draw-back of each opening. What its hose fills across is its volume over all of the hose that is pushed in. */
const tableOf = (
  openings: Values<{ openings: ReturnType<typeof listField<typeof openingFields>> }>['openings'],
  density: Quantity<'density'>,
  rate: Quantity<'weight rate'>,
  otherwise: Quantity<'area'>,
): AnswerTable => ({
  title: 'Each opening',
  columns: {
    what: 'Opening',
    volume: 'Volume',
    time: 'Time',
    speed: 'Draw-back speed',
    time_per_foot: 'Time for a foot of hose',
  },
  rows: openings.map(({ what, volume, pushed }, place) => {
    const { speed, timePerFoot } = drawBack(
      rate,
      density,
      pushed ? inUnit(over(volume, pushed), 'ft2') : otherwise,
    );
    return {
      what: what ?? String(place + 1),
      volume,
      time: minutesFor(times(volume, density), rate),
      speed,
      time_per_foot: timePerFoot,
    };
  }),
  format: {
    volume: { figures: 3 },
    time: { figures: 3 },
    speed: { figures: 3 },
    time_per_foot: { figures: 3 },
  },
});

export const blowingRate = calculation({
  name: 'blowing-rate',
  title: 'Blowing rate',
  question: 'How fast do I draw the hose back, and how long does an opening take?',
  fields: {
    rate: optional(
      quantityField({
        dimension: 'weight rate',
        beside: 'lb/min',
        symbol: 'ṁ',
        label: 'Rate of the machine',
        hint: 'Weighed on this job’s hose and material, if you know it.',
        example: '12 lb/min',
        zero: 'refused',
        most: '200 lb/min',
      }),
    ),
    weight: optional(
      weightField(
        'wr',
        'Weight blown in a run',
        'Weigh what goes in; in place of the rate.',
        '30 lb',
        '5000 lb',
      ),
    ),
    time: optional(
      quantityField({
        dimension: 'time',
        plainly: timeInOneUnit,
        beside: 'min',
        symbol: 'tr',
        label: 'Time of the run',
        hint: 'How long the machine took for that weight.',
        example: '2.5 min',
        zero: 'refused',
        most: '24 h',
      }),
    ),
    density: materialFields.density,
    area: quantityField({
      dimension: 'area',
      beside: 'ft2',
      symbol: 'A',
      label: 'Cross-section that the hose fills',
      hint: 'Across the hose: the width of the strip between trusses or lanes, times the mean depth above the old insulation.',
      example: '2 ft²',
      zero: 'refused',
      most: '200 ft2',
    }),
    volume: optional(
      quantityField({
        dimension: 'volume',
        beside: 'ft3',
        symbol: 'Vo',
        label: 'Volume that the opening serves',
        hint: 'What is filled through one opening.',
        example: '40 ft³',
        zero: 'refused',
        most: '20000 ft3',
      }),
    ),
    bags: bagsField('no', 'Bags of the opening', 'In place of its volume.', '2 bags', '500 bags'),
    all_bags: bagsField(
      'na',
      'Bags of the whole job',
      'For the time of the whole job.',
      '12 bags',
      '2000 bags',
    ),
    bag_weight: optional(materialFields.bag_weight),
    openings: optional(
      listField(
        'Openings',
        'For a table of them; where no hose is entered, the cross-section above holds.',
        'an opening',
        openingFields,
      ),
    ),
  },
  example: {
    weight: '30 lb',
    time: '2.5 min',
    density: '1.5 lb/ft³',
    area: '2 ft²',
    volume: '40 ft³',
    all_bags: '12 bags',
    bag_weight: '30 lb/bag',
    openings: [
      { what: 'first lane', volume: '40 ft³', pushed: '20 ft' },
      { what: 'second lane', volume: '60 ft³', pushed: '20 ft' },
    ],
  },
  work: (values) => {
    const { density, area, volume, bags, all_bags, bag_weight, openings = [] } = values;
    const rate = rateFrom(values);
    if (volume && bags)
      throw new EntriesClash({
        field: 'bags',
        label: 'Bags of the opening',
        found: 'bags beside the volume of the opening',
        expected: 'one of the two',
      });
    const weightOf = (count: Quantity<'pieces'>): Quantity<'weight'> => {
      if (bag_weight) return times(count, bag_weight);
      throw new EntriesClash({
        field: 'bag_weight',
        label: 'Net weight of a bag',
        found: 'nothing, though bags are given',
        expected: 'the weight from the bag label, such as 30 lb/bag',
      });
    };
    const { speed, perLength, timePerFoot } = drawBack(rate, density, area);
    const figures: Record<string, Figure> = {
      speed: { label: 'Draw-back speed', value: speed, format: { figures: 3 } },
      time_per_foot: { label: 'Time for a foot of hose', value: timePerFoot, format: { figures: 3 } },
    };
    const opening = bags ? weightOf(bags) : volume && times(volume, density);
    if (opening)
      figures.opening_time = {
        label: 'Time for the opening',
        value: named(minutesFor(opening, rate), 'to', 'Time for the opening'),
        format: { figures: 3 },
      };
    if (all_bags)
      figures.total_time = {
        label: 'Time for all bags',
        value: named(minutesFor(weightOf(all_bags), rate), 'ta', 'Time for all bags'),
        format: { figures: 3 },
      };
    figures.per_length = {
      label: 'Weight laid in a foot of hose travel',
      value: perLength,
      format: { figures: 3 },
    };
    figures.rate = { label: 'Rate of the machine', value: rate, format: { figures: 3 } };
    return {
      figures,
      ...(openings.length > 0 ? { tables: { openings: tableOf(openings, density, rate, area) } } : {}),
      cautions: [
        'caution.fill.too-full',
        'caution.ceiling.trapped-air',
        'caution.machine.rate-changes',
        'caution.fill.maker-governs',
      ],
      remarks: [],
    };
  },
});
