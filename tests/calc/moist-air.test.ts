import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import { dewPoint, saturationPressure, vapourPressureByWetBulb } from '../../src/calc/moisture/equations.ts';

// Against PsychroLib 1.1.1, an open library of the same equations, over all of their range.
psychrolib.SetUnitSystem(psychrolib.SI);

/** From −100 to 200 °C, both sides of the triple point among them. */
const temperatures = [
  ...Array.from({ length: 121 }, (_, step) => -100 + 2.5 * step),
  -0.001,
  0.001,
  0.009,
  0.01,
  0.011,
];

describe('as an open library of moist air has it', () => {
  test('the pressure of saturated air from −100 to 200 °C, within a trillionth', () => {
    for (const celsius of temperatures)
      expect(saturationPressure(celsius) / psychrolib.GetSatVapPres(celsius), `${celsius} °C`).toBeCloseTo(
        1,
        12,
      );
  });

  test('the dew point of air from −60 to 180 °C at every tenth of saturation, within the 0.001 °C at which the library stops', () => {
    for (let celsius = -60; celsius <= 180; celsius += 7.5)
      for (let tenth = 1; tenth <= 10; tenth++) {
        const pressure = (saturationPressure(celsius) * tenth) / 10;
        const expected = psychrolib.GetTDewPointFromVapPres(celsius, pressure);
        const found = dewPoint(celsius, pressure) ?? Number.NaN;
        expect(Math.abs(found - expected), `${celsius} °C, ${tenth} tenths`).toBeLessThan(0.0015);
      }
  });

  test('the vapour pressure by a wet bulb from −30 to 60 °C, at the sea and at 5000 ft, within a trillionth', () => {
    let compared = 0;
    for (const pressure of [101_325, 84_307])
      for (let celsius = -30; celsius <= 60; celsius += 5)
        for (let below = 0; below <= 12; below += 1.5) {
          const wet = celsius - below;
          const found = vapourPressureByWetBulb(celsius, wet, pressure);
          const ratio = psychrolib.GetHumRatioFromTWetBulb(celsius, wet, pressure);
          // The library gives air that can't be so dry the least water that it knows.
          if (ratio <= 1e-7) {
            expect(found, `${celsius} and ${wet} °C`).toBeUndefined();
            continue;
          }
          compared++;
          expect((found ?? 0) / psychrolib.GetVapPresFromHumRatio(ratio, pressure)).toBeCloseTo(1, 12);
        }
    expect(compared).toBeGreaterThan(150);
  });
});

test.each([[-100.1], [200.1], [Number.NaN]])(
  '%d °C, where the equations do not hold, is refused',
  (celsius) => {
    expect(() => saturationPressure(celsius)).toThrow(/expected -100 to 200/);
  },
);

test('at the dew point the air is saturated: what comes back is the pressure that was given, to a billionth', () => {
  for (const [celsius, pressure] of [
    [25, 1500],
    [0, 300],
    [-20, 40],
    [35, 4000],
  ] as const)
    expect(saturationPressure(dewPoint(celsius, pressure) ?? Number.NaN) / pressure).toBeCloseTo(1, 9);
});
