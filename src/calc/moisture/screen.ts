import {
  amountIn,
  byMethod,
  compare,
  inUnit,
  minus,
  named,
  type Quantity,
  quantity,
  times,
  total,
} from '../../quantity/quantity.ts';
import { type Air, dewPointOf, fahrenheitOf, inHgOf, vapourPressure } from './air.ts';
import { dewPoint } from './equations.ts';
import { type Place, type Profile, profile, type Wet } from './profile.ts';

export interface MoistureLayer {
  readonly name: string;
  readonly resistance: Quantity<'thermal resistance'>;
  /** Absent for a layer that lets vapour through freely; 0 for one that lets none through. */
  readonly permeance: Quantity<'permeance'> | undefined;
}

/** Air, temperature and pressures at a face of the layers, or at a place inside one. */
export interface Face {
  readonly place: Place;
  /** In words: between which layers it lies. */
  readonly where: string;
  readonly temperature: Quantity<'temperature reading'>;
  readonly saturation: Quantity<'load'>;
  readonly pressure: Quantity<'load'>;
  readonly dewPoint: Quantity<'temperature reading'> | undefined;
}

/** A stretch at which water gathers: what arrives, what leaves, and what stays. */
export interface Gathering {
  readonly where: string;
  readonly temperature: Quantity<'temperature reading'>;
  readonly arrives: Quantity<'vapour flow'>;
  readonly leaves: Quantity<'vapour flow'>;
  readonly stays: Quantity<'vapour flow'>;
}

export interface MoistureScreen {
  readonly layers: readonly MoistureLayer[];
  readonly profile: Profile;
  readonly faces: readonly Face[];
  readonly room: Quantity<'load'>;
  readonly dewPoint: Quantity<'temperature reading'> | undefined;
  /** The coldest face on the way out: where water gathers most, or else the last that the room's vapour reaches within the layers. */
  readonly coldest: { readonly where: string; readonly temperature: Quantity<'temperature reading'> };
  readonly gatherings: readonly Gathering[];
  /** Vapour from the room to where water first gathers, and from where it last gathers outwards; the same where none gathers. */
  readonly flowIn: Quantity<'vapour flow'>;
  readonly flowOut: Quantity<'vapour flow'>;
  readonly stays: Quantity<'vapour flow'>;
  readonly gathered: Quantity<'load'>;
  /** How readily vapour passes from the room to where water first gathers; absent where none gathers. */
  readonly permeanceIn: Quantity<'permeance'> | undefined;
}

/**
 * Does water gather on the way from the room outwards, where, and how much over the period? The dew-point method of ASHRAE Fundamentals,
 * chapter 27, with temperatures by resistance and pressures by permeance, both steady; what gathers is what arrives less what leaves.
 * @throws RangeError if it is warmer outdoors, if no layer resists heat, or if none resists vapour.
 * @throws NothingHoldsBack if nothing resists vapour before a place too cold for it.
 * @throws QuantityError for no layers.
 */
export function moistureScreen(
  layers: readonly MoistureLayer[],
  indoors: Air,
  outdoors: Air,
  period: Quantity<'time'>,
): MoistureScreen {
  const room = vapourPressure(indoors, 'i', 'of the room');
  const outer = vapourPressure(outdoors, 'o', 'outdoors');
  const inside = plainAir(indoors, room);
  const even = compare(outdoors.temperature, indoors.temperature) === 0;
  const found = profile(
    layers.map(({ resistance, permeance }) => ({
      heat: amountIn(resistance, 'h ft2 F/Btu'),
      vapour: permeance ? 1 / amountIn(permeance, 'perm') : 0,
    })),
    inside,
    // One temperature told in two units may come out a trillionth warmer outdoors.
    even ? { ...plainAir(outdoors, outer), celsius: inside.celsius } : plainAir(outdoors, outer),
  );
  const way = wayThrough(layers, indoors, outdoors, found, room, outer);
  const faces = found.places.filter(({ share }) => share === 1).map(way.face);
  const gatherings = found.wet.map(way.gathering);
  const most = gatherings.reduce<Gathering | undefined>(
    (best, each) => (best && compare(best.stays, each.stays) >= 0 ? best : each),
    undefined,
  );
  const flowIn = named(way.arrives(found.wet[0]), 'wi', 'Vapour that comes from the room');
  const flowOut = named(way.leaves(found.wet[found.wet.length - 1]), 'wo', 'Vapour that goes on outwards');
  const stays = named(most ? minus(flowIn, flowOut) : quantity(0, 'grain/(h ft2)'), 'w', 'Water that stays');
  const coldest = coldestOf(found, layers);
  const first = found.wet[0];
  return {
    layers,
    profile: found,
    faces,
    room,
    dewPoint: dewPointOf(indoors.temperature, room),
    coldest: most ?? { where: whereIs(coldest, layers), temperature: way.temperatureAt(coldest) },
    gatherings,
    flowIn,
    flowOut,
    stays,
    gathered: named(times(stays, period), 'm', 'Water gathered over the period'),
    permeanceIn: first && way.permeance(first.from, first.first),
  };
}

