import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { number } from '../../quantity/quantity.ts';
import { type AnswerTable, calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import { type LogSays, type ReceiptValues, receiptFields } from './fields.ts';
import { asWeight, checkPart, type PartChecked } from './part-checks.ts';
import { type ReceiptSheet, receiptSheet, stillMissing } from './sheet.ts';

export const receipt = calculation({
  name: 'receipt',
  title: 'Receipt and certificate',
  question: 'What do receipt and certificate say, and what is still missing on them?',
  fields: receiptFields,
  example: {
    home: '14 Larkspur Lane',
    installer: 'Harrow Valley Home Repair',
    date: '2026-11-25',
    fact_sheet: '2026-11-02',
    parts: [
      {
        part: 'roof cavity',
        insulation: 'glass fibre',
        area: '924 ft²',
        initial_thickness: '10 1/2 in',
        settled_thickness: '10 1/4 in',
        r_value: '38 h·ft²·°F/Btu',
        r_from: 'test report or data sheet',
        r_paper: 'closed cavity at 1.5 lb/ft³',
        bags: '39 bags',
        installed_density: '1.45 lb/ft³',
        bag_weight: '30 lb/bag',
        label_weight: '1.25 lb/ft²',
      },
    ],
  },
  work: (values, rules) => {
    if (values.parts.length === 0) {
      throw new EntriesClash({
        field: 'parts',
        label: 'Parts of the house',
        found: 'an empty list',
        expected: 'one part or more',
      });
    }
    // Days written this way stand in the order of the calendar.
    if (values.fact_sheet && values.date && values.fact_sheet > values.date) {
      throw new EntriesClash({
        field: 'fact_sheet',
        label: 'Fact sheet shown',
        found: `${values.fact_sheet}, after the work was finished on ${values.date}`,
        expected: 'a day before the customer agreed to buy',
      });
    }
    const checked = values.parts.map((part, place) => checkPart(part, place, rules));
    const sheet = receiptSheet(values, rules);
    return {
      figures: figuresOf(sheet, values, checked),
      tables: tablesOf(sheet),
      cautions: cautionsOf(values, checked),
      remarks: [
        ...(sheet.missing.length > 0 ? [stillMissing(sheet.missing)] : []),
        ...checked.flatMap(({ remarks }) => remarks),
        'The rules give no form for a cavity that tapers. Divide it into parts, or state the least thickness and say so; that is our advice, and no document says it.',
        ...sheet.statements,
      ],
    };
  },
});

/** A sheet on which nothing is missing tells of an R all the same, which is not there where the bags weigh too little. */
function verdictOf(
  missing: readonly string[],
  checked: readonly PartChecked[],
  logSays: LogSays | undefined,
): string {
  if (logSays === 'a ceiling is overloaded') return 'not to be signed before that stop is settled';
  if (missing.length > 0) return 'not complete';
  if (logSays === 'an opening is light') return 'not to be signed before it is filled';
  return checked.some(({ underWeight }) => underWeight) ? 'not to be signed for that R' : 'ready to sign';
}

function figuresOf(
  { missing }: ReceiptSheet,
  { parts, log_says }: ReceiptValues,
  checked: readonly PartChecked[],
): Record<string, Figure> {
  const figures: Record<string, Figure> = {
    verdict: { label: 'The sheet is', value: verdictOf(missing, checked, log_says) },
    missing: { label: 'Items missing', value: number(missing.length) },
  };
  for (const [place, { weight, underWeight, density }] of checked.entries()) {
    const of = parts[place]?.part ?? '';
    const name = (figure: string) => `${figure}_${place + 1}`;
    if (weight)
      figures[name('weight')] = {
        label: `Weight of the bags on the area, ${of}`,
        value: weight,
        format: asWeight(weight, parts[place]?.label_weight),
      };
    if (underWeight !== undefined)
      figures[name('label_weight')] = {
        label: `The label’s least weight, ${of}`,
        value: underWeight ? 'not reached' : 'reached',
      };
    if (density)
      figures[name('density')] = {
        label: `Density by the bags, to check the one stated, ${of}`,
        value: density,
        format: { figures: 3 },
      };
  }
  return figures;
}

/** A row an item, a column a part: nothing stands under a part but its own. */
function tablesOf({ parts, head }: ReceiptSheet): Record<string, AnswerTable> {
  const columns = Object.fromEntries(parts.map(({ name }, place) => [`part_${place + 1}`, name]));
  const rows = (parts[0]?.rows ?? []).map(({ label, askedBy }, line) => ({
    item: label,
    ...Object.fromEntries(
      parts.map(({ rows }, place) => {
        const { value = 'missing', format: how } = rows[line] ?? {};
        return [`part_${place + 1}`, typeof value === 'string' ? value : format(value, how)];
      }),
    ),
    asked: askedBy.join('; ') || 'neither',
  }));
  return {
    sheet: {
      title: 'The sheet',
      columns: { item: 'Item', told: 'Stated', asked: 'Asked for by' },
      rows: head.map(({ label, value = 'missing', askedBy }) => ({
        item: label,
        told: value,
        asked: askedBy.join('; ') || 'neither',
      })),
    },
    parts: { title: 'Part by part', columns: { item: 'Item', ...columns, asked: 'Asked for by' }, rows },
  };
}

function cautionsOf({ parts, log_says }: ReceiptValues, checked: readonly PartChecked[]): CautionId[] {
  return [
    ...(log_says === 'a ceiling is overloaded' ? (['caution.log.overloaded'] as const) : []),
    ...(log_says === 'an opening is light' ? (['caution.log.light'] as const) : []),
    ...(checked.some(({ underWeight }) => underWeight) ? (['caution.receipt.under-weight'] as const) : []),
    ...(parts.some(({ r_from }) => r_from === 'bag label') ? (['caution.receipt.open-chart'] as const) : []),
    'caution.receipt.maker-data-only',
    'caution.receipt.fact-sheet',
    ...(parts.some(({ insulation }) => insulation === 'cellulose')
      ? (['caution.receipt.cellulose-label'] as const)
      : []),
  ];
}
