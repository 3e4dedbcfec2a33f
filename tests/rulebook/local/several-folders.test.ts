import { delimiter } from 'node:path';
import { expect, test } from 'vitest';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { ifSeveral } from '../../../src/rulebook/local/several-folders.ts';

test.each([
  [
    'parted as on Windows',
    '../state;../county',
    ':',
    '; several folders are parted by ":", as in ../state:../county',
  ],
  [
    'parted as in a list',
    '../state, ../county',
    ':',
    '; several folders are parted by ":", as in ../state:../county',
  ],
  [
    'parted as anywhere but on Windows',
    '..\\state:..\\county',
    ';',
    '; several folders are parted by ";", as in ..\\state;..\\county',
  ],
  ['one with the letter of its drive', 'C:\\our notes', ';', ''],
  [
    'two with theirs, parted by a comma',
    'C:\\a,D:/b',
    ';',
    '; several folders are parted by ";", as in C:\\a;D:/b',
  ],
  ['one', '../our-notes', ':', ''],
])('of what LOCAL names, and is not there: %s', (_, folder, parted, said) => {
  expect(ifSeveral(folder, parted)).toBe(said);
});

test('a folder that is not there is told with how several are parted here', () => {
  const other = delimiter === ':' ? ';' : ',';
  const [one, several] = ['no-such-folder', `no-such-folder${other}nor-this`].map((folder) =>
    readLayer(folder).problems.map(({ found, expected }) => `${found}, ${expected}`),
  );
  expect(one).toEqual(["no folder here, an agency's folder, with agency.yaml in it"]);
  expect(several).toEqual([expect.stringContaining(`several folders are parted by "${delimiter}"`)]);
});
