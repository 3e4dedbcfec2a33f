import { saturationPressure } from './equations.ts';

/** A layer in plain numbers, from the room outwards. */
export interface PlainLayer {
  /** Resistance to heat, in any one unit. */
  readonly heat: number;
  /** Resistance to vapour, 1 over permeance: 0 lets it through freely, Infinity lets none through. */
  readonly vapour: number;
}

/** Air on one side: degrees Celsius, and its vapour pressure in pascals, not above saturation. */
export interface PlainAir {
  readonly celsius: number;
  readonly pressure: number;
}

/** A place on the way from the room outwards: a face of a layer, or a place inside one. */
export interface Place {
  /** The layer whose outer face this is, or in which it lies; −1 for the air of the room. */
  readonly layer: number;
  /** How much of that layer lies behind it: 1 at its outer face. */
  readonly share: number;
  /** Resistance to heat, and to vapour, from the room as far as here. */
  readonly heat: number;
  readonly vapour: number;
  readonly celsius: number;
  /** Vapour pressures in pascals: of saturated air; if nothing condensed; as it is. */
  readonly saturation: number;
  readonly unchecked: number;
  readonly pressure: number;
}

/** Neighbouring places at which water gathers. */
export interface Wet {
  readonly first: Place;
  readonly last: Place;
  /** The place that the vapour comes from, and the one that it leaves for; nothing leaves for behind a layer that lets none through. */
  readonly from: Place;
  readonly to: Place | undefined;
}

export interface Profile {
  readonly places: readonly Place[];
  /** Where water gathers, from the room outwards; empty where it does not. */
  readonly wet: readonly Wet[];
  /** The last place that vapour from the room can reach. */
  readonly end: Place;
}

/** Inside a layer that resists both heat and vapour the pressure is looked at in so many even steps. */
const STEPS = 20;

/** A pressure this much above saturation, as a share of the room's, is a rounding error. */
const NOISE = 1e-9;

/** Places with their temperatures, which fall in a straight line over the resistance to heat. */
function placesOf(layers: readonly PlainLayer[], indoors: PlainAir, outdoors: PlainAir) {
  const all = layers.reduce((sum, { heat }) => sum + heat, 0);
  const colder = indoors.celsius - outdoors.celsius;
  const place = (layer: number, share: number, heat: number, vapour: number) => {
    const celsius = heat === 0 ? indoors.celsius : indoors.celsius - (colder * heat) / all;
    return { layer, share, heat, vapour, celsius, saturation: saturationPressure(celsius) };
  };
  const places = [place(-1, 1, 0, 0)];
  let [heat, vapour] = [0, 0];
  for (const [layer, each] of layers.entries()) {
    const steps = each.heat > 0 && each.vapour > 0 && each.vapour < Infinity ? STEPS : 1;
    for (let step = 1; step <= steps; step++) {
      const share = step / steps;
      places.push(place(layer, share, heat + each.heat * share, vapour + each.vapour * share));
    }
    heat += each.heat;
    vapour += each.vapour;
  }
  return places;
}

type Warm = ReturnType<typeof placesOf>[number];

/** A vapour pressure at a resistance to vapour from the room. */
interface Point {
  readonly vapour: number;
  readonly pressure: number;
}

/** The straight line through two points, at a resistance; level where they are at the same. */
const onLine = (a: Point, b: Point, vapour: number): number =>
  a.vapour === b.vapour
    ? a.pressure
    : a.pressure + ((b.pressure - a.pressure) * (vapour - a.vapour)) / (b.vapour - a.vapour);

/**
 * Which points does a string touch that is drawn taut from the first to the last, below all that lie between? In order, both ends with
 * them. A point less than `noise` below the string does not count. The points stand in rising order.
 * @example taut([{ vapour: 0, pressure: 9 }, { vapour: 1, pressure: 2 }, { vapour: 2, pressure: 3 }, { vapour: 3, pressure: 1 }], 0) // => [0, 1, 3]
 */
export function taut(points: readonly Point[], noise: number): number[] {
  const touched: number[] = [];
  const point = (index: number | undefined): Point => points[index ?? -1] as Point;
  for (const [here, next] of points.entries()) {
    while (touched.length > 1) {
      const middle = point(touched[touched.length - 1]);
      if (onLine(point(touched[touched.length - 2]), next, middle.vapour) - middle.pressure > noise) break;
      touched.pop();
    }
    touched.push(here);
  }
  return touched;
}

