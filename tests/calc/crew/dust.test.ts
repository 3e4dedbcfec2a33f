import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dust } from '../../../src/calc/crew/dust/declaration.ts';
import { MEASURED_FIT } from '../../../src/calc/crew/dust/exposure.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { materials } from '../../../src/calc/fill/material.ts';
import { loadProject } from '../../../src/rulebook/project.ts';
import { complaints, type Entries, figure, within, worked } from '../told.ts';

interface Air {
  readonly material: (typeof materials)[number];
  readonly total: number;
  readonly respirable: number;
  readonly fibres: number;
}

const anyAir: fc.Arbitrary<Air> = fc.record({
  material: fc.constantFrom(...materials),
  total: fc.integer({ min: 0, max: 40_000 }).map((hundredths) => hundredths / 100),
  respirable: fc.integer({ min: 0, max: 20_000 }).map((hundredths) => hundredths / 100),
  fibres: fc.integer({ min: 0, max: 10_000 }).map((hundredths) => hundredths / 100),
});

const entriesOf = ({ material, total, respirable, fibres }: Air): Entries => ({
  material,
  total: `${total} mg/m3`,
  respirable: `${respirable} mg/m3`,
  ...(material === 'glass fibre' ? { fibres: `${fibres} fibres/cm3` } : {}),
});

/** 29 CFR 1910.1000 as the rules hold it: 15 and 5 mg/m3; the institute's guide for glass fibre: 5 mg/m3 and 3 fibres/cm3. */
function byTheLimits({ material, total, respirable, fibres }: Air) {
  const law = Math.max(total / 15, respirable / 5);
  const guide = material === 'glass fibre' ? Math.max(total / 5, fibres / 3) : 0;
  const worst = Math.max(law, guide);
  const [verdict] =
    law > 1 ? ['over a legal limit'] : guide > 1 ? ['over a recommended limit'] : ['within the limits'];
  const respirator =
    worst <= 1
      ? 'none'
      : worst <= 10
        ? 'filtering facepiece or half mask'
        : worst <= 25
          ? 'loose-fitting powered respirator'
          : worst <= 50
            ? MEASURED_FIT
            : 'none of those listed here';
  return { worst, law, guide, verdict, respirator };
}

const near = (x: number): boolean => [1, 10, 25, 50].some((border) => Math.abs(x - border) < 1e-6);

