import { describe, expect, test } from 'vitest';
import { asWord, folderMeant, startWith } from '../../src/cli/local-ways.ts';

describe('a folder as it is typed', () => {
  test.each([
    ['~', '/home/dee'],
    ['~/our-notes', '/home/dee/our-notes'],
    ['../our-notes', '../our-notes'],
    ['~our-notes', '~our-notes'],
    ['notes/~', 'notes/~'],
  ])('%s means %s', (typed, meant) => expect(folderMeant(typed, '/home/dee')).toBe(meant));
});

describe('a line to be pasted takes the folder for one word', () => {
  test.each([
    ['linux', '../our-notes', '../our-notes', ['LOCAL=../our-notes npm start']],
    ['linux', '../our notes', "'../our notes'", ["LOCAL='../our notes' npm start"]],
    ['linux', "Dee's", "'Dee'\\''s'", ["LOCAL='Dee'\\''s' npm start"]],
    ['darwin', '../a&b', "'../a&b'", ["LOCAL='../a&b' npm start"]],
    ['win32', '..\\our-notes', '..\\our-notes', ["$env:LOCAL = '..\\our-notes'", 'npm start']],
    ['win32', '..\\our notes', '"..\\our notes"', ["$env:LOCAL = '..\\our notes'", 'npm start']],
    ['win32', "Dee's", '"Dee\'s"', ["$env:LOCAL = 'Dee''s'", 'npm start']],
  ] as const)('on %s: %s', (platform, folder, word, lines) => {
    expect(asWord(folder, platform)).toBe(word);
    expect(startWith(folder, platform)).toEqual(lines);
  });
});
