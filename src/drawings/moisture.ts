import { dewPoint } from '../calc/moisture/equations.ts';
import type { Place } from '../calc/moisture/profile.ts';
import type { MoistureScreen } from '../calc/moisture/screen.ts';
import { format, formatNumber } from '../quantity/format.ts';
import { amountIn, quantity } from '../quantity/quantity.ts';
import { circle, type LineType, line, type Point, path, text } from './lines.ts';
import type { Drawing, Shape } from './svg.ts';

const sheets = {
  wide: { width: 740, left: 64, drawn: 640, height: 260, columns: 2, across: 'R from the room outwards' },
  narrow: { width: 340, left: 44, drawn: 280, height: 240, columns: 1, across: 'R from the room' },
} as const;
type Sheet = (typeof sheets)[keyof typeof sheets];

const ROW = 19;
/** From the end of the key to the plot: the numbers of the layers, and their leaders. */
const NUMBERS = 40;
/** What a digit of a number takes, and the room about a number. */
const DIGIT = 6;
const ABOUT = 3;
/** Layers with their middles nearer than this share a leader: the eye would see two meet. */
const MEET = 4;
/** Room under the plot for its ticks and its name. */
const FOOT = 52;
const SAMPLE = 34;
/** A letter of a name, at its size of 13, is no wider than this on the average. */
const LETTER = 7.4;

const fahrenheit = (celsius: number): number => amountIn(quantity(celsius, 'C'), 'F');

/**
 * Temperature against dew point from the room outwards. Across, to scale: R, so that the temperature is one straight line; up: degrees
 * Fahrenheit. Where the two meet, water gathers. Behind a layer that lets no vapour through the dew point is that of the outdoor air.
 */
