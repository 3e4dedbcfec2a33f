import { type ClearSpace, clearSpace } from '../calc/before/clear-space.ts';
import { USUAL_FLUE } from '../calc/before/flue-rings.ts';
import type { HotThing } from '../calc/before/hot-things.ts';
import { ringOf } from '../calc/before/rings.ts';
import type { KeptOpen } from '../calc/cavity/open-within.ts';
import { deepestBetween } from '../calc/cavity/profile.ts';
import type { Section } from '../calc/cavity/section.ts';
import { EntriesClash } from '../calc/declare/calculation.ts';
import { amountIn, byMethod, type Quantity, smaller } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { acrossFromEave } from './across-from-eave.ts';
import { hotFlues } from './hot-flues.ts';
import type { JobValues } from './job-fields.ts';
import { rises } from './off-the-roof.ts';

type Light = NonNullable<JobValues['ceiling']['lights']>[number];

/** A hot flue or a recessed light of this home, where it stands, and the space that it is given. */
export interface HotPlace {
  /** The way in the job to the entry that tells of it. */
  readonly entry: string;
  readonly what: string;
  readonly side: 'back' | 'front';
  readonly along: Quantity<'length'>;
  /** Its place across, from the eave that the section is measured from. */
  readonly at: Quantity<'length'>;
  readonly thing: HotThing;
  readonly space: ClearSpace;
}

/** A space that the fill keeps clear of, with what stands in it. */
export interface KeptSpace extends HotPlace, KeptOpen {}

/**
 * Which flues and lights does the fill meet, and what room does each get? A flue's width on the roof, flashing included, stands in for its
 * own, which is no smaller on the safe side. The fill is taken to lie up to the roof.
 */
export function hotPlaces(
  job: JobValues,
  { section, old }: { readonly section: Section; readonly old: Quantity<'length'> | undefined },
  rules: Rulebook,
): HotPlace[] {
  const lights = job.ceiling.lights ?? [];
  return [
    ...hotFlues(job).map(({ place, flue }) => ({
      ...flue,
      entry: `roof.obstacles.${place}`,
      at: acrossFromEave(flue, job, section),
      kind: flue.kind ?? USUAL_FLUE,
    })),
    ...lights.map((light, place) => ({
      ...light,
      entry: `ceiling.lights.${place}`,
      what: light.kind,
      at: lightFromEave(light, job),
    })),
  ].map(({ entry, what, side, along, at, kind, across, listed }, place) => {
    const height = byMethod(
      'height of the cavity at its place',
      [at, ...section.told],
      section.profile.depthAt(amountIn(at, 'in')),
      'in',
    );
    const open: HotThing = {
      kind,
      across,
      other_side: undefined,
      depth: { ...height, symbol: `d${place + 1}`, label: `Depth of the fill at ${place + 1}` },
      old_depth: old && smaller(old, height),
      cavity: undefined,
      listed,
    };
    const { ring } = ringOf(open, job.fill.material, rules);
    const cavity = highestOver({ at, across, ring }, section);
    const thing: HotThing = {
      ...open,
      cavity: { ...cavity, symbol: `dc${place + 1}`, label: `Height of the cavity at ${place + 1}` },
    };
    const space = toldAt(entry, () => clearSpace(thing, job.fill.material, rules, place));
    return { entry, what, side, along, at, thing, space };
  });
}

/** How high is the cavity where it is highest over a thing and its ring? The fill lies up to the roof all round, and no shield is lower. */
function highestOver(
  { at, across, ring }: Readonly<Record<'at' | 'across' | 'ring', Quantity<'length'>>>,
  section: Section,
): Quantity<'length'> {
  const [middle, half] = [amountIn(at, 'in'), amountIn(across, 'in') / 2 + amountIn(ring, 'in')];
  return byMethod(
    'height of the cavity where it is highest over the open space',
    [at, across, ring, ...section.told],
    deepestBetween(section.profile, middle - half, middle + half),
    'in',
  );
}

/** What is told of a thing by its place in a list of all is told at its own entry. */
function toldAt<T>(entry: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof EntriesClash)) throw error;
    const { problem } = error;
    throw new EntriesClash({ ...problem, field: `${entry}.${problem.field.split('.').pop()}` });
  }
}

/** Those that keep a space open; a light that the fill may touch is buried. */
export const keptOpen = (places: readonly HotPlace[]): KeptSpace[] =>
  places.flatMap((place) => (place.space.across ? [{ ...place, across: place.space.across }] : []));

function lightFromEave({ from_eave, side }: Light, job: JobValues): Quantity<'length'> {
  const width = amountIn(job.cavity.width, 'in');
  const from = Math.min(width, amountIn(from_eave, 'in'));
  return byMethod(
    'place across, from the eave on the back side',
    [job.cavity.width, from_eave],
    side === 'back' || rises(job) ? from : width - from,
    'in',
  );
}
