import type { Way } from '../../calc/ways/compare.ts';
import { photographs as written } from '../../generated/photographs.ts';
import { ANYTHING_ELSE, type Photograph } from '../../job/photograph.ts';
import { isOfWay } from '../job/procedures.ts';

/** A photograph that a job is to have, at its step. */
export interface Listed {
  readonly id: string;
  /** What is in it. */
  readonly shows: string;
  /** What there is one of for each. */
  readonly each?: string;
  readonly when: 'before' | 'during' | 'after';
  /** The procedure, its title, and the number of the step. */
  readonly page: string;
  /** The way in that alone has it, where the procedure serves more than one. */
  readonly way?: Way;
  readonly title: string;
  readonly step: number;
  readonly why: string;
  readonly source: { readonly kind: 'practice' | 'memory'; readonly remark?: string };
}

/** Every photograph of the list, in the order of the work. */
export const listed: readonly Listed[] = written;

export const times = { before: 'Before the fill', during: 'While it is filled', after: 'After' } as const;

/** Does a photograph belong to the work of a way in? Of a page that serves two ways each has its own. */
export const isTakenOn = ({ page, way }: Pick<Listed, 'page' | 'way'>, chosen: Way): boolean =>
  isOfWay(page, chosen) && (way ?? chosen) === chosen;

const upper = (text: string): string => text.replace(/^./u, (letter) => letter.toUpperCase());

/**
 * What an entry of the list shows, as a heading has it.
 * @example headingOf({ shows: 'the patch', each: 'hole' }) // => 'Each hole: the patch'
 */
export const headingOf = ({ shows, each }: Pick<Listed, 'shows' | 'each'>): string =>
  each ? `Each ${each}: ${shows}` : upper(shows);

/** What a photograph shows, by its entry; one that the list does not name shows anything. */
export function shownIn(entry: string): string {
  const found = listed.find(({ id }) => id === entry);
  return found ? upper(found.shows) : 'Anything else';
}

/** Where a photograph stands: at its entry, or where there is no such entry, at the place for the rest. */
export const placeOf = ({ entry }: Photograph): string =>
  listed.some(({ id }) => id === entry) ? entry : ANYTHING_ELSE;

const order = [...listed.map(({ id }) => id), ANYTHING_ELSE];

/** Photographs in the order of the list, and at one entry in the order they were taken; they are numbered so. */
export const inOrder = (photographs: readonly Photograph[]): readonly Photograph[] =>
  [...photographs].sort(
    (a, b) =>
      order.indexOf(placeOf(a)) - order.indexOf(placeOf(b)) ||
      Date.parse(a.taken) - Date.parse(b.taken) ||
      (a.id < b.id ? -1 : 1),
  );
