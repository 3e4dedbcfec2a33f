import { expect, test } from 'vitest';
import { whichOfList } from '../../src/job/which-of-list.ts';

test.each([
  ['a truss of many', 'roof.trusses_measured.3.at', 'Place, truss 4'],
  ['a whole entry of a list', 'roof.obstacles.0', 'Place, vent, flue or skylight 1'],
  ['a duct', 'air.ducts.1.size', 'Place, duct 2'],
  ['a list as such', 'roof.obstacles', 'Place'],
  ['no list', 'cavity.width', 'Place'],
  ['nothing of the job', 'nowhere.4.at', 'Place'],
  ['all entries', '', 'Place'],
])('%s', (_, field, label) => {
  expect(whichOfList({ field, label: 'Place', found: '"9"', expected: 'a length' })).toEqual({
    field,
    label,
    found: '"9"',
    expected: 'a length',
  });
});
