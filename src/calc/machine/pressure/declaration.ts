import { ceilingFields } from '../../ceiling/fields.ts';
import { asLimit, besideLimit, engineersLoad, mostThatPasses, ofEngineer } from '../../ceiling/load.ts';
import { calculation, type Figure } from '../../declare/calculation.ts';
import { quantityField } from '../../declare/field.ts';
import { trappedAir } from './trapped-air.ts';

export const trappedAirLoad = calculation({
  name: 'trapped-air',
  title: 'Trapped air',
  question: 'Will the ceiling carry the pressure of the air that blowing traps under the roof?',
  fields: {
    ...ceilingFields,
    pressure: quantityField({
      dimension: 'load',
      beside: 'in w.c.',
      symbol: 'p',
      label: 'Pressure under the roof',
      hint: 'Cavity against the room below, with a pressure gauge, while the machine blows: the highest reading.',
      // Without the points, since a sentence ends behind it.
      example: '0.1 in wc',
      zero: 'allowed',
      most: '200 in w.c.',
    }),
    insulation: quantityField({
      dimension: 'load',
      beside: 'lb/ft2',
      symbol: 'qi',
      label: 'Weight of all insulation at the deepest place',
      hint: 'New and old together, from the ceiling load.',
      example: '1.6 lb/ft²',
      zero: 'allowed',
      most: '100 lb/ft2',
    }),
  },
  example: {
    board: 'gypsum 1/2 in',
    framing: '16 in',
    pressure: '0.1 in w.c.',
    insulation: '1.6 lb/ft²',
  },
  work: ({ board, framing, pressure, insulation, ...engineers }, rules) => {
    const load = trappedAir(board, framing, pressure, insulation, rules, engineersLoad(engineers));
    const figures: Record<string, Figure> = {
      verdict: { label: 'The ceiling', value: load.verdict },
      air: { label: 'Load of the air', value: load.air, format: { figures: 3 } },
      total: { label: 'Air and insulation', value: load.total, format: besideLimit(load.total, load.limit) },
    };
    if (load.limit) figures.limit = { label: 'What the board may carry', value: load.limit, format: asLimit };
    if (load.highestPressure)
      figures.highest_pressure = {
        label: 'Highest pressure that passes',
        value: load.highestPressure,
        format: mostThatPasses,
      };
    return { figures, cautions: load.cautions, remarks: ofEngineer(engineers, load.limit) };
  },
});
