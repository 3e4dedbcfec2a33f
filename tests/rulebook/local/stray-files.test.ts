import { mkdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { inLayer, setting } from './folder.ts';

const FLUE = setting('clearance.flue.to-combustibles', '{ kind: at-least, number: 4, unit: in }');

/** What is said of a folder that holds a stricter value in a file of this name, and these besides. */
const told = (name: string, besides: Readonly<Record<string, string>> = {}): string[] =>
  inLayer({ [name]: FLUE, ...besides }, (folder) =>
    readLayer(folder).problems.map(
      ({ file, found, expected }) =>
        `${relative(relative(process.cwd(), folder), file)}: ${found}, expected ${expected}`,
    ),
  );

describe('a file of an agency’s folder that is not read is told, or its values would be lost unsaid', () => {
  test.each([
    ['with the ending that an editor hung on', 'values.yaml.txt'],
    ['with another ending', 'values.txt'],
    ['with the other ending of YAML', 'values.yml'],
    ['in capitals', 'VALUES.YAML'],
    ['a copy with a number', 'values (2).yaml'],
    ['a folder down', 'old/values.yaml'],
    ['two folders down', 'old/2025/values.yaml'],
    ['mistyped', 'vlaues.yaml'],
    ['hidden by its name', '.values.yaml'],
    ['what an editor kept of a file that is gone', 'values.yaml~'],
  ])('%s: %s', (_, name) =>
    expect(told(name)).toEqual([
      `${name}: a file that is not read, expected it under the name values.yaml, in the folder itself`,
    ]),
  );

  test('beside the file that it is a copy of', () =>
    expect(told('old/values.yaml', { 'values.yaml': FLUE })).toEqual([
      'old/values.yaml: a file that is not read, expected values.yaml alone: put what holds into it, and keep this file outside this folder',
    ]));

  test.each(['letter.pdf', 'our-mark.svg', 'letters/2026.txt'])('of another kind: %s', (name) =>
    expect(told(name)).toEqual([
      `${name}: a file that is not read, expected one of agency.yaml, values.yaml, notes.yaml, cautions.yaml, sources.yaml, or a page in the folder pages; keep anything else outside this folder`,
    ]),
  );

  test.each(['pages/Who to call.mdx', 'pages/values.yaml', 'pages/more/who.mdx', 'pages/who.mdx~'])(
    'of a name that makes no address: %s',
    (name) =>
      expect(told(name)).toEqual([
        `${name}: a name that makes no address, expected a name such as who-to-call.mdx: small letters, digits and hyphens, then .mdx`,
      ]),
  );

  test('more than twenty of them are counted', () => {
    const many = Object.fromEntries(Array.from({ length: 25 }, (_, place) => [`letter-${place}.pdf`, 'x']));
    const all = told('letter.pdf', many);
    expect(all).toHaveLength(21);
    expect(all.at(-1)).toMatch(/: 26 files that are not read, expected only the files of your notes/);
  });
});

describe('a file that may lie there is not told', () => {
  test.each([
    ['what a system puts there', '.DS_Store'],
    ['in the folder of pages too', 'pages/.DS_Store'],
    ['what another system puts there', 'pages/Thumbs.db'],
    ['what a system keeps beside a page', 'pages/._who.mdx'],
    ['the folder of git', '.git/config'],
    ['what a forge reads', '.gitlab-ci.yml'],
    ['a word to those who look in', 'README.md'],
    ['a licence', 'LICENSE'],
    ['a picture that may become the logo', 'our-mark.png'],
    ['what an editor kept of a file that is there', 'agency.yaml~'],
  ])('%s: %s', (_, name) => expect(told(name)).toEqual([]));

  test('an empty folder', () =>
    inLayer({}, (folder) => {
      mkdirSync(join(folder, 'old'));
      expect(readLayer(folder).problems).toEqual([]);
    }));
});
