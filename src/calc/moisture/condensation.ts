/**
 * Where does vapour on its way through layers meet a face too cold for it? The dew-point method in plain numbers, of any one unit of
 * pressure and of resistance. Face 0 is the indoor air, the last face the outdoor air; layer i lies between the faces i and i + 1.
 */
export interface VapourPath {
  /** Saturation pressure at each face. */
  readonly saturation: readonly number[];
  /** Resistance to vapour of each layer: 0 for one that lets it through freely, Infinity for one that lets none through. */
  readonly resistance: readonly number[];
  /** Vapour pressure of the indoor and of the outdoor air, neither above its saturation. */
  readonly indoor: number;
  readonly outdoor: number;
}

export interface Condensation {
  /** Vapour pressure at each face, none above saturation. */
  readonly pressure: readonly number[];
  /** What it would be if nothing condensed. */
  readonly unchecked: readonly number[];
  readonly planes: readonly Plane[];
}

/** A face at which water gathers. */
export interface Plane {
  readonly face: number;
  /** How far the pressure would stand above saturation there if nothing condensed. */
  readonly excess: number;
  /**
   * The face that the vapour comes from or goes to on the indoor side and on the outdoor side: the air, or another plane. `sealed` where a
   * layer lets none through; `free` where nothing resists, so that the method sets no limit to what gathers.
   */
  readonly indoors: number | 'sealed' | 'free';
  readonly outdoors: number | 'sealed' | 'free';
}

/** A pressure this much above saturation, as a share of the largest, is a rounding error. */
const NOISE = 1e-9;

/** Faces between which vapour passes freely: all have the pressure that the coldest of them allows. */
interface Place {
  readonly faces: readonly number[];
  readonly coldest: number;
  /** Resistance from the beginning of the section. */
  readonly at: number;
}

interface Section {
  readonly places: readonly Place[];
  readonly hasIndoors: boolean;
  readonly hasOutdoors: boolean;
}

/** Faces joined by layers that let vapour through; a layer that lets none through ends a section. */
function sectionsOf({ saturation, resistance }: VapourPath): Section[] {
  const last = resistance.length;
  const sections: { places: { faces: number[]; at: number }[] }[] = [{ places: [{ faces: [0], at: 0 }] }];
  for (const [layer, resists] of resistance.entries()) {
    const face = layer + 1;
    const section = sections.at(-1);
    const place = section?.places.at(-1);
    if (!section || !place) continue;
    if (resists === Infinity) sections.push({ places: [{ faces: [face], at: 0 }] });
    else if (resists === 0) place.faces.push(face);
    else section.places.push({ faces: [face], at: place.at + resists });
  }
  const coldestOf = (faces: readonly number[]): number =>
    faces.reduce((cold, face) => ((saturation[face] ?? 0) < (saturation[cold] ?? 0) ? face : cold));
  return sections.map(({ places }) => ({
    places: places.map(({ faces, at }) => ({ faces, at, coldest: coldestOf(faces) })),
    hasIndoors: places[0]?.faces.includes(0) ?? false,
    hasOutdoors: places.at(-1)?.faces.includes(last) ?? false,
  }));
}

/** A place whose pressure is known: the air at an end, or a plane. */
interface Fixed {
  readonly place: number;
  readonly pressure: number;
}

/**
 * The dew-point method by its usual steps: the pressure falls in a straight line over the resistance; where it stands highest above
 * saturation it is set to saturation, and both sides are worked again, until it stands above it nowhere. Of two layers that let nothing
 * through, what lies between takes no part: nothing arrives there, and nothing leaves.
 * @throws RangeError if nothing at all resists vapour, since its pressure is then not determined.
 * @example condensation({ saturation: [10, 10, 4, 4], resistance: [1, 1, 1], indoor: 8, outdoor: 2 }).pressure // => [8, 6, 4, 2]
 */
