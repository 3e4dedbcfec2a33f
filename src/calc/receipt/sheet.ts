import type { FormatOptions } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { type UnitName, units } from '../../quantity/units.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type Remark, said } from '../declare/remark.ts';
import { type PartValues, partFields, type ReceiptValues, receiptFields } from './fields.ts';

/** The two papers that one sheet serves. */
export const papers = { receipt: '16 CFR 460.17', certificate: 'IECC 2021 R303.1.1' } as const;

/** A line of the sheet: what is told, or nothing yet. */
export interface SheetRow {
  readonly label: string;
  readonly value: Quantity | string | undefined;
  readonly format?: FormatOptions;
  /** The sign of the unit that whoever writes it by hand is to write it in. */
  readonly unit?: string;
  /** The papers that ask for it; none where it only helps the reader. */
  readonly askedBy: readonly string[];
}

export interface SheetPart {
  readonly name: string;
  readonly rows: readonly SheetRow[];
}

/** The receipt and certificate in sections, for page and print alike. */
export interface ReceiptSheet {
  readonly title: string;
  readonly head: readonly SheetRow[];
  /** One for each part of the house, never a total of them. */
  readonly parts: readonly SheetPart[];
  readonly statements: readonly Remark[];
  /** What is written by hand on the printed sheet. */
  readonly signatures: readonly SheetRow[];
  /** What a paper asks for and the sheet does not tell yet; a signature is left for the pen. */
  readonly missing: readonly string[];
}

/** Which of the two papers ask for an item? @example askedBy('installed density', rules) // => ['IECC 2021 R303.1.1'] */
export function askedBy(item: string, rules: Rulebook): readonly string[] {
  return [
    ...(rules.find('paperwork.receipt.items', { item }, 'for') ? [papers.receipt] : []),
    ...(rules.find('paperwork.certificate.items', { item }, 'for') ? [papers.certificate] : []),
  ];
}

const tape: FormatOptions = { tape: 16 };

/** The lines of one part, in the order of the sheet: the item as the papers name it, and what the entries tell. */
function rowsOf(part: PartValues, rules: Rulebook): SheetRow[] {
  const row = (item: string, value: SheetRow['value'], unit?: UnitName, how?: FormatOptions): SheetRow => ({
    label: capital(item),
    value,
    ...(unit ? { unit: units[unit].sign } : {}),
    ...(how ? { format: how } : {}),
    askedBy: askedBy(item, rules),
  });
  return [
    row('type of insulation', part.insulation),
    row('maker of the insulation', part.maker),
    row('coverage area', part.area, partFields.area.beside),
    row('initial installed thickness', part.initial_thickness, 'in', tape),
    row('minimum settled thickness', part.settled_thickness, 'in', tape),
    row('R-value', part.r_value, partFields.r_value.beside),
    row('R copied from', part.r_from && (part.r_paper ? `${part.r_from}: ${part.r_paper}` : part.r_from)),
    row('number of bags', part.bags, partFields.bags.beside),
    row('installed density', part.installed_density, partFields.installed_density.beside),
    row('net weight of a bag', part.bag_weight, partFields.bag_weight.beside),
  ];
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/**
 * What stands on the receipt and certificate, ready to be signed and posted? Each part of the house by itself: no area and
 * no R is added up, and no R is computed. Items come from the two rules on these papers; what is not told stays empty.
 * @example receiptSheet({ home: '14 Larkspur Lane', installer: undefined, date: undefined, fact_sheet: undefined, parts: [] }, rules).missing // => ['Installer', 'Date']
 */
export function receiptSheet(values: ReceiptValues, rules: Rulebook): ReceiptSheet {
  const head: SheetRow[] = [
    { label: receiptFields.home.label, value: values.home, askedBy: [] },
    {
      label: receiptFields.installer.label,
      value: values.installer,
      askedBy: askedBy('signature of the installer', rules),
    },
    { label: receiptFields.date.label, value: values.date, askedBy: askedBy('date', rules) },
    { label: receiptFields.fact_sheet.label, value: values.fact_sheet, askedBy: [] },
  ];
  const parts = values.parts.map((part) => ({ name: capital(part.part), rows: rowsOf(part, rules) }));
  const lacking = (rows: readonly SheetRow[]) =>
    rows.filter(({ value, askedBy }) => value === undefined && askedBy.length > 0).map(({ label }) => label);
  return {
    title: 'Insulation receipt and certificate',
    head,
    parts,
    statements: statements(values, rules),
    signatures: [
      {
        label: 'Signed by the installer',
        value: undefined,
        askedBy: askedBy('signature of the installer', rules),
      },
      { label: 'Date of the signature', value: undefined, askedBy: askedBy('date', rules) },
      { label: 'Posted at', value: undefined, askedBy: askedBy('posted in plain sight', rules) },
      { label: 'Received by the customer', value: undefined, askedBy: [] },
    ],
    missing: [
      ...lacking(head),
      ...parts.flatMap(({ rows }, place) =>
        lacking(rows).map((label) => `${label}, ${values.parts[place]?.part}`),
      ),
    ],
  };
}

/** All that is missing, in a sentence. @example stillMissing(['Installer', 'Date']) // => 'Still missing: Installer; Date.' */
export const stillMissing = (missing: readonly string[]): string => `Still missing: ${missing.join('; ')}.`;

function statements({ parts }: ReceiptValues, rules: Rulebook): Remark[] {
  const says: Remark[] = [
    'The R-value of each part is the maker’s, copied from the paper named beside it. It is not an estimate, and not R per inch times inches.',
    'Each part of the house stands by itself. Areas and R-values of parts are not added up.',
    said`No specimen of the insulation may have an R that falls short of its label by more than ${rules.value('paperwork.receipt.tolerance')} (16 CFR 460.8).`,
    said`Open attics have a depth marker for every ${rules.value('paperwork.certificate.markers-every')} (IECC 2021 R303.1.1.1); a closed roof cavity has no place for one.`,
    'Post a copy in plain sight, give one to the customer, and keep one with the job.',
  ];
  if (parts.some(({ insulation }) => insulation === 'cellulose'))
    says.push('A bag label of the cellulose is handed over with this sheet (16 CFR 1404.4(a)).');
  return says;
}
