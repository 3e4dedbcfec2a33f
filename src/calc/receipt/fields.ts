import {
  choiceField,
  dateField,
  lengthField,
  listField,
  optional,
  quantityField,
  type Values,
  wordsField,
} from '../declare/field.ts';
import { materials } from '../fill/material.ts';

/** The maker's papers that an R may be copied from; an estimate is none of them. */
export const makersPapers = ['bag label', 'fact sheet', 'test report or data sheet'] as const;

/** What the fill log may say against the sheet; the gravest of it. */
const logSays = ['nothing against it', 'an opening is light', 'a ceiling is overloaded'] as const;
export type LogSays = (typeof logSays)[number];

/** What is told of one part of the house; what is left empty is listed as missing, not guessed. */
export const partFields = {
  part: wordsField('Part of the house', 'What was insulated.', 'roof cavity'),
  insulation: choiceField('Type of insulation', 'From the bag.', materials),
  maker: optional(wordsField('Maker', 'And the product, from the bag.', 'maker and product as on the bag')),
  area: optional(
    quantityField({
      dimension: 'area',
      beside: 'ft2',
      symbol: 'A',
      label: 'Coverage area',
      hint: 'Of this part alone.',
      example: '924 ft²',
      zero: 'refused',
      most: '10000 ft2',
    }),
  ),
  initial_thickness: optional(
    lengthField('ti', 'Initial installed thickness', 'As it lies when the hose is out.', '10 in', {
      most: '6 ft',
    }),
  ),
  settled_thickness: optional(
    lengthField('ts', 'Minimum settled thickness', 'From the label, for the R stated.', '9 3/4 in', {
      most: '6 ft',
    }),
  ),
  r_value: optional(
    quantityField({
      dimension: 'thermal resistance',
      beside: 'h ft2 F/Btu',
      symbol: 'R',
      label: 'R-value',
      hint: 'From the maker’s paper, for the settled thickness.',
      example: '30 h ft² F/Btu',
      zero: 'refused',
      most: '200 h ft2 F/Btu',
    }),
  ),
  r_from: optional(choiceField('R copied from', 'The maker’s paper that gives this R.', makersPapers)),
  r_paper: optional(
    wordsField('Which one', 'Its number, date or row, so that anybody finds it.', 'coverage chart, row R 30'),
  ),
  bags: optional(
    quantityField({
      dimension: 'pieces',
      beside: 'bag',
      symbol: 'n',
      label: 'Number of bags',
      hint: 'Used in this part.',
      example: '36 bags',
      zero: 'refused',
      most: '1000 bags',
    }),
  ),
  installed_density: optional(
    quantityField({
      dimension: 'density',
      beside: 'lb/ft3',
      symbol: 'ρ',
      label: 'Installed density',
      hint: 'As it lies.',
      example: '1.5 lb/ft³',
      zero: 'refused',
      most: '8 lb/ft3',
    }),
  ),
  bag_weight: optional(
    quantityField({
      dimension: 'weight of a piece',
      beside: 'lb/bag',
      symbol: 'wb',
      label: 'Net weight of a bag',
      hint: 'From the label.',
      example: '30 lb/bag',
      zero: 'refused',
      most: '200 lb/bag',
    }),
  ),
  label_weight: optional(
    quantityField({
      dimension: 'load',
      beside: 'lb/ft2',
      symbol: 'ql',
      label: 'Minimum weight on the label',
      hint: 'For an area, at the R stated.',
      example: '1.1 lb/ft²',
      zero: 'refused',
      most: '100 lb/ft2',
    }),
  ),
} as const;

/** Everything that the receipt and certificate tell. */
export const receiptFields = {
  home: wordsField('Job', 'The home: a street, a number.', '14 Larkspur Lane'),
  installer: optional(wordsField('Installer', 'Who insulated it, and signs.', 'Harrow Valley Home Repair')),
  date: optional(dateField('Date', 'The day the work was finished.', '2026-11-25')),
  fact_sheet: optional(
    dateField('Fact sheet shown', 'The day the customer saw it, before agreeing to buy.', '2026-11-02'),
  ),
  log_says: optional(
    choiceField('The fill log', 'What it says of the openings. Left empty, it is not asked here.', logSays),
  ),
  parts: listField(
    'Parts of the house',
    'Each by itself; areas and R-values of parts are never added up.',
    'a part of the house',
    partFields,
    6,
  ),
} as const;

export type ReceiptValues = Values<typeof receiptFields>;
export type PartValues = Values<typeof partFields>;
