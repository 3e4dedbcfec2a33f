import type { CautionId } from '../../../generated/rule-types.ts';
import { compare } from '../../../quantity/quantity.ts';
import { calculation, type Figure } from '../../declare/calculation.ts';
import { lengthField, optional, quantityField } from '../../declare/field.ts';
import { lineClearance } from './clearance.ts';

const ask = 'not known: ask the power company';

export const line = calculation({
  name: 'line-clearance',
  title: 'Overhead line',
  question: 'How far do people, ladders and hose stay from an overhead line?',
  fields: {
    voltage: optional(
      quantityField({
        dimension: 'voltage',
        beside: 'kV',
        symbol: 'V',
        label: 'Voltage of the line',
        hint: 'From the power company, never guessed; leave it empty if nobody knows.',
        example: '7.2 kV',
        zero: 'refused',
        most: '1200 kV',
      }),
    ),
    gap: optional(
      lengthField(
        'gap',
        'Nearest that anything comes to it',
        'People with the longest thing they may raise: ladder, pole, hose, sheet metal.',
        '14 ft',
        { zero: 'allowed', most: '500 ft' },
      ),
    ),
  },
  example: { voltage: '69 kV', gap: '14 ft' },
  work: ({ voltage, gap }, rules) => {
    if (!voltage)
      return {
        figures: { keep: { label: 'Distance to keep', value: ask } },
        cautions: ['caution.line.unknown', 'caution.line.call'],
        remarks: [],
      };
    const { keep, clearance } = lineClearance(voltage, rules);
    const figures: Record<string, Figure> = {
      keep: { label: 'Distance to keep, in whole inches', value: keep, format: { tape: 8 } },
      clearance: { label: 'Before rounding up', value: clearance, format: { round: 'up' } },
    };
    const tooNear = gap !== undefined && compare(keep, gap) > 0;
    if (gap) figures.verdict = { label: 'As planned, it is', value: tooNear ? 'too near' : 'far enough' };
    const cautions: CautionId[] = ['caution.line.call', 'caution.roof.electric'];
    return { figures, cautions: tooNear ? ['caution.line.too-near', ...cautions] : cautions, remarks: [] };
  },
});