/** Vapour comes freely to a place too cold for it, so that the method sets no limit to what gathers there. */
export class NothingHoldsBack extends RangeError {
  override name = 'NothingHoldsBack';
}

/**
 * Where does vapour on its way outwards meet places too cold for it? The pressure falls in straight lines over the resistance to vapour.
 * Where it would stand above saturation it is a string drawn taut below the curve of saturation: where the string touches, more arrives than
 * leaves, and water gathers. Of places between which vapour passes freely the outermost counts, which is the coldest. Behind a layer that
 * lets none through, the pressure is that of the outdoor air: from the room nothing gets there.
 * @throws RangeError if it is warmer outdoors, if no layer resists heat, or if none resists vapour.
 * @throws NothingHoldsBack if nothing resists vapour before a place too cold for it.
 * @example profile([{ heat: 1, vapour: 1 }, { heat: 0, vapour: Infinity }], { celsius: 20, pressure: 1000 }, { celsius: 0, pressure: 300 }).wet.length // => 1
 */
export function profile(layers: readonly PlainLayer[], indoors: PlainAir, outdoors: PlainAir): Profile {
  if (indoors.celsius < outdoors.celsius) throw new RangeError('found it warmer outdoors, expected colder');
  if (!layers.some(({ heat }) => heat > 0))
    throw new RangeError('found no layer that resists heat, expected one');
  if (!layers.some(({ vapour }) => vapour > 0))
    throw new RangeError('found no layer that resists vapour, expected one');
  const warm = placesOf(layers, indoors, outdoors);
  const noise = NOISE * indoors.pressure;
  const reached = warm.filter(({ vapour }) => vapour < Infinity);
  const end = reached[reached.length - 1] as Warm;
  const sealed = reached.length < warm.length;
  const facing = [...reached].reverse().find(({ vapour }) => vapour === 0) as Warm;
  if (indoors.pressure - facing.saturation > noise)
    throw new NothingHoldsBack('found a place too cold for the vapour before anything that resists it');

  const room: Point = { vapour: 0, pressure: indoors.pressure };
  const outer: Point = {
    vapour: end.vapour,
    pressure: sealed ? Math.min(indoors.pressure, end.saturation) : outdoors.pressure,
  };
  // Of places at one resistance the last is the coldest.
  const between = reached.filter(
    ({ vapour }, index) => vapour > 0 && vapour < end.vapour && reached[index + 1]?.vapour !== vapour,
  );
  const points: readonly Point[] = [
    room,
    ...between.map(({ vapour, saturation }) => ({ vapour, pressure: saturation })),
    ...(end.vapour > 0 ? [outer] : []),
  ];
  const touched = taut(points, noise);
  const string = touched.map((index) => points[index] as Point);
  const unchecked = { ...outer, pressure: sealed ? indoors.pressure : outdoors.pressure };
  const places = warm.map((each): Place => {
    if (each.vapour === Infinity)
      return { ...each, unchecked: outdoors.pressure, pressure: outdoors.pressure };
    const before = [...string].reverse().find(({ vapour }) => vapour <= each.vapour) ?? room;
    const after = string.find(({ vapour }) => vapour >= each.vapour) ?? outer;
    return {
      ...each,
      unchecked: onLine(room, unchecked, each.vapour),
      pressure: onLine(before, after, each.vapour),
    };
  });
  const placeOf = (index: number): Place =>
    places[warm.indexOf(index === 0 ? (warm[0] as Warm) : (between[index - 1] ?? end))] as Place;

  // A sealed end catches what arrives, if it is too cold for it.
  const catches = sealed && end.vapour > 0 && indoors.pressure - end.saturation > noise;
  const wet: Wet[] = [];
  for (const [order, index] of touched.entries()) {
    if (order === 0 || (order === touched.length - 1 && !catches)) continue;
    const [before, after] = [touched[order - 1] ?? 0, touched[order + 1]];
    const to = after === undefined ? undefined : placeOf(after);
    const run = wet[wet.length - 1];
    // Places one step apart inside a layer are one wet stretch.
    const here = layers[placeOf(index).layer];
    const step = before === index - 1 && here !== undefined && here.heat > 0 && here.vapour > 0;
    if (run && step) wet[wet.length - 1] = { ...run, last: placeOf(index), to };
    else wet.push({ first: placeOf(index), last: placeOf(index), from: placeOf(before), to });
  }
  return { places, wet, end: places[warm.indexOf(end)] as Place };
}
