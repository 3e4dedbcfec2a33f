import { input, number, quantity } from '../../quantity/quantity.ts';
import { calculation, type Figure } from '../declare/calculation.ts';
import { optional, yearField } from '../declare/field.ts';
import { readiness, smallPaintJob } from './readiness.ts';
import { extraFields, notLookedAt, readinessFields } from './readiness-fields.ts';

export const readinessCheck = calculation({
  name: 'readiness',
  title: 'Ready or not',
  question: 'Is this home ready to be filled, and what stands in the way?',
  fields: {
    built: optional(yearField('Year built', 'From the data plate, or from the papers.', '1979')),
    ...readinessFields,
    ...extraFields,
  },
  example: {
    built: '1979',
    ceiling: 'sound',
    leaks: 'none found',
    old_insulation: 'dry or none',
    roof_surface: 'worn',
    roof_carries: 'carries the crew',
    pests: 'no sign',
    junctions: 'some open',
    wiring: 'sound',
    vermiculite: 'none',
    penetrations: 'not sealed',
    fans: 'all end outdoors',
    ducts: 'none overhead',
    flues: 'all shielded',
    lights: 'none',
  },
  work: ({ built, ...survey }, rules) => {
    const { verdict, conditions, openStops, cautions, remarks } = readiness(survey, built, rules);
    const counted = (wanted: string) => conditions.filter(({ state }) => state === wanted).length;
    const warnings = quantity(counted('warn'), '1', {
      from: 'method',
      method: 'conditions that warn; paint and asbestos by the year built',
      operands: [rules.value('safety.built.lead-before'), rules.value('safety.built.asbestos-until')],
    });
    const { under_fill } = survey;
    const stops = quantity(openStops.length, '1', {
      from: 'method',
      method: 'conditions that stop the fill',
      operands: under_fill
        ? [
            input(under_fill === 'carries it' ? 0 : 1, '1', 'under_fill', {
              label: 'Of the ceiling under the fill',
            }),
          ]
        : [],
    });
    const figures: Record<string, Figure> = {
      verdict: { label: 'The home is', value: verdict },
      stops: { label: 'Open stops', value: stops },
      unseen: { label: 'Conditions not looked at', value: number(counted(notLookedAt)) },
      warnings: { label: 'Open warnings', value: warnings },
    };
    if (cautions.includes('caution.before.old-paint')) {
      const { indoors, outdoors } = smallPaintJob(rules);
      figures.paint_indoors = { label: 'Paint a small job may disturb, in a room', value: indoors };
      figures.paint_outdoors = { label: 'Paint a small job may disturb, outdoors', value: outdoors };
    }
    return {
      figures,
      tables: {
        conditions: {
          title: 'Conditions',
          columns: {
            condition: 'Condition',
            found: 'Found',
            state: 'State',
            means: 'What it means',
            rule: 'Rests on',
          },
          rows: conditions.map(({ label, answer, state, means, restsOn }) => ({
            condition: label,
            found: answer,
            state,
            means,
            rule: { caution: restsOn },
          })),
        },
      },
      cautions,
      remarks,
    };
  },
});