const plainAir = ({ temperature }: Air, pressure: Quantity<'load'>) => ({
  celsius: amountIn(temperature, 'C'),
  pressure: amountIn(pressure, 'Pa'),
});

/** The last face that the room's vapour reaches within the layers: the one before the outermost layer, if that lets vapour through. */
function coldestOf({ places, end }: Profile, layers: readonly MoistureLayer[]): Place {
  if (end.layer < layers.length - 1) return end;
  return places.find(({ layer, share }) => layer === layers.length - 2 && share === 1) ?? end;
}

/** A place in words. @example whereIs({ layer: -1, share: 1 }, []) // => 'the room' */
export function whereIs(
  { layer, share }: Pick<Place, 'layer' | 'share'>,
  layers: readonly Pick<MoistureLayer, 'name'>[],
): string {
  const [inner, outer] = [layers[layer], layers[layer + 1]];
  if (!inner) return 'the room';
  if (share < 1) return `inside ${inner.name}`;
  return outer ? `between ${inner.name} and ${outer.name}` : 'outdoors';
}

/** A wet stretch in words. */
function stretch({ first, last }: Wet, layers: readonly MoistureLayer[]): string {
  const [from, to] = [whereIs(first, layers), whereIs(last, layers)];
  if (from === to) return from;
  const outer = layers[last.layer + 1];
  return first.layer === last.layer && outer
    ? `in the outer part of ${layers[first.layer]?.name}, as far as ${outer.name}`
    : `from ${from} to ${to}`;
}

/** The layers between two places, each with the share of it that lies between. */
function partsBetween(from: Place, to: Place): { readonly layer: number; readonly share: number }[] {
  const parts: { layer: number; share: number }[] = [];
  for (let layer = Math.max(0, from.layer); layer <= to.layer; layer++) {
    const begin = layer === from.layer ? from.share : 0;
    const end = layer === to.layer ? to.share : 1;
    if (end > begin) parts.push({ layer, share: end - begin });
  }
  return parts;
}

/** A part of a layer in a formula: its letter, with its share before it where it is not the whole. */
const part = (share: number, letter: string): string =>
  share === 1 ? letter : `${Number(share.toFixed(2))}·${letter}`;

/** Heat on its way through the layers: how warm it is at a place. */
function heatThrough(
  layers: readonly MoistureLayer[],
  indoors: Air,
  outdoors: Air,
  inside: Place,
): {
  readonly resistances: readonly Quantity<'thermal resistance'>[];
  readonly temperatureAt: (place: Place) => Quantity<'temperature reading'>;
} {
  const resistances = layers.map(({ resistance, name }, place) => named(resistance, `R${place + 1}`, name));
  const all = named(total(resistances), 'R', 'R of all layers');

  function temperatureAt(place: Place): Quantity<'temperature reading'> {
    const parts = partsBetween(inside, place);
    const before = named(
      byMethod(
        parts.map(({ layer, share }) => part(share, `R${layer + 1}`)).join(' + ') || 'nothing',
        parts.flatMap(({ layer }) => resistances[layer] ?? []),
        place.heat,
        'h ft2 F/Btu',
      ),
      'Rc',
      'R from the room as far as there',
    );
    return named(
      byMethod(
        'ti − (ti − to) · Rc/R',
        [indoors.temperature, outdoors.temperature, before, all],
        fahrenheitOf(place.celsius),
        'F',
      ),
      'tc',
      `Temperature ${whereIs(place, layers)}`,
    );
  }
  return { resistances, temperatureAt };
}

