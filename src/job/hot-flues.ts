import { USUAL_FLUE } from '../calc/before/flue-rings.ts';
import { printed, type Remark, said } from '../calc/declare/remark.ts';
import { isHot, isHotConnector, untold } from '../calc/holes/hot-flues.ts';
import type { JobValues } from './job-fields.ts';

export type OfRoof = { readonly roof: Pick<JobValues['roof'], 'obstacles'> };

/** A hot flue that is placed on the roof, and its place in the list of all that comes through it. */
interface PlacedFlue {
  readonly place: number;
  readonly flue: NonNullable<JobValues['roof']['obstacles']>[number];
}

/** Which hot flues are placed on the roof? @example hotFlues({ roof: {} }) // => [] */
export const hotFlues = ({ roof }: OfRoof): PlacedFlue[] =>
  (roof.obstacles ?? []).map((flue, place) => ({ flue, place })).filter(({ flue }) => isHot(flue));

/** Does a single-wall connector stand among them? @example connectorPlaced({ roof: {} }) // => false */
export const connectorPlaced = ({ roof }: OfRoof): boolean => (roof.obstacles ?? []).some(isHotConnector);

/** Of which flues did nobody read what they are? @example untoldFlues({ roof: {} }) // => [] */
export const untoldFlues = (job: OfRoof): PlacedFlue[] => hotFlues(job).filter(({ flue }) => untold(flue));

/**
 * What is said of each flue of which nobody read what it is; what is to be done is in their caution.
 * @example ofUntoldFlues({ roof: {} }) // => []
 */
export const ofUntoldFlues = (job: OfRoof): Remark[] =>
  untoldFlues(job).map(
    ({ flue: { what, along } }) =>
      said`Nobody said of what kind the ${what} at ${printed(along, { tape: 8 })} is: it is taken for a ${USUAL_FLUE}.`,
  );
