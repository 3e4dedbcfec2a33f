import { describe, expect, test } from 'vitest';
import { heat } from '../../src/calc/crew/heat/declaration.ts';
import { testBoxCheck } from '../../src/calc/machine/test-box/declaration.ts';
import { format } from '../../src/quantity/format.ts';
import { type Entries, printed, rules } from './told.ts';

/** A box of 4 ft3 in which a fill of 6 lb has 1.5 lb/ft3. */
const box = (...nets: readonly string[]): Entries => ({
  length: '24 in',
  width: '24 in',
  height: '12 in',
  fills: nets.map((gross) => ({ gross, tare: '0 lb' })),
  target: '1.5 lb/ft3',
  allowed_spread: '10 %',
});

describe('a figure that is a hair past what decides on it does not read like it', () => {
  test('near enough is 10 %, full sun adds 15 °F, and the borders are 91, 103 and 115 °F: the cases below rest on that', () => {
    expect(format(rules.value('fill.bag.near-enough'))).toBe('10 %');
    expect(format(rules.value('safety.heat.full-sun'))).toBe('15 °F');
    expect(format(rules.value('safety.heat.moderate-from'))).toBe('91 °F');
    expect(format(rules.value('safety.heat.high-from'))).toBe('103 °F');
    expect(format(rules.value('safety.heat.very-high-above'))).toBe('115 °F');
  });

  test.each([
    // By hand: 6.6024 lb are 1.1004 times 6 lb.
    ['6.6024 lb', 'heavy', '10.04 %'],
    ['6.6 lb', 'on target so far, by too few fills', '10 %'],
    ['5.3976 lb', 'light', '−10.04 %'],
    ['7.2 lb', 'heavy', '20 %'],
  ])('a fill of %s in the test box: %s, by %s', (net, verdict, departure) => {
    const { figures } = printed(testBoxCheck, box(net));
    expect(figures.verdict).toBe(verdict);
    expect(figures.departure).toBe(departure);
  });

  test('a spread that is past what is allowed, 0.6012 lb of a mean of 6 lb', () => {
    const { figures, cautions } = printed(testBoxCheck, box('6.3006 lb', '5.6994 lb'));
    expect(figures.spread).toBe('10.02 %');
    expect(cautions).toContain('caution.machine.uneven');
  });

  test.each([
    ['75.96 F', 'caution', '90.96 °F'],
    ['87.97 F', 'moderate', '102.97 °F'],
    ['100 F', 'high', '115 °F'],
    ['100.3 F', 'very high', '115.3 °F'],
  ])('a heat index of %s in full sun: %s, by %s', (index, band, felt) => {
    const { figures } = printed(heat, { index, place: 'in full sun' });
    expect(figures.band).toBe(band);
    expect(figures.felt).toBe(felt);
  });
});