export function condensation(path: VapourPath): Condensation {
  const { saturation, indoor, outdoor } = path;
  if (path.resistance.every((resists) => resists === 0))
    throw new RangeError('found no layer that resists vapour, expected one or more');
  const noise = NOISE * Math.max(indoor, outdoor);
  const pressure: number[] = [];
  const unchecked: number[] = [];
  const planes: Plane[] = [];
  for (const section of sectionsOf(path)) work(section);
  return { pressure, unchecked, planes: planes.sort((a, b) => a.face - b.face) };

  function work({ places, hasIndoors, hasOutdoors }: Section): void {
    const saturationAt = (place: number): number => saturation[places[place]?.coldest ?? 0] ?? 0;
    const last = places.length - 1;
    const ends = {
      indoors: hasIndoors ? indoor : undefined,
      outdoors: hasOutdoors ? outdoor : undefined,
    };
    const level = ends.indoors ?? ends.outdoors ?? Math.min(indoor, outdoor);
    const plain = straight(
      { place: 0, pressure: ends.indoors ?? level },
      { place: last, pressure: ends.outdoors ?? level },
      places,
    );
    for (const [place, { faces }] of places.entries()) for (const face of faces) unchecked[face] = plain(place);
    // An end of the section that no air touches has the pressure of the nearest place that is known.
    const known: Fixed[] = [];
    const free = new Set<number>();
    const end = (place: number, air: number | undefined): void => {
      if (air === undefined) return;
      if (air - saturationAt(place) > noise) free.add(place);
      known.push({ place, pressure: Math.min(air, saturationAt(place)) });
    };
    end(0, ends.indoors);
    if (last > 0 || !hasIndoors) end(last, ends.outdoors);
    // Nothing arrives between two layers that let nothing through.
    if (known.length === 0) {
      const shut = Math.min(level, ...places.map((_, place) => saturationAt(place)));
      for (const { faces } of places) for (const face of faces) pressure[face] = shut;
      return;
    }
    settle(known);
    const between = (place: number): number => {
      const before = known.findLast((each) => each.place <= place) ?? known[0];
      const after = known.find((each) => each.place >= place) ?? known.at(-1);
      return before && after ? straight(before, after, places)(place) : level;
    };
    for (const [place, { faces }] of places.entries()) for (const face of faces) pressure[face] = between(place);
    if (hasIndoors) pressure[0] = indoor;
    if (hasOutdoors) pressure[saturation.length - 1] = outdoor;
    for (const [at, { place }] of known.entries()) {
      const isEnd = (place === 0 && hasIndoors) || (place === last && hasOutdoors);
      if (isEnd && !free.has(place)) continue;
      const faceOf = (each: Fixed | undefined): number | 'sealed' =>
        each ? (places[each.place]?.coldest ?? 0) : 'sealed';
      const neighbour = (each: Fixed | undefined, isAir: boolean, air: number) =>
        each && isAir && !free.has(each.place) ? air : faceOf(each);
      const [before, after] = [known[at - 1], known[at + 1]];
      planes.push({
        face: places[place]?.coldest ?? 0,
        excess: plain(place) - saturationAt(place),
        indoors:
          place === 0 && hasIndoors ? 'free' : neighbour(before, before?.place === 0 && hasIndoors, 0),
        outdoors:
          place === last && hasOutdoors
            ? 'free'
            : neighbour(after, after?.place === last && hasOutdoors, saturation.length - 1),
      });
    }

    /** Sets the place that stands highest above saturation, then looks again, until none does. */
    function settle(settled: Fixed[]): void {
      for (;;) {
        let worst: Fixed | undefined;
        let most = noise;
        for (const place of places.keys()) {
          const before = settled.findLast((each) => each.place <= place) ?? settled[0];
          const after = settled.find((each) => each.place >= place) ?? settled.at(-1);
          if (!before || !after) continue;
          const over = straight(before, after, places)(place) - saturationAt(place);
          if (over > most) {
            most = over;
            worst = { place, pressure: saturationAt(place) };
          }
        }
        if (!worst) return;
        settled.push(worst);
        settled.sort((a, b) => a.place - b.place);
      }
    }
  }
}

/** The straight line of the pressure over the resistance between two places; level where they are the same. */
function straight(from: Fixed, to: Fixed, places: readonly Place[]): (place: number) => number {
  const at = (place: number): number => places[place]?.at ?? 0;
  const length = at(to.place) - at(from.place);
  return (place) =>
    length === 0
      ? from.pressure
      : from.pressure + ((to.pressure - from.pressure) * (at(place) - at(from.place))) / length;
}