describe('dust in the air', () => {
  test('is held against every limit that there is for it; the worst of them asks for the respirator', () => {
    fc.assert(
      fc.property(anyAir, (air) => {
        const { worst, law, guide, verdict, respirator } = byTheLimits(air);
        const { figures } = worked(dust, entriesOf(air));
        expect(within(1e-9, figure(dust, entriesOf(air), 'factor', '1'), worst)).toBe(true);
        if (near(worst) || near(law) || near(guide)) return;
        expect([figures.verdict?.value, figures.respirator?.value]).toEqual([verdict, respirator]);
      }),
    );
  });

  /** A border belongs to the milder side: the factor is "at most". */
  test.each([
    ['15 mg/m3', 'within the limits', 'none'],
    ['0.015 mg/m3', 'within the limits', 'none'],
    ['150 mg/m3', 'over a legal limit', 'filtering facepiece or half mask'],
    ['151 mg/m3', 'over a legal limit', 'loose-fitting powered respirator'],
    ['376 mg/m3', 'over a legal limit', MEASURED_FIT],
    ['750 mg/m3', 'over a legal limit', MEASURED_FIT],
    ['751 mg/m3', 'over a legal limit', 'none of those listed here'],
  ])('%s of cellulose is %s: %s', (total, verdict, respirator) => {
    const { figures } = worked(dust, { material: 'cellulose', total });
    expect([figures.verdict?.value, figures.respirator?.value]).toEqual([verdict, respirator]);
  });

  test('more of anything never makes it better', () => {
    const order = ['within the limits', 'over a recommended limit', 'over a legal limit'];
    fc.assert(
      fc.property(anyAir, fc.integer({ min: 1, max: 200 }), (air, more) => {
        const dirtier = {
          ...air,
          total: air.total + more,
          respirable: air.respirable + more,
          fibres: air.fibres + more,
        };
        const [a, b] = [air, dirtier].map((each) => worked(dust, entriesOf(each)).figures.verdict?.value);
        expect(order.indexOf(String(b))).toBeGreaterThanOrEqual(order.indexOf(String(a)));
        expect(figure(dust, entriesOf(dirtier), 'factor', '1')).toBeGreaterThanOrEqual(
          figure(dust, entriesOf(air), 'factor', '1'),
        );
      }),
    );
  });

  test('one measurement is enough, whichever it is', () => {
    for (const one of [{ total: '8 mg/m3' }, { respirable: '1 mg/m3' }, { fibres: '0.5 fibres/cm3' }])
      expect(complaints(dust, { material: 'glass fibre', ...one })).toEqual([]);
  });

  test('beyond every respirator is cautioned of before the law; dust within the limits is still worn against', () => {
    const cautions = (total: string) => worked(dust, { material: 'cellulose', total }).cautions;
    expect(cautions('751 mg/m3').slice(0, 2)).toEqual(['caution.dust.beyond', 'caution.dust.legal']);
    expect(cautions('20 mg/m3')).toEqual([
      'caution.dust.legal',
      'caution.dust.programme',
      'caution.dust.other-dust',
    ]);
    expect(cautions('1 mg/m3')).toEqual(['caution.before.wear', 'caution.dust.other-dust']);
  });

  test.each([
    ['a half mask', '150 mg/m3', false],
    ['a powered respirator, which seals to no face', '375 mg/m3', false],
    ['a full facepiece', '376 mg/m3', true],
    ['nothing that is listed', '751 mg/m3', false],
  ])('where %s is what suffices, the fit is told of: %s, %s', (_, total, told) => {
    const { cautions, remarks } = worked(dust, { material: 'cellulose', total });
    expect(cautions.includes('caution.dust.full-facepiece')).toBe(told);
    expect(remarks.map(remarkText)).toEqual(
      told
        ? [
            'A full facepiece suffices only where an instrument measured a fit of 500 or more. A test by taste or smell shows 100 at most; then it counts as a half mask, for 10 times the limit at most.',
          ]
        : [],
    );
  });

  test('the kind that needs its fit measured is called so in the rulebook', () => {
    const table = loadProject('refused').data.rules['safety.dust.respirators']?.value;
    expect(table?.kind === 'table' && table.rows.map(([, kind]) => kind)).toContain(MEASURED_FIT);
  });
});

const bad: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'nothing measured',
    { material: 'cellulose' },
    /^Total dust \(total\): found nothing measured; expected total dust, respirable dust or fibres, measured in the air that is breathed\.$/,
  ],
  [
    'fibres counted in cellulose',
    { material: 'cellulose', fibres: '1 fibres/cm3' },
    /^Fibres \(fibres\): found a count for cellulose; expected nothing, since the recommended limit is for glass fibre\.$/,
  ],
  [
    'dust below nought',
    { material: 'cellulose', total: '-1 mg/m3' },
    /^Total dust \(total\): found "-1 mg\/m3"; expected an amount above 0/,
  ],
  [
    'a storm of it',
    { material: 'cellulose', total: '10001 mg/m3' },
    /^Total dust \(total\): found "10001 mg\/m3"; expected 10000 mg\/m³ at most: this entry takes no more\.$/,
  ],
  [
    'fibres by weight',
    { material: 'glass fibre', fibres: '1 mg/m3' },
    /^Fibres \(fibres\): found "1 mg\/m3" \(density\)/,
  ],
  ['no material', { total: '1 mg/m3' }, /^Material \(material\): found nothing; expected one of: /],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, entries, says) => {
    expect(complaints(dust, entries)).toEqual([expect.stringMatching(says)]);
  });
});