/** Vapour on its way through the layers: what arrives at a wet stretch and what leaves it; without one, what goes all the way. */
function vapourThrough(
  permeances: readonly (Quantity<'permeance'> | undefined)[],
  [inside, outside, end]: readonly [inside: Place, outside: Place, end: Place],
  pressureAt: (place: Place) => Quantity<'load'>,
) {
  function permeance(from: Place, to: Place): Quantity<'permeance'> {
    const parts = partsBetween(from, to).filter(({ layer }) => permeances[layer]);
    const sum = parts.map(({ layer, share }) => `${Number(share.toFixed(2))}/M${layer + 1}`).join(' + ');
    return named(
      byMethod(
        `1/(${sum})`,
        parts.flatMap(({ layer }) => permeances[layer] ?? []),
        1 / (to.vapour - from.vapour),
        'perm',
      ),
      from === inside ? 'Mi' : 'Mo',
      from === inside ? 'Permeance from the room as far as there' : 'Permeance from there outwards',
    );
  }
  const none = () =>
    byMethod('nothing passes a layer of no permeance', [], 0, 'grain/(h ft2)') as Quantity<'vapour flow'>;
  const flow = (from: Place, to: Place): Quantity<'vapour flow'> =>
    times(permeance(from, to), minus(pressureAt(from), pressureAt(to)));
  const through = (): Quantity<'vapour flow'> => (end === outside ? flow(inside, outside) : none());
  const arrives = (wet: Wet | undefined) => (wet ? flow(wet.from, wet.first) : through());
  const leaves = (wet: Wet | undefined) => (wet ? (wet.to ? flow(wet.last, wet.to) : none()) : through());
  return { permeance, arrives, leaves };
}

/** What the working of a figure needs on its way through the layers. */
function wayThrough(
  layers: readonly MoistureLayer[],
  indoors: Air,
  outdoors: Air,
  { places, end }: Profile,
  room: Quantity<'load'>,
  outer: Quantity<'load'>,
) {
  const [inside, outside] = [places[0] as Place, places[places.length - 1] as Place];
  const { resistances, temperatureAt } = heatThrough(layers, indoors, outdoors, inside);
  const permeances = layers.map(({ permeance, name }, place) =>
    permeance ? named(permeance, `M${place + 1}`, name) : undefined,
  );
  const vapour = vapourThrough(permeances, [inside, outside, end], pressureAt);

  /** The vapour pressure at a place: that of the air at an end, or of saturated air. */
  function pressureAt(place: Place): Quantity<'load'> {
    if (place === inside) return room;
    if (place === outside) return outer;
    return named(
      byMethod('pressure of saturated air at tc', [temperatureAt(place)], inHgOf(place.pressure), 'inHg'),
      'pc',
      `Vapour pressure ${whereIs(place, layers)}`,
    );
  }

  /** The air at a face: at either end it is the room's or that outdoors, as told. */
  function airAt(place: Place): { temperature: Air['temperature']; pressure: Quantity<'load'> } {
    if (place === inside) return { temperature: indoors.temperature, pressure: room };
    if (place === outside) return { temperature: outdoors.temperature, pressure: outer };
    const temperatures = [indoors.temperature, outdoors.temperature, ...resistances];
    const pressure = byMethod(
      'it falls from pi to po in each layer by 1/M; where water gathers it is that of saturated air',
      [room, outer, ...permeances.flatMap((each) => each ?? []), ...temperatures],
      inHgOf(place.pressure),
      'inHg',
    );
    return {
      temperature: temperatureAt(place),
      pressure: named(pressure, 'pc', `Vapour pressure ${whereIs(place, layers)}`),
    };
  }

  function face(place: Place): Face {
    const { temperature, pressure } = airAt(place);
    const dew = dewPoint(place.celsius, amountIn(pressure, 'Pa'));
    return {
      place,
      where: whereIs(place, layers),
      temperature: inUnit(temperature, 'F'),
      saturation: byMethod(
        'pressure of saturated air at that temperature',
        [temperature],
        inHgOf(place.saturation),
        'inHg',
      ),
      pressure: inUnit(pressure, 'inHg'),
      dewPoint:
        dew === undefined
          ? undefined
          : byMethod(
              'temperature at which air of that vapour pressure is saturated',
              [pressure],
              fahrenheitOf(dew),
              'F',
            ),
    };
  }

  function gathering(wet: Wet): Gathering {
    const [arriving, leaving] = [vapour.arrives(wet), vapour.leaves(wet)];
    return {
      where: stretch(wet, layers),
      temperature: temperatureAt(wet.last),
      arrives: arriving,
      leaves: leaving,
      stays: minus(arriving, leaving),
    };
  }
  return { ...vapour, temperatureAt, gathering, face };
}
