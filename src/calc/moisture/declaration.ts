import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { compare, type Quantity, quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type AnswerTable, calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import type { Values } from '../declare/field.ts';
import { printed, type Remark, said } from '../declare/remark.ts';
import { celsiusOf, dewPointOf, vapourPressure } from './air.ts';
import { moistureFields } from './fields.ts';
import { NothingHoldsBack } from './profile.ts';
import { type MoistureLayer, type MoistureScreen, moistureScreen } from './screen.ts';

export type MoistureValues = Values<typeof moistureFields>;

const three = { figures: 3 } as const;
const gatheredFormat = { figures: 2, metric: true } as const;

/** Water freezes at this. */
const FREEZING = quantity(0, 'C');

const clash = (field: string, label: string, found: string, expected: string): never => {
  throw new EntriesClash({ field, label, found, expected });
};

function permeanceOf(
  { material, permeance }: MoistureValues['layers'][number],
  way: string,
  rules: Rulebook,
): Quantity<'permeance'> | undefined {
  if (material && permeance)
    clash(`${way}.permeance`, 'Permeance', `${format(permeance)} beside ${material}`, 'one of the two');
  return (
    permeance ?? (material && rules.find('moisture.permeance.materials', { material }, 'permeance')?.high)
  );
}

/**
 * The screen of a ceiling as it was entered.
 * @throws EntriesClash for entries that can't be true together.
 */
export function screenFrom(values: MoistureValues, rules: Rulebook): MoistureScreen {
  const { indoors, indoor_humidity, outdoors, outdoor_humidity, period } = values;
  const inside = celsiusOf(indoors, 'indoors', 'Temperature indoors');
  const outside = celsiusOf(outdoors, 'outdoors', 'Temperature outdoors');
  if (outside > inside && compare(outdoors, indoors) > 0)
    clash(
      'outdoors',
      'Temperature outdoors',
      `${format(outdoors)}, warmer than the room`,
      'no warmer than the room: this is a screen for the heating season',
    );
  const layers = values.layers.map((each, place): MoistureLayer => {
    const way = `layers.${place}`;
    return {
      name: each.what ?? each.material ?? `layer ${place + 1}`,
      resistance: each.resistance,
      permeance: permeanceOf(each, way, rules),
    };
  });
  const refuse = (found: string, expected: string): never => clash('layers', 'Layers', found, expected);
  if (layers.length < 2)
    refuse(layers.length === 0 ? 'no layers' : 'one layer', 'two or more, films included');
  if (layers.every(({ resistance }) => resistance.amount === 0))
    refuse('layers with no R at all', 'an R above 0 in all; did you leave the films out?');
  if (layers.every(({ permeance }) => !permeance))
    refuse('no permeance on any layer', 'one at least, or nothing holds vapour back');
  const room = { temperature: indoors, humidity: indoor_humidity };
  if (!dewPointOf(indoors, vapourPressure(room, 'i', 'of the room')))
    clash(
      'indoor_humidity',
      'Relative humidity indoors',
      `${format(indoor_humidity)} at ${format(indoors)}`,
      'air damp enough to have a dew point',
    );
  try {
    return moistureScreen(layers, room, { temperature: outdoors, humidity: outdoor_humidity }, period);
  } catch (error) {
    if (!(error instanceof NothingHoldsBack)) throw error;
    return refuse(
      'nothing that holds vapour back before a face colder than the dew point of the room',
      'the permeance of a layer on the way there',
    );
  }
}

export const moisture = calculation({
  name: 'moisture',
  title: 'Moisture screen',
  question: 'Will vapour that seeps through the ceiling gather as water in the roof, where, and how much?',
  fields: moistureFields,
  example: {
    indoors: '70 F',
    indoor_humidity: '40 %',
    outdoors: '15 F',
    outdoor_humidity: '70 %',
    layers: [
      { what: 'indoor air film', resistance: '0.61 R' },
      { what: 'ceiling board', resistance: '0.45 R', material: 'gypsum board primed and painted' },
      { what: 'old insulation', resistance: '6 R' },
      { what: 'new fill', resistance: '26 R' },
      { what: 'metal roof', resistance: '0 R', material: 'metal roof' },
      { what: 'outdoor air film', resistance: '0.17 R' },
    ],
    period: '30 days',
  },
  work: (values, rules) => {
    const screen = screenFrom(values, rules);
    return {
      figures: figuresOf(screen),
      tables: tablesOf(screen),
      cautions: cautionsOn(screen, values, rules),
      remarks: remarksOn(screen, values, rules),
    };
  },
});

/** Places in words, those that read alike told once. */
const eachOnce = (places: readonly string[]): string[] =>
  [...new Set(places)].map((place) => {
    const times = places.filter((each) => each === place).length;
    return times > 1 ? `at ${times} places ${place}` : place;
  });

function figuresOf(screen: MoistureScreen): Record<string, Figure> {
  const wet = screen.gatherings.length > 0;
  const figures: Record<string, Figure> = {
    verdict: { label: 'Vapour on its way out', value: wet ? 'gathers as water' : 'does not gather' },
  };
  if (wet) {
    figures.where = {
      label: 'Where it gathers',
      value: eachOnce(screen.gatherings.map(({ where }) => where)).join('; '),
    };
    figures.gathered = { label: 'Water over the period', value: screen.gathered, format: gatheredFormat };
  }
  figures.dew_point = dewPointFigure(screen);
  figures.coldest = {
    label: `Temperature ${screen.coldest.where}`,
    value: screen.coldest.temperature,
    format: three,
  };
  figures.flow_in = { label: 'Vapour that comes from the room', value: screen.flowIn, format: three };
  figures.flow_out = { label: 'Vapour that goes on outwards', value: screen.flowOut, format: three };
  figures.stays = { label: 'Water that stays', value: screen.stays, format: three };
  return figures;
}

const dewPointFigure = ({ dewPoint }: MoistureScreen): Figure => ({
  label: 'Dew point of the room’s air',
  value: dewPoint ?? 'none',
  format: three,
});

function tablesOf({ faces, layers, gatherings }: MoistureScreen): Record<string, AnswerTable> {
  const tables: Record<string, AnswerTable> = {
    faces: {
      title: 'Face by face, from the room outwards',
      columns: {
        face: 'Face',
        temperature: 'Temperature',
        dew_point: 'Dew point',
        saturation: 'Saturation pressure',
        pressure: 'Vapour pressure',
      },
      rows: faces.map(({ where, temperature, dewPoint, saturation, pressure }) => ({
        face: where,
        temperature,
        dew_point: dewPoint ?? 'none: too dry',
        saturation,
        pressure,
      })),
      format: { temperature: three, dew_point: three, saturation: three, pressure: three },
    },
    layers: {
      title: 'Layers, from the room outwards',
      columns: { layer: 'Layer', resistance: 'R', permeance: 'Permeance' },
      rows: layers.map(({ name, resistance, permeance }) => ({
        layer: name,
        resistance,
        permeance: permeance ?? 'lets vapour through freely',
      })),
      format: { resistance: three, permeance: three },
    },
  };
  if (gatherings.length > 1)
    tables.gatherings = {
      title: 'Where water gathers',
      columns: {
        where: 'Place',
        temperature: 'Temperature',
        arrives: 'Arrives',
        leaves: 'Goes on',
        stays: 'Stays',
      },
      rows: gatherings.map(({ where, temperature, arrives, leaves, stays }) => ({
        where,
        temperature,
        arrives,
        leaves,
        stays,
      })),
      format: { temperature: three, arrives: three, leaves: three, stays: three },
    };
  return tables;
}

function cautionsOn(screen: MoistureScreen, values: MoistureValues, rules: Rulebook): CautionId[] {
  const wet = screen.gatherings.length > 0;
  return [
    'caution.moisture.leaks',
    ...(wet ? (['caution.moisture.condenses'] as const) : []),
    ...(screen.layers.some(({ permeance }) => permeance?.amount === 0)
      ? (['caution.moisture.tight'] as const)
      : []),
    ...(compare(values.indoor_humidity, rules.value('moisture.indoor.most')) >= 0
      ? (['caution.moisture.humid'] as const)
      : []),
    ...(wet && screen.gatherings.some(({ temperature }) => compare(temperature, FREEZING) < 0)
      ? (['caution.moisture.frost'] as const)
      : []),
    'caution.moisture.screen',
  ];
}

function remarksOn(
  { coldest, dewPoint, gatherings, flowIn, permeanceIn }: MoistureScreen,
  { indoor_humidity, layers }: MoistureValues,
  rules: Rulebook,
): Remark[] {
  const remarks: Remark[] = [];
  const [cold, dew] = [format(coldest.temperature, three), dewPoint ? format(dewPoint, three) : 'none'];
  if (dewPoint && compare(coldest.temperature, dewPoint) < 0)
    remarks.push(
      `It is ${cold} ${coldest.where}, and the dew point of the room’s air is ${dew}: air that leaks as far as there drops water, whatever the layers let through. Sealing the ceiling comes first.`,
    );
  else
    remarks.push(
      `Nowhere within the layers is it colder than the dew point of the room’s air, ${dew}. That holds for these temperatures only; sealing the ceiling still comes first.`,
    );
  if (flowIn.amount < 0) remarks.push('It is damper outdoors than in the room: vapour seeps inwards.');
  const retarder = rules.value('moisture.retarder.ceiling');
  if (gatherings.length > 0 && permeanceIn && compare(permeanceIn, retarder) > 0)
    remarks.push(
      said`From the room as far as there the layers let through ${printed(permeanceIn, three)}; a ceiling built with a vapour retarder lets through ${retarder} or less.`,
    );
  for (const material of new Set(layers.flatMap((each) => each.material ?? []))) {
    const published = rules.find('moisture.permeance.materials', { material }, 'permeance');
    if (published && compare(published.low, published.high) < 0)
      remarks.push(
        said`For ${material} ${published.low} to ${published.high} is published; the more open end is taken. Outside of the place where water gathers the tighter end would leave more of it.`,
      );
  }
  const usual = rules.range('moisture.indoor.usual');
  if (compare(indoor_humidity, usual.low) < 0 || compare(indoor_humidity, usual.high) > 0)
    remarks.push(
      said`The usual humidity indoors in the heating season lies between ${usual.low} and ${usual.high}; look again at what was measured.`,
    );
  return remarks;
}
