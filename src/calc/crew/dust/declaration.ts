import { number } from '../../../quantity/quantity.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';
import { calculation, EntriesClash, type Figure } from '../../declare/calculation.ts';
import { choiceField, ifAny, quantityField } from '../../declare/field.ts';
import { type Remark, said } from '../../declare/remark.ts';
import { materials } from '../../fill/material.ts';
import { dustExposure, MEASURED_FIT } from './exposure.ts';

const concentration = (symbol: string, label: string, hint: string, example: string) =>
  ifAny(
    quantityField({
      dimension: 'density',
      beside: 'mg/m3',
      symbol,
      label,
      hint,
      example,
      zero: 'allowed',
      most: '10000 mg/m3',
    }),
  );

/** What a full facepiece stands for, and what it counts as where nobody measured its fit. */
function onItsFit(rules: Rulebook): Remark {
  const halfMask = rules.find('safety.dust.respirators', { factor: number(1) }, 'factor')?.low ?? number(1);
  return said`A full facepiece suffices only where an instrument measured a fit of ${rules.value('safety.dust.fit-of-full-facepiece')} or more. A test by taste or smell shows ${rules.value('safety.dust.fit-by-taste')} at most; then it counts as a half mask, for ${halfMask} times the limit at most.`;
}

/** What lies over a limit is never told as no more than it. */
const timesLimit = { figures: 3, round: 'up' } as const;

export const dust = calculation({
  name: 'dust',
  title: 'Dust',
  question: 'Is there too much dust in the air, and which respirator would suffice until there is less?',
  fields: {
    material: choiceField('Material', 'What the dust comes from.', materials),
    total: concentration(
      'Cd',
      'Total dust',
      'Dust of every size, from a sampler worn by a worker.',
      '8 mg/m³',
    ),
    respirable: concentration('Cr', 'Respirable dust', 'The part fine enough to reach the lungs.', '1 mg/m³'),
    fibres: ifAny(
      quantityField({
        dimension: 'pieces per volume',
        beside: 'fibres/cm3',
        symbol: 'Cf',
        label: 'Fibres',
        hint: 'A count of fine glass fibres; for glass fibre only.',
        example: '0.5 fibres/cm³',
        zero: 'allowed',
        most: '1000 fibres/cm3',
      }),
    ),
  },
  example: { material: 'glass fibre', total: '8 mg/m³', respirable: '1 mg/m³', fibres: '0.5 fibres/cm³' },
  work: ({ material, total, respirable, fibres }, rules) => {
    if (fibres && material !== 'glass fibre')
      throw new EntriesClash({
        field: 'fibres',
        label: 'Fibres',
        found: `a count for ${material}`,
        expected: 'nothing, since the recommended limit is for glass fibre',
      });
    if (!total && !respirable && !fibres)
      throw new EntriesClash({
        field: 'total',
        label: 'Total dust',
        found: 'nothing measured',
        expected: 'total dust, respirable dust or fibres, measured in the air that is breathed',
      });
    const exposure = dustExposure({ total, respirable, fibres }, material, rules);
    const figures: Record<string, Figure> = {
      verdict: { label: 'The air is', value: exposure.verdict },
      respirator: {
        label: 'Respirator that suffices',
        value: exposure.respirator ?? 'none of those listed here',
      },
      factor: { label: 'Worst, times its limit', value: exposure.factor, format: timesLimit },
    };
    return {
      figures,
      tables: {
        against: {
          title: 'Against each limit',
          columns: {
            what: 'What',
            measured: 'Measured',
            limit: 'Limit',
            standing: 'Standing',
            times: 'Times the limit',
          },
          rows: exposure.against.map(({ what, measured, limit, standing, times }) => ({
            what,
            measured,
            limit,
            standing,
            times,
          })),
          format: { times: timesLimit },
        },
      },
      cautions: exposure.cautions,
      remarks: exposure.respirator === MEASURED_FIT ? [onItsFit(rules)] : [],
    };
  },
});
