import { expect, test } from 'vitest';
import { isHotConnector, untold } from '../../../src/calc/holes/hot-flues.ts';
import { quantity } from '../../../src/quantity/quantity.ts';

type Asked = Parameters<typeof untold>[0];
type Entered = Pick<Asked, 'what'> & Partial<Asked>;
/** As it is read: what was left empty is there, and nothing. */
const asRead = (entered: Entered): Asked => ({ kind: undefined, listed: undefined, ...entered });

// A connector joins an appliance to its chimney; a plumbing vent joins nothing that burns, whatever was entered beside it.
test.each<[title: string, entered: Entered, connector: boolean]>([
  ['a furnace flue entered as a connector', { what: 'furnace flue', kind: 'connector, oil' }, true],
  ['another hot one entered as a connector', { what: 'other hot flue', kind: 'connector, solid fuel' }, true],
  ['a furnace flue entered as a chimney', { what: 'furnace flue', kind: 'masonry chimney' }, false],
  ['a furnace flue of no kind', { what: 'furnace flue' }, false],
  ['a plumbing vent with the kind of a connector', { what: 'plumbing vent', kind: 'connector, oil' }, false],
])('a hot connector: %s, %s', (_, entered, connector) => {
  expect(isHotConnector(asRead(entered))).toBe(connector);
});

test.each<[title: string, entered: Entered, asked: boolean]>([
  ['neither kind nor listing', { what: 'furnace flue' }, true],
  ['a listing that lets fill touch it', { what: 'furnace flue', listed: quantity(0, 'in') }, true],
  ['a listing of its own', { what: 'furnace flue', listed: quantity(1, 'in') }, false],
  ['a kind', { what: 'furnace flue', kind: 'masonry chimney' }, false],
  ['no flue at all', { what: 'plumbing vent' }, false],
])('a flue that nobody read: %s, %s', (_, entered, asked) => {
  expect(untold(asRead(entered))).toBe(asked);
});
