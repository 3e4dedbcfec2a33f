import { describe, expect, test } from 'vitest';
import { formatProblem } from '../../../src/rulebook/problem.ts';
import { agency, resolved } from './folder.ts';

const VALUE =
  'clearance.flue.to-combustibles:\n  value: { kind: at-least, number: 3, unit: in }\n  reason: So.\n';
const NOTE = 'permit:\n  title: T\n  says: S\n';
const DOCUMENT =
  'notice:\n  kind: regulation\n  document: D\n  title: T\n  edition: "2026"\n  publisher: P\n  standing: S\n';

describe('a field in the wrong form is told with the form that it has', () => {
  test.each<[what: string, file: string, text: string, found: string, expected: string]>([
    [
      'a source that is a word',
      'values.yaml',
      `${VALUE}  source: practice\n`,
      'source "practice"',
      'the form source: { kind: practice }',
    ],
    ['no source', 'values.yaml', VALUE, 'no "source"', 'a line such as source: { kind: practice }'],
    [
      'a value that is a number',
      'values.yaml',
      `${VALUE.replace(/\{.*\}/, '3')}  source: { kind: practice }\n`,
      'value 3',
      'the form value: { kind: at-least, number: 3, unit: in }',
    ],
    [
      'a number with its unit',
      'values.yaml',
      `${VALUE.replace('3,', '3 in,')}  source: { kind: practice }\n`,
      'number "3 in" in "value"',
      'a number by itself, without a unit and without quotes',
    ],
    [
      'a number with a decimal comma',
      'values.yaml',
      `${VALUE.replace('3,', '3,5,')}  source: { kind: practice }\n`,
      'the unknown key "5"',
      'a point in a number, as in 2.5: a comma begins the next field',
    ],
    [
      'a value without its unit',
      'values.yaml',
      `${VALUE.replace(', unit: in', '')}  source: { kind: practice }\n`,
      'no "unit" in "value"',
      'a line such as unit: in',
    ],
    [
      'a clause that is a number',
      'values.yaml',
      `${VALUE}  source: { kind: document, document: irc, clause: 2, read: read }\n`,
      'clause 2 in "source"',
      'double quotes about it: clause: "2"',
    ],
    [
      'a place without brackets',
      'notes.yaml',
      `${NOTE}  on: do/first-visit\n`,
      'on "do/first-visit"',
      'brackets about it: on: [do/first-visit]',
    ],
    [
      'one place of several that is no path',
      'notes.yaml',
      `${NOTE}  on: [do/first-visit, Do/Patching]\n`,
      '"Do/Patching" as the second of "on"',
      'the id of a rule, or the path of a page such as do/patching',
    ],
    [
      'a place far down a list',
      'notes.yaml',
      `${NOTE}  on: [${'do/first-visit, '.repeat(11)}42]\n`,
      '42 as number 12 of "on"',
      'double quotes about it: "42"',
    ],
    [
      'a place of which nothing is read',
      'notes.yaml',
      `${NOTE}  on: [null]\n`,
      'nothing that is read as the first of "on"',
      'words behind the colon, on the same line',
    ],
    ['no place', 'notes.yaml', NOTE, 'no "on"', 'a line such as on: [do/first-visit]'],
    [
      'no words',
      'notes.yaml',
      `${NOTE.replace(' T', '')}  on: [do/first-visit]\n`,
      'nothing that is read behind "title"',
      'words behind the colon, on the same line',
    ],
    [
      'no line of words',
      'notes.yaml',
      `${NOTE.replace('  says: S\n', '')}  on: [do/first-visit]\n`,
      'no "says"',
      'a line "says:" with words behind the colon',
    ],
    [
      'an entry of which only the first line was made to count',
      'notes.yaml',
      'permit:\n#   title: T\n#   says: S\n',
      'nothing that is read behind "permit"',
      'its lines below it, each with two spaces before it and no mark # at its head',
    ],
    [
      'an entry that is words',
      'notes.yaml',
      'permit: Ask first.\n',
      '"Ask first."',
      'its lines below it, each with two spaces before it and no mark # at its head',
    ],
    [
      'lines without spaces before them, once and not for each',
      'notes.yaml',
      `${NOTE}  on: [do/first-visit]\n`.replace(/^ +/gm, '').repeat(2),
      '"title" at the very head of a line',
      'two spaces before it, and before every other line that belongs to the same name',
    ],
    [
      'an edition that is a number',
      'sources.yaml',
      DOCUMENT.replace('"2026"', '2026'),
      'edition 2026',
      'double quotes about it: edition: "2026"',
    ],
    [
      'a telephone number',
      'agency.yaml',
      agency().replace('The desk.', '5550102233'),
      'contact 5550102233',
      'double quotes about it: contact: "5550102233"',
    ],
    [
      'an empty file',
      'agency.yaml',
      '# later\n',
      'nothing that is read',
      'a line for each field: its name, a colon, a space, then the words',
    ],
    [
      'an edition of tomorrow',
      'agency.yaml',
      agency().replace('2026-10-01', '2026-11-26'),
      '2026-11-26',
      'the day of this edition, not after today, 2026-11-25',
    ],
  ])('%s', (_, file, text, found, expected) => {
    const problems = resolved({ [file]: text }).problems;
    expect(problems.map((each) => [each.found, each.expected])).toEqual([[found, expected]]);
    expect(problems.map(formatProblem).join()).toMatch(new RegExp(`^${file}:\\d+:\\d+ `));
  });
});
