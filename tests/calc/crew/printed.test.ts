import { describe, expect, test } from 'vitest';
import { dust } from '../../../src/calc/crew/dust/declaration.ts';
import { fall } from '../../../src/calc/crew/fall/declaration.ts';
import { heat } from '../../../src/calc/crew/heat/declaration.ts';
import { ladder } from '../../../src/calc/crew/ladder/declaration.ts';
import { line } from '../../../src/calc/crew/line/declaration.ts';
import { noise } from '../../../src/calc/crew/noise/declaration.ts';
import type { Quantity } from '../../../src/quantity/quantity.ts';
import { working } from '../../../src/quantity/working.ts';
import { complaints, type Entries, printed, worked } from '../told.ts';

describe('the cautions of a fall', () => {
  const edge: Entries = {
    height: '9 ft',
    rise: '3 in',
    width: '13 ft 10 in',
    roofing_work: 'no or not sure',
  };
  const always = ['caution.roof.carries-crew', 'caution.roof.falls'];
  const protectedEdge = [...always, 'caution.fall.arrest', 'caution.fall.guardrail'];
  const cases: readonly [what: string, more: Entries, cautions: readonly string[]][] = [
    ['below six feet', { height: '5 ft 11 in' }, always],
    ['below six feet, roofing work too', { height: '5 ft 11 in', roofing_work: 'yes' }, always],
    ['from six feet', { height: '6 ft' }, [...protectedEdge, 'caution.fall.decides']],
    [
      'roofing work on a low slope, which a monitor may watch',
      { roofing_work: 'yes' },
      [...protectedEdge, 'caution.fall.monitor', 'caution.fall.decides'],
    ],
    [
      'roofing work on a steep roof, which none may',
      { roofing_work: 'yes', rise: '5 in' },
      [...protectedEdge, 'caution.fall.decides'],
    ],
  ];
  test.each(cases)('%s', (_, more, cautions) => {
    expect(printed(fall, { ...edge, ...more }).cautions).toEqual(cautions);
  });

  test('what one anchor carries tells for how many people', () => {
    const { figures } = worked(fall, { ...edge, people: '2' });
    const [last] = working(figures.anchor?.value as Quantity).slice(-1);
    expect(last?.result).toBe('10000 lb');
    expect(printed(fall, edge).remarks).toEqual([]);
  });
});

describe('what is printed of noise', () => {
  test('each time with its part, numbered, and the dose to three figures', () => {
    // 2 h of the 4 h at 95 dBA, 20 min of the 2 h at 100 dBA, and 1 h below 90 dBA: 0.5 + 0.16667.
    const { figures, tables, cautions, remarks } = printed(noise, {
      periods: [
        { level: '95 dBA', time: '2 h' },
        { level: '100 dBA', time: '20 min' },
        { level: '89.9 dBA', time: '1 h' },
      ],
      next_level: '97 dBA',
    });
    // A third of the 3 h at 97 dBA is left: 60 min.
    expect(figures).toEqual({ verdict: 'within the limit', dose: '0.667', left: '60 min' });
    expect(tables.periods).toEqual([
      '1 | 95 dBA | 2 h | 4 h | 0.5',
      '2 | 100 dBA | 20 min | 2 h | 0.167',
      '3 | 89.9 dBA | 1 h | too quiet to count | 0',
    ]);
    expect(cautions).toEqual(['caution.noise.wear']);
    expect(remarks).toEqual([]);
  });

  test('time left is rounded down: a part of 0.3711 leaves 75.46 min of 2 h', () => {
    // 89.07 min of 4 h at 95 dBA is 0.371125; 0.628875 x 120 = 75.465.
    const answer = printed(noise, {
      periods: [{ level: '95 dBA', time: '89.07 min' }],
      next_level: '100 dBA',
    });
    expect(answer.figures.left).toBe('75.4 min');
  });

  test('over the limit both are cautioned of', () => {
    expect(printed(noise, { periods: [{ level: '95 dBA', time: '5 h' }] }).cautions).toEqual([
      'caution.noise.over',
      'caution.noise.wear',
    ]);
  });

  test('louder than the table ends, the one that is so is named', () => {
    const { figures, tables, remarks, cautions } = printed(noise, {
      periods: [
        { level: '95 dBA', time: '1 h' },
        { level: '116 dBA', time: '1 min' },
      ],
    });
    expect(figures).toEqual({ verdict: 'too loud for any time' });
    expect(tables.periods).toEqual([
      '1 | 95 dBA | 1 h | 4 h | 0.25',
      '2 | 116 dBA | 1 min | none | not to be done',
    ]);
    expect(remarks).toEqual(['Number 2, at 116 dBA, is louder than the 115 dBA at which the table ends.']);
    expect(cautions).toEqual(['caution.noise.above-table', 'caution.noise.wear']);
  });

  test('a day of 24 hours is one day; a minute more is refused', () => {
    const day = (time: string): Entries => ({
      periods: [
        { level: '90 dBA', time: '12 h' },
        { level: '90 dBA', time },
      ],
    });
    expect(complaints(noise, day('12 h'))).toEqual([]);
    expect(complaints(noise, day('12.02 h'))).toEqual([expect.stringMatching('found 24.02 h in all')]);
  });

  test('the parts of the dose carry their numbers', () => {
    const { figures } = worked(noise, {
      periods: [
        { level: '95 dBA', time: '1 h' },
        { level: '100 dBA', time: '1 h' },
      ],
    });
    expect(working(figures.dose?.value as Quantity).map(({ symbol, label }) => [symbol, label])).toEqual([
      ['F1', 'Part of period 1'],
      ['F2', 'Part of period 2'],
      ['F', 'Dose of the day'],
    ]);
  });
});