export function moistureDrawing(screen: MoistureScreen, size: keyof typeof sheets): Drawing {
  const sheet = sheets[size];
  const { layers, profile, gatherings } = screen;
  const { places, wet, end } = profile;
  const [room, outdoors] = [places[0] as Place, places[places.length - 1] as Place];
  const dewOf = (pascals: number): number | undefined => {
    const celsius = dewPoint(room.celsius, pascals);
    return celsius === undefined ? undefined : fahrenheit(celsius);
  };
  const reached = places.slice(0, places.indexOf(end) + 1);
  const behind = places.slice(places.indexOf(end) + 1);
  const dews = [...reached, ...behind].flatMap(({ pressure }) => dewOf(pressure) ?? []);
  const scale = scaleOf([fahrenheit(room.celsius), fahrenheit(outdoors.celsius), ...dews], 10);
  const key = keyOf(screen);
  const top = 12 + Math.ceil(key.length / sheet.columns) * ROW + NUMBERS;
  const under = top + sheet.height;
  const perR = sheet.drawn / outdoors.heat;
  const x = (heat: number): number => sheet.left + heat * perR;
  const at = (heat: number, degree: number): Point => [
    x(heat),
    under - ((degree - scale.from) / (scale.to - scale.from)) * sheet.height,
  ];
  const curve = (type: LineType, of: readonly Place[], which: 'pressure' | 'unchecked'): Shape[] => {
    const points = of.flatMap((place) => {
      const degree = dewOf(place[which]);
      return degree === undefined ? [] : [at(place.heat, degree)];
    });
    return points.length < 2 ? [] : [path(type, points)];
  };
  const right = sheet.left + sheet.drawn;
  const faces = [0, ...layers.map((_, layer) => outerFace(places, layer).heat)];
  const listed = Math.ceil(layers.length / sheet.columns);
  return {
    width: sheet.width,
    height: under + FOOT + listed * ROW + 10,
    title: 'Temperature and dew point from the room outwards',
    description: descriptionOf(screen),
    shapes: [
      ...keyShapes(key, sheet),
      ...[...new Set(faces)].map((heat) =>
        line(heat === 0 ? 'thin' : 'boundary', [x(heat), top], [x(heat), under]),
      ),
      line('thin', [sheet.left, under], [right, under]),
      ...scale.ticks.flatMap((degree) => [
        line('thin', [sheet.left - 5, at(0, degree)[1]], [sheet.left, at(0, degree)[1]]),
        text([sheet.left - 8, at(0, degree)[1] + 4], formatNumber(degree), { anchor: 'end', size: 12 }),
      ]),
      text([sheet.left - 8, top - 14], '°F', { anchor: 'end', size: 13, bold: true }),
      ...resistanceTicks(outdoors.heat, perR).flatMap((heat) => [
        line('thin', [x(heat), under], [x(heat), under + 5]),
        text([x(heat), under + 18], formatNumber(heat), { size: 12 }),
      ]),
      text([sheet.left + sheet.drawn / 2, under + 37], sheet.across, { size: 13 }),
      text([sheet.left, under + 37], 'room', { anchor: 'start', size: 13, bold: true }),
      text([right, under + 37], 'outdoors', { anchor: 'end', size: 13, bold: true }),
      ...layerNumbers(faces, x, top, sheet),
      ...(gatherings.length > 0 ? curve('hidden', reached, 'unchecked') : []),
      ...curve('thin', reached, 'pressure'),
      ...curve('thin', behind, 'pressure'),
      path('outline', [at(0, fahrenheit(room.celsius)), at(outdoors.heat, fahrenheit(outdoors.celsius))]),
      ...[...new Set(wet.flatMap(({ first, last }) => [first, last]))].map(({ heat, celsius }) =>
        circle('outline', at(heat, fahrenheit(celsius)), 6),
      ),
      ...layers.map(({ name, resistance }, layer) => {
        const column = Math.floor(layer / listed);
        const place: Point = [
          sheet.left - 30 + (column * (sheet.drawn + 30)) / sheet.columns,
          under + FOOT + ((layer % listed) + 1) * ROW - 4,
        ];
        const words = `${layer + 1}  ${name}, ${format(resistance, { unit: 'h ft2 F/Btu', figures: 3 })}`;
        return text(place, clipped(words, (sheet.drawn + 30) / sheet.columns - 8), {
          anchor: 'start',
          size: 13,
        });
      }),
    ],
  };
}

const outerFace = (places: readonly Place[], layer: number): Place =>
  places.find((place) => place.layer === layer && place.share === 1) as Place;

/** Words cut to what there is room for. */
function clipped(words: string, room: number): string {
  const most = Math.floor(room / LETTER);
  return words.length <= most ? words : `${words.slice(0, most - 1)}…`;
}

/** Round steps that divide what is to be shown in ten or fewer. */
function scaleOf(shown: readonly number[], most: number) {
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  const step = [1, 2, 5, 10, 20, 50].find((size) => (high - low) / size <= most - 2) ?? 100;
  // Half a step is kept free at both ends, so that no line lies on the edge.
  const from = Math.floor(low / step - 0.5) * step;
  const to = Math.ceil(high / step + 0.5) * step;
  const ticks = Array.from({ length: Math.round((to - from) / step) + 1 }, (_, place) => from + place * step);
  return { from, to, ticks };
}

function resistanceTicks(all: number, perR: number): number[] {
  const step =
    [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50].find((size) => size * perR >= 36 && all / size <= 12) ?? 100;
  return Array.from({ length: Math.floor(all / step + 1e-9) + 1 }, (_, place) => place * step);
}

