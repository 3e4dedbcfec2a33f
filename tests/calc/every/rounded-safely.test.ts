import { describe, expect, test } from 'vitest';
import { calculations } from '../../../src/calc/calculations.ts';
import { type Entries, printed, worked } from '../told.ts';

const one = (name: string) => {
  const found = calculations.find((each) => each.name === name);
  if (!found) throw new Error(`found no calculation ${name}, expected one`);
  return found;
};

/** What the example says, and a few entries otherwise. */
const withExample = (name: string, entries: Entries): Entries => ({ ...one(name).example, ...entries });

describe('what is printed of a least, a most, a distance kept or a load carried stands on the side that is safe', () => {
  // Each lies off a mark of the tape or of its figures, so that the nearest would stand on the wrong side.
  test.each<
    readonly [
      title: string,
      calculation: string,
      entries: Entries,
      figure: string,
      text: string,
      byHand: string,
    ]
  >([
    [
      'a tube is not told shorter than the bay',
      'edge-bays',
      { width: '166.05 in' },
      'tube',
      '13 ft 10 1/8 in',
      '166.05 in are 13 ft 10.05 in; the eighth above is 13 ft 10 1/8 in.',
    ],
    [
      'what is left over in a lane is not told shorter',
      'gable-lanes',
      { length: '792.05 in', reach: '25 ft', flues: [] },
      'left',
      '16 ft 0 1/8 in',
      '792.05 less two pushes of 300 in is 192.05 in; the eighth above is 192 1/8 in.',
    ],
    [
      'the hose for the longest push is not told shorter',
      'ways-in',
      { length: '792.1 in' },
      'gable_push',
      '33 ft 0 1/8 in',
      'Half of 792.1 in is 396.05 in; the eighth above is 396 1/8 in.',
    ],
    [
      'vents are not told smaller than the code asks',
      'cavity-ventilation',
      { area: '1000 ft2' },
      'free_area',
      '3.334 ft²',
      'A three-hundredth of 1000 ft2 is 3.3333 ft2.',
    ],
    [
      'a ring about a flue is not told narrower than its listing',
      'clear-spaces',
      {
        things: [
          {
            kind: 'listed double-wall vent or chimney',
            across: '6 in',
            depth: '12 in',
            cavity: '13 in',
            listed: '10 cm',
          },
        ],
      },
      'widest_ring',
      '3.938 in',
      '10 cm over 2.54 is 3.93701 in.',
    ],
    [
      'the rate of fresh air is not told lower than the standard asks',
      'fresh-air',
      { floor: '924.1 ft2', bedrooms: '3' },
      'whole_house',
      '57.8 cfm',
      '0.03 × 924.1 + 7.5 × 4 = 57.723 cfm, by ASHRAE 62.2.',
    ],
    [
      'the distance to a line is not told shorter',
      'line-clearance',
      { voltage: '50.01 kV' },
      'clearance',
      '120.1 in',
      '10 ft, and 4 in for each 10 kV over 50: 120.004 in, by 29 CFR 1926.1408, Table A.',
    ],
    [
      'a noise over what a day allows is not told as what it allows',
      'noise-dose',
      { periods: [{ level: '90 dBA', time: '481 min' }], next_level: '' },
      'dose',
      '1.01',
      '481 of 480 minutes at 90 dBA is 1.00208, by 29 CFR 1910.95, Table G-16.',
    ],
    [
      'dust over its limit is not told as being at it',
      'dust',
      { material: 'cellulose', total: '15.01 mg/m3', respirable: '', fibres: '' },
      'factor',
      '1.01',
      '15.01 over the 15 mg/m3 of 29 CFR 1910.1000, Table Z-1, is 1.00067.',
    ],
    [
      'the sealant to bring is not told as less than the bead takes',
      'sealant',
      { length: '120.036 in', bead: '1/4 in', bead_shape: 'square' },
      'volume',
      '7.51 in³',
      '120.036 × 0.25² = 7.50225 in3.',
    ],
    [
      'the bead from a cartridge is not told longer than it gets',
      'sealant',
      { bead: '5/16 in', bead_shape: 'square', cartridge_holds: '10.1 fl oz/cartridge' },
      'yield',
      '15.5 ft a cartridge',
      '10.1 fl oz of 1.8046875 in3 over 0.3125² in2 is 186.65 in, or 15.554 ft.',
    ],
    [
      'the load that an engineer wrote is not rounded up',
      'ceiling-load',
      { board: 'other or not known', engineer_load: '2.19996 lb/ft2', engineer: 'A. Engineer' },
      'limit',
      '2.19996 lb/ft²',
      'As written: to four figures it would be 2.2.',
    ],
    [
      'the low end of R an inch is not told higher',
      'fill',
      { material: 'mineral wool', label_r_per_inch: '3.4567 h ft2 F/(Btu in)' },
      'resistance_low',
      'R-3.45 per in',
      'As the label has it: to three figures the nearest would be 3.46.',
    ],
    [
      'the high end of R an inch is not told lower',
      'fill',
      { material: 'mineral wool', label_r_per_inch: '3.4532 h ft2 F/(Btu in)' },
      'resistance_high',
      'R-3.46 per in',
      'As the label has it: to three figures the nearest would be 3.45.',
    ],
  ])('%s', (_, name, entries, figure, text) => {
    expect(printed(one(name), withExample(name, entries)).figures[figure]).toBe(text);
  });
});

describe('and no other figure that says it is a least or a most goes to the nearest', () => {
  /** Names that promise a side. */
  const up = /at (the )?least|needed|longest push/i;
  const down = /that passes|length allowed|time left|may carry/i;
  /** These stand as entered or as published, so there is nothing to round; or they are the lower end of something, which is rounded down. */
  const other = /^The hose reaches|R per inch/;
  const said = calculations.flatMap((each) =>
    Object.values(worked(each, each.example).figures).flatMap(({ label, value, format }) =>
      typeof value === 'string' || other.test(label) || value.origin.from === 'rule'
        ? []
        : [{ label, round: format?.round, whole: Number.isInteger(value.amount) }],
    ),
  );

  test.each(said.filter(({ label }) => up.test(label)))(
    '“$label” is rounded up, or whole',
    ({ round, whole }) => {
      expect(round === 'up' || whole).toBe(true);
    },
  );

  test.each(said.filter(({ label }) => down.test(label)))(
    '“$label” is rounded down, or whole',
    ({ round, whole }) => {
      expect(round === 'down' || whole).toBe(true);
    },
  );
});