describe('what is printed of dust', () => {
  test('a row a limit, and the worst to three figures, upwards', () => {
    // Law: 15 mg/m3 in all, 5 respirable. Recommended for glass fibre: 5 mg/m3 in all, 3 fibres/cm3.
    const { figures, tables, cautions } = printed(dust, {
      material: 'glass fibre',
      total: '8 mg/m3',
      respirable: '2 mg/m3',
      fibres: '4 fibres/cm3',
    });
    expect(tables.against).toEqual([
      'Total dust | 8 mg/m³ | 15 mg/m³ | law | 0.534',
      'Respirable dust | 2 mg/m³ | 5 mg/m³ | law for general industry | 0.4',
      'Total glass-fibre dust | 8 mg/m³ | 5 mg/m³ | recommended | 1.6',
      'Glass fibres | 4 fibres/cm³ | 3 fibres/cm³ | recommended | 1.34',
    ]);
    expect(figures).toMatchObject({ verdict: 'over a recommended limit', factor: '1.6' });
    expect(cautions).toEqual([
      'caution.dust.recommended',
      'caution.dust.programme',
      'caution.dust.other-dust',
    ]);
  });

  test('the worst is told to three figures, upwards: 8/15 is 0.5333', () => {
    expect(printed(dust, { material: 'cellulose', total: '8 mg/m3' }).figures.factor).toBe('0.534');
  });

  test('over a legal and a recommended limit both are cautioned of', () => {
    expect(printed(dust, { material: 'glass fibre', total: '16 mg/m3' }).cautions).toEqual([
      'caution.dust.legal',
      'caution.dust.recommended',
      'caution.dust.programme',
      'caution.dust.other-dust',
    ]);
  });
});

describe('what is printed of a ladder', () => {
  test('lengths to the tape, the angle to three figures', () => {
    // sin = sqrt(15)/4 = 0.968246, 75.52 degrees. 9 ft / 0.968246 = 111.542 in, 9 ft 3.54 in; a quarter of it 27.886 in, 2 ft 3.89 in;
    // (9 + 3) ft / 0.968246 = 148.723 in, 12 ft 4.72 in.
    const { figures, remarks, cautions } = printed(ladder, { height: '9 ft' });
    expect(figures).toEqual({
      foot: '2 ft 3 7/8 in',
      needed: '13 ft',
      in_use: '12 ft 4 3/4 in',
      working: '9 ft 3 1/2 in',
      height: '9 ft',
      angle: '75.5 degrees',
    });
    expect(remarks).toEqual([expect.stringMatching(/^The sections of an extension ladder overlap/)]);
    expect(cautions).toEqual(['caution.ladder.set', 'caution.roof.falls', 'caution.roof.electric']);
  });

  test('the height of a working length is told to the tape: 10 ft x 0.968246 is 116.19 in', () => {
    expect(printed(ladder, { working: '10 ft' }).figures.height).toBe('9 ft 8 1/4 in');
    expect(complaints(ladder, { working: '61 ft' })).toHaveLength(1);
  });

  test('the working tells the share that the rule gives', () => {
    const { figures } = worked(ladder, { height: '9 ft' });
    for (const name of ['foot', 'working', 'in_use', 'angle'])
      expect(
        working(figures[name]?.value as Quantity).flatMap(({ inputs }) => inputs.map(({ text }) => text)),
        name,
      ).toContain('25 %');
  });
});

describe('what is printed of a line', () => {
  test('the distance to the tape, and no word of a plan where there is none', () => {
    // 120 in + 1.9 x 4 in = 127.6 in, in whole inches 128.
    const { figures, cautions } = printed(line, { voltage: '69 kV' });
    expect(figures).toEqual({ keep: '10 ft 8 in', clearance: '127.6 in' });
    expect(cautions).toEqual(['caution.line.call', 'caution.roof.electric']);
  });

  test('too near, it is said first', () => {
    expect(printed(line, { voltage: '69 kV', gap: '10 ft' }).cautions).toEqual([
      'caution.line.too-near',
      'caution.line.call',
      'caution.roof.electric',
    ]);
  });
});

describe('what is printed of the heat', () => {
  test('in full sun the figure says so; the way to the next band is rounded down', () => {
    // 80.26 + 15 = 95.26 F; the next band begins at 103 F, 7.74 further.
    const { figures, labels, remarks } = printed(heat, { index: '80.26 F', place: 'in full sun' });
    expect(labels.felt).toBe('Heat index with full sun');
    expect(figures.felt).toBe('95.3 °F');
    expect(figures.to_next).toMatch(/^7\.74 /);
    expect(remarks).toEqual([expect.stringMatching(/^Hard work, coveralls/)]);
    // 91 - 80.123 = 10.877: 10.8 rounded down.
    const shade = printed(heat, { index: '80.123 F', place: 'in the shade' });
    expect(shade.labels.felt).toBe('Heat index');
    expect(shade.figures.to_next).toMatch(/^10\.8 /);
  });
});