/** The number of each layer above the middle of it; where layers are thin the numbers move apart, with leaders. */
function layerNumbers(
  faces: readonly number[],
  x: (heat: number) => number,
  top: number,
  sheet: Sheet,
): Shape[] {
  const numbers: { words: string; readonly first: string; readonly middle: number }[] = [];
  faces.slice(1).forEach((heat, layer) => {
    const middle = (x(heat) + x(faces[layer] ?? 0)) / 2;
    const number = String(layer + 1);
    const before = numbers[numbers.length - 1];
    if (before && middle - before.middle < MEET) before.words = `${before.first}–${number}`;
    else numbers.push({ words: number, first: number, middle });
  });
  const places = spread(
    numbers.map(({ middle }) => middle),
    numbers.map(({ words }) => Math.max(2, words.length) * DIGIT + ABOUT),
    [sheet.left, sheet.left + sheet.drawn],
  );
  return numbers.flatMap(({ words, middle }, which) => {
    const place = places[which] ?? middle;
    return [
      text([place, top - 22], words, { size: 12, bold: true }),
      line('thin', [place, top - 18], [middle, top - 2]),
    ];
  });
}

/**
 * Moves places in rising order apart, each with its width, as little as need be, and keeps them between two ends if there is room.
 * @example spread([0, 1, 9], [2, 2, 2], [0, 10]) // => [0, 2, 9]
 */
export function spread(
  wanted: readonly number[],
  widths: readonly number[],
  [from, to]: readonly [from: number, to: number],
): number[] {
  const gaps = wanted.map((_, place) => ((widths[place - 1] ?? 0) + (widths[place] ?? 0)) / 2);
  gaps[0] = 0;
  const share = Math.min(1, (to - from) / (gaps.reduce((sum, gap) => sum + gap, 0) || 1));
  const moved: number[] = [];
  for (const [place, each] of wanted.entries())
    moved.push(Math.max(each, (moved[place - 1] ?? from) + (gaps[place] ?? 0) * share));
  let limit = to;
  for (let place = moved.length - 1; place >= 0; place--) {
    moved[place] = Math.min(moved[place] ?? limit, limit);
    limit = (moved[place] ?? limit) - (gaps[place] ?? 0) * share;
  }
  return moved;
}

interface KeyRow {
  readonly sample: LineType | 'circle';
  readonly words: string;
}

function keyOf({ gatherings, coldest, dewPoint: room }: MoistureScreen): KeyRow[] {
  const rows: KeyRow[] = [
    { sample: 'outline', words: 'temperature' },
    { sample: 'thin', words: `dew point${room ? `, ${format(room, { figures: 3 })} in the room` : ''}` },
  ];
  if (gatherings.length === 0) return rows;
  return [
    ...rows,
    { sample: 'hidden', words: 'dew point if nothing gathered' },
    { sample: 'circle', words: `water gathers, at ${format(coldest.temperature, { figures: 3 })}` },
  ];
}

function keyShapes(key: readonly KeyRow[], { left, drawn, columns }: Sheet): Shape[] {
  const rows = Math.ceil(key.length / columns);
  return key.flatMap(({ sample, words }, place) => {
    const begin = left - 30 + (Math.floor(place / rows) * (drawn + 30)) / columns;
    const y = 12 + (place % rows) * ROW;
    return [
      sample === 'circle'
        ? circle('outline', [begin + SAMPLE / 2, y], 6)
        : line(sample, [begin, y], [begin + SAMPLE, y]),
      text([begin + SAMPLE + 8, y + 4.5], words, { anchor: 'start', size: 13 }),
    ];
  });
}

function descriptionOf({ faces, gatherings, coldest, dewPoint: dew }: MoistureScreen): string {
  const [room, outdoors] = [faces[0], faces[faces.length - 1]];
  const fall = `The temperature falls from ${room ? format(room.temperature, { figures: 3 }) : ''} in the room to ${outdoors ? format(outdoors.temperature, { figures: 3 }) : ''} outdoors; the dew point in the room is ${dew ? format(dew, { figures: 3 }) : 'too low to tell'}.`;
  return gatherings.length === 0
    ? `${fall} The dew point stays below the temperature all the way: nothing gathers.`
    : `${fall} They meet ${gatherings.map(({ where }) => where).join(' and ')}, where it is ${format(coldest.temperature, { figures: 3 })}: water gathers there.`;
}
