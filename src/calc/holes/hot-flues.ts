import { isConnector } from '../before/flue-rings.ts';
import { hotKinds } from './fields.ts';
import type { AlongValues } from './members.ts';

type Obstacle = NonNullable<AlongValues['obstacles']>[number];

/** Is it a flue that gets hot? @example isHot({ what: 'plumbing vent' }) // => false */
export const isHot = ({ what }: Pick<Obstacle, 'what'>): boolean => hotKinds.includes(what);

/**
 * Has nobody read what this flue is? Then it would be taken for the usual kind, whose ring is the least that a flue may have. A listing that lets fill
 * touch it is nothing to go by while nobody knows what it is.
 * @example untold({ what: 'furnace flue' }) // => true
 */
export const untold = (each: Pick<Obstacle, 'what' | 'kind' | 'listed'>): boolean =>
  isHot(each) && !each.kind && !(each.listed && each.listed.amount > 0);

/** Is it a hot flue that was entered as a single-wall connector? @example isHotConnector({ what: 'furnace flue', kind: 'connector, oil' }) // => true */
export const isHotConnector = (each: Pick<Obstacle, 'what' | 'kind'>): boolean =>
  isHot(each) && each.kind !== undefined && isConnector(each.kind);
