import { figuresApart } from '../../../quantity/apart.ts';
import { calculation, type Figure } from '../../declare/calculation.ts';
import { choiceField, quantityField } from '../../declare/field.ts';
import { heatRisk } from './band.ts';

export const heat = calculation({
  name: 'heat-index-band',
  title: 'Heat band',
  question: 'How great is the risk of the heat, and what has to be done about it?',
  fields: {
    index: quantityField({
      dimension: 'temperature reading',
      beside: 'F',
      symbol: 'HI',
      label: 'Heat index',
      hint: 'From the weather service for this place and hour, not the air temperature.',
      example: '88 F',
      zero: 'allowed',
      negative: 'allowed',
      most: '160 F',
    }),
    place: choiceField('Where the work is', 'A roof is nearly always in full sun.', [
      'in full sun',
      'in the shade',
    ]),
  },
  example: { index: '88 F', place: 'in full sun' },
  work: ({ index, place }, rules) => {
    const { felt, band, borders, toNext, cautions } = heatRisk(index, place === 'in full sun', rules);
    const figures: Record<string, Figure> = {
      band: { label: 'Band of risk', value: band },
      felt: {
        label: place === 'in full sun' ? 'Heat index with full sun' : 'Heat index',
        value: felt,
        format: { figures: figuresApart(felt, borders, 3) },
      },
    };
    if (toNext)
      figures.to_next = {
        label: 'Up to the next band',
        value: toNext,
        format: { figures: 3, round: 'down' },
      };
    return {
      figures,
      cautions,
      remarks: [
        'Hard work, coveralls, a respirator and a closed cavity make it worse than the band says; so do the first days of hot weather.',
      ],
    };
  },
});
