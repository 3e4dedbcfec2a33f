import { format } from '../../quantity/format.ts';
import {
  amountIn,
  byMethod,
  compare,
  inUnit,
  named,
  over,
  type Quantity,
  quantity,
} from '../../quantity/quantity.ts';
import { calculation, EntriesClash } from '../declare/calculation.ts';
import { optional, quantityField } from '../declare/field.ts';
import { celsiusOf, dewPointOf, inHgOf, vapourPressure } from './air.ts';
import { saturationPressure, vapourPressureByWetBulb } from './equations.ts';
import { humidityField, readingField } from './fields.ts';

const three = { figures: 3 } as const;

/** The standard atmosphere at the sea. */
const SEA_LEVEL = quantity(1, 'atm', { from: 'constant' }, { symbol: 'P', label: 'Air pressure at the sea' });

const clash = (field: string, label: string, found: string, expected: string): never => {
  throw new EntriesClash({ field, label, found, expected });
};

export const dewPoint = calculation({
  name: 'dew-point',
  title: 'Dew point',
  question: 'How cold must a face be for this air to leave water on it?',
  fields: {
    temperature: readingField('t', 'Temperature', 'Of the air, by a dry thermometer.', '70 F', '150 F'),
    humidity: optional(
      humidityField(
        'φ',
        'Relative humidity',
        'By a hygrometer; or leave it empty and give a wet bulb.',
        '40 %',
      ),
    ),
    wet_bulb: optional(
      readingField('tw', 'Wet-bulb temperature', 'By a sling or fan psychrometer.', '56 F', '150 F'),
    ),
    air_pressure: optional(
      quantityField({
        dimension: 'load',
        symbol: 'P',
        label: 'Air pressure',
        hint: 'For a wet bulb: of the place itself, not reduced to the sea. Left empty, the standard pressure at the sea.',
        example: '14.696 psia',
        zero: 'refused',
        most: '20 psia',
      }),
    ),
  },
  example: { temperature: '70 F', humidity: '40 %' },
  work: ({ temperature, humidity, wet_bulb, air_pressure }, rules) => {
    const celsius = celsiusOf(temperature, 'temperature', 'Temperature');
    if (humidity && wet_bulb)
      clash(
        'wet_bulb',
        'Wet-bulb temperature',
        `${format(wet_bulb)} beside a relative humidity`,
        'one of the two',
      );
    if (humidity && air_pressure)
      clash(
        'air_pressure',
        'Air pressure',
        `${format(air_pressure)} beside a relative humidity`,
        'an air pressure with a wet bulb only',
      );
    const saturation = named(
      byMethod('pressure of saturated air at t', [temperature], inHgOf(saturationPressure(celsius)), 'inHg'),
      'ps',
      'Pressure of saturated air',
    );
    const pressure = humidity
      ? vapourPressure({ temperature, humidity }, '', 'of this air')
      : byWetBulb(temperature, wet_bulb, air_pressure ?? SEA_LEVEL);
    const dew = dewPointOf(temperature, pressure);
    if (!dew)
      return clash(
        humidity ? 'humidity' : 'wet_bulb',
        humidity ? 'Relative humidity' : 'Wet-bulb temperature',
        `air too dry to have a dew point`,
        'air damper than that',
      );
    const relative =
      humidity ?? named(inUnit(over(pressure, saturation), 'percent'), 'φ', 'Relative humidity');
    return {
      figures: {
        dew_point: { label: 'Dew point', value: dew, format: three },
        humidity: { label: 'Relative humidity', value: relative, format: three },
        pressure: { label: 'Vapour pressure', value: pressure, format: three },
        saturation: { label: 'Pressure of saturated air', value: saturation },
      },
      cautions: compare(relative, rules.value('moisture.indoor.most')) >= 0 ? ['caution.moisture.humid'] : [],
      remarks: [
        'Any face colder than the dew point takes water from this air as soon as the air gets there.',
      ],
    };
  },
});

function byWetBulb(
  temperature: Quantity<'temperature reading'>,
  wetBulb: Quantity<'temperature reading'> | undefined,
  pressure: Quantity<'load'>,
): Quantity<'load'> {
  const refuse = (found: string, expected: string): never =>
    clash('wet_bulb', 'Wet-bulb temperature', found, expected);
  if (!wetBulb) return refuse('neither a wet bulb nor a relative humidity', 'one of the two');
  const wet = celsiusOf(wetBulb, 'wet_bulb', 'Wet-bulb temperature');
  if (compare(wetBulb, temperature) > 0)
    return refuse(
      `${format(wetBulb)}, warmer than the dry ${format(temperature)}`,
      'no more than the dry bulb',
    );
  const pascals = vapourPressureByWetBulb(amountIn(temperature, 'C'), wet, amountIn(pressure, 'Pa'));
  if (pascals === undefined)
    return refuse(
      `${format(wetBulb)} beside ${format(temperature)}`,
      'a reading that some air gives at that pressure',
    );
  return named(
    byMethod('equations of the wet bulb', [temperature, wetBulb, pressure], inHgOf(pascals), 'inHg'),
    'p',
    'Vapour pressure of this air',
  );
}
