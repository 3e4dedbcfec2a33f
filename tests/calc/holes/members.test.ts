import { describe, expect, test } from 'vitest';
import { layout } from '../../../src/calc/holes/declaration.ts';
import { hoseMarkings } from '../../../src/calc/marks/declaration.ts';
import { bays } from '../../../src/calc/ways/bays-declaration.ts';
import { compareWays } from '../../../src/calc/ways/declaration.ts';
import { complaints } from '../told.ts';

const of = (one: typeof layout | typeof bays | typeof compareWays, more: object) =>
  complaints(one, { ...one.example, length: '66 ft', ...more });

/** 66 ft are 792 in, and 2011.68 cm. */
describe.each([
  ['trusses_measured', 'truss', [layout, bays, compareWays]],
  ['seams_measured', 'seam', [layout, compareWays]],
] as const)('what is measured one by one: %s', (field, one, calculations) => {
  test.each([
    ['at both ends of the roof', ['0 in', '12 ft', '66 ft'], []],
    ['at the end, in another unit', ['0 in', '2011.68 cm'], []],
    ['in any order', ['12 ft', '0 in'], []],
    ['nearly at one place', ['12 ft', '12 ft 1/16 in', '66 ft'], []],
    [
      'off the roof',
      ['0 in', '190 ft', '12 ft'],
      [`Place (${one} 2) (${field}.1.at): found 190 ft; expected a place of its own on the roof.`],
    ],
    [
      'twice at one place, the second in another unit',
      ['12 ft', '20 ft', '144 in'],
      [`Place (${one} 3) (${field}.2.at): found 144 in; expected a place of its own on the roof.`],
    ],
  ])('%s', (_, places, told) => {
    for (const each of calculations)
      expect(of(each, { [field]: places.map((at) => ({ at })) })).toEqual(told);
  });
});

test('of the stretch of one opening a truss may stand beyond, since the roof goes on there; twice at one place it may not', () => {
  const at = (...places: string[]) =>
    complaints(hoseMarkings, {
      ...hoseMarkings.example,
      trusses_measured: places.map((each) => ({ at: each })),
    });
  expect(at('20 ft', '60 ft')).toEqual([]);
  expect(at('20 ft', '20 ft')).toEqual([
    'Place (truss 2) (trusses_measured.1.at): found 20 ft; expected a place of its own on the roof.',
  ]);
});

describe('a first one that stands off the roof is a slip, or a roof would be laid out with nothing in the way', () => {
  test.each([
    ['first_truss', [layout, compareWays], { truss_spacing: '24 in' }, 'First truss'],
    ['first_seam', [layout, compareWays], { seam_spacing: '4 ft' }, 'First seam'],
  ] as const)('%s', (field, calculations, spacing, label) => {
    for (const each of calculations) {
      expect(of(each, { ...spacing, [field]: '66 ft' })).toEqual([]);
      // 66 ft are 2011.68 cm.
      expect(of(each, { ...spacing, [field]: '2011.68 cm' })).toEqual([]);
      expect(of(each, { ...spacing, [field]: '66 ft 1/8 in' })).toEqual([
        `${label} (${field}): found 792.1 in; expected a place on the roof.`,
      ]);
    }
  });

  test('of the stretch of one opening it may stand beyond', () => {
    const marks = {
      ...hoseMarkings.example,
      from: '0 in',
      to: '10 ft',
      along: '5 ft',
      first_truss: '12 ft',
      flues: [],
    };
    expect(complaints(hoseMarkings, marks)).toEqual([]);
  });
});
