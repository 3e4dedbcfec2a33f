import { figuresApart } from '../../../quantity/apart.ts';
import { format } from '../../../quantity/format.ts';
import { compare, inUnit, quantity, total } from '../../../quantity/quantity.ts';
import { timeInOneUnit } from '../../../quantity/time-in-two-units.ts';
import { calculation, EntriesClash, type Figure } from '../../declare/calculation.ts';
import { ifAny, listField, quantityField } from '../../declare/field.ts';
import { printed, said } from '../../declare/remark.ts';
import { allowedTime, type JudgedPeriod, noiseDose, timeLeft } from './dose.ts';

const levelField = (symbol: string, label: string, hint: string, example: string) =>
  quantityField({
    dimension: 'sound level',
    beside: 'dBA',
    symbol,
    label,
    hint,
    example,
    zero: 'refused',
    most: '160 dBA',
  });

const MOST_PERIODS = 30;

const allowedText = ({ allowed }: JudgedPeriod) =>
  allowed === 'any' ? 'too quiet to count' : allowed === 'none' ? 'none' : allowed;

/** A dose over what a day allows is never told as no more than it. */
const share = { figures: 3, round: 'up' } as const;

export const noise = calculation({
  name: 'noise-dose',
  title: 'Noise dose',
  question: 'Is the noise of the blower and the saws more than a day allows, and how much time is left?',
  fields: {
    periods: listField(
      'Times in noise',
      'All that one person meets in one day, at other jobs too.',
      'a time in noise',
      {
        level: levelField('n', 'Level', 'At the ear, by a meter set to A and slow.', '95 dBA'),
        time: quantityField({
          dimension: 'time',
          plainly: timeInOneUnit,
          beside: 'min',
          symbol: 'T',
          label: 'Time',
          hint: 'How long at that level.',
          example: '90 min',
          zero: 'refused',
          most: '24 h',
        }),
      },
      MOST_PERIODS,
    ),
    next_level: ifAny(
      levelField('nn', 'Level of what comes next', 'To know how much time is left at it.', '100 dBA'),
    ),
  },
  example: {
    periods: [
      { level: '95 dBA', time: '2 h' },
      { level: '100 dBA', time: '20 min' },
    ],
    next_level: '100 dBA',
  },
  common: { 'periods.0.level': ['85 dBA', '90 dBA', '95 dBA', '100 dBA', '105 dBA'] },
  work: ({ periods, next_level }, rules) => {
    const refuse = (found: string, expected: string): never => {
      throw new EntriesClash({ field: 'periods', label: 'Times in noise', found, expected });
    };
    if (periods.length === 0 && !next_level) return refuse('none', 'one or more, with level and time');
    const loudest = rules.value('safety.noise.loudest');
    const day = quantity(1, 'day');
    const all = periods.length > 0 ? total(periods.map(({ time }) => time)) : quantity(0, 'h');
    if (compare(all, day) > 0)
      return refuse(`${format(inUnit(all, 'h'))} in all`, 'no more than the hours of one day');
    const { dose, verdict, periods: judged, cautions } = noiseDose(periods, rules);
    const nextTooLoud = next_level !== undefined && allowedTime(next_level, rules) === 'none';
    const figures: Record<string, Figure> = { verdict: { label: 'The day’s noise is', value: verdict } };
    if (dose) figures.dose = { label: 'Dose, of 1 that a day allows', value: dose, format: share };
    if (next_level)
      figures.left = {
        label: `Time left at ${format(next_level)}`,
        value: timeLeft(dose, next_level, rules) ?? 'too quiet to count',
        format: { figures: 3, round: 'down' },
      };
    return {
      figures,
      tables: {
        periods: {
          title: 'Each time in noise',
          columns: {
            period: 'Number',
            level: 'Level',
            time: 'Time',
            allowed: 'Allowed in a day',
            part: 'Part of the dose',
          },
          rows: judged.map((each, at) => ({
            period: String(at + 1),
            level: each.level,
            time: each.time,
            allowed: allowedText(each),
            part: each.part ?? 'not to be done',
          })),
          format: { part: share },
        },
      },
      cautions: [...new Set(nextTooLoud ? (['caution.noise.above-table', ...cautions] as const) : cautions)],
      remarks: judged.flatMap(({ level, allowed }, at) =>
        allowed === 'none'
          ? [
              said`Number ${at + 1}, at ${printed(level, { figures: figuresApart(level, [loudest], 3) })}, is louder than the ${loudest} at which the table ends.`,
            ]
          : [],
      ),
    };
  },
});
