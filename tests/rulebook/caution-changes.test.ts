import { describe, expect, test } from 'vitest';
import { type CautionChangeKind, diffCautions } from '../../src/rulebook/changes/caution-diff.ts';
import { cautionParts } from '../../src/rulebook/changes/caution-parts.ts';
import { changesByVersion } from '../../src/rulebook/changes/releases.ts';
import { rulebookJson } from '../../src/rulebook/export/json.ts';
import { formatProblem } from '../../src/rulebook/problem.ts';
import type { LoadedCaution, Rule, RulebookData } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import { problemsOf } from './folder.ts';

const { data, releases } = theProject();

const beside = (level: LoadedCaution['level'], says = 'Ring us.', agency = 'Harrow') => ({
  agency,
  level,
  says,
  do: 'Wait.',
  from: 'practice',
});
const caution = (more: Partial<LoadedCaution> = {}): LoadedCaution => ({
  id: 'caution.a.b',
  file: 'a.yaml',
  line: 1,
  level: 'warn',
  says: 'It is hot.',
  do: 'Keep {flue.gap} off.',
  source: { kind: 'practice' },
  ...more,
});
const gap = (number: number, id = 'flue.gap'): Rule =>
  ({ ...Object.values(data.rules)[0], id, value: { kind: 'at-least', number, unit: 'in' } }) as Rule;
const book = (of: LoadedCaution | undefined, width = 2): RulebookData => ({
  version: '2026.1',
  documents: {},
  rules: { 'flue.gap': gap(width), 'flue.other': gap(width, 'flue.other') },
  cautions: of ? { [of.id]: of } : {},
});

describe('a change of a caution is told by its gravest kind', () => {
  type Given = Partial<LoadedCaution> | undefined;
  test.each<[what: string, before: Given, after: Given, kind: CautionChangeKind | undefined]>([
    ['nothing', {}, {}, undefined],
    ['a stop that becomes a note', { level: 'stop' }, { level: 'note' }, 'looser'],
    ['a stop that becomes a warning', { level: 'stop' }, { level: 'warn' }, 'looser'],
    ['a warning that becomes a note', { level: 'warn' }, { level: 'note' }, 'looser'],
    ['a note that becomes a warning', { level: 'note' }, { level: 'warn' }, 'stricter'],
    ['a stop that becomes a note, in other words', { level: 'stop' }, { level: 'note', says: 'x' }, 'looser'],
    [
      'an agency that says a warning and a stop beside it, in either order',
      { beside: [beside('stop'), beside('warn')] },
      { beside: [beside('warn'), beside('stop')] },
      'source',
    ],
    [
      'an agency whose stop becomes a note, beside a warning that stays',
      { beside: [beside('stop'), beside('warn')] },
      { beside: [beside('note'), beside('warn')] },
      'looser',
    ],
    [
      'an agency whose note becomes a stop, beside a warning that stays',
      { beside: [beside('note'), beside('warn')] },
      { beside: [beside('stop'), beside('warn')] },
      'stricter',
    ],
    [
      'an agency whose stop becomes a warning, beside a note that stays',
      { beside: [beside('note'), beside('stop')] },
      { beside: [beside('note'), beside('warn')] },
      'looser',
    ],
    [
      'where an agency has it from',
      { beside: [beside('note')] },
      { beside: [{ ...beside('note'), from: 'a notice' }] },
      'source',
    ],
    ['one that goes', {}, undefined, 'looser'],
    ['one that comes', undefined, {}, 'new'],
    ['what it says', {}, { says: 'It may touch.' }, 'wording'],
    ['what to do', {}, { do: 'Go on.' }, 'wording'],
    ['where it comes from', {}, { source: { kind: 'memory' } }, 'source'],
    ['the values it rests on', {}, { rules: ['flue.gap'] }, 'source'],
    ['words and source at once', {}, { says: 'x', source: { kind: 'memory' } }, 'wording'],
    ['a stop of an agency that goes', { beside: [beside('stop')] }, {}, 'looser'],
    ['one that comes beside it', {}, { beside: [beside('note')] }, 'stricter'],
    ['one that says less', { beside: [beside('stop')] }, { beside: [beside('warn')] }, 'looser'],
    [
      'one of two agencies that goes, while the other says more',
      { beside: [beside('note'), beside('note', 'Ring.', 'Mill')] },
      { beside: [beside('stop')] },
      'looser',
    ],
    ['its words alone', { beside: [beside('stop')] }, { beside: [beside('stop', 'Ring.')] }, 'wording'],
  ])('%s', (_, before, after, kind) => {
    const [from, to] = [before && caution(before), after && caution(after)];
    expect(diffCautions(book(from), book(to))[0]?.kind).toBe(kind);
  });
});

describe('of a caution each part that differs is shown, as it was and as it is', () => {
  const parts = (before: LoadedCaution | undefined, after: LoadedCaution | undefined, widths = [2, 2]) =>
    cautionParts({ before, after }, [book(before, widths[0]), book(after, widths[1])]).map(
      ({ part, before: was, after: is }) => [part, was, is],
    );
  test.each<[what: string, told: string[][], expected: string[][]]>([
    ['nothing', parts(caution(), caution()), []],
    // The value itself is told among the values.
    ['nothing, where only its value is another', parts(caution(), caution(), [2, 3]), []],
    [
      'a level, in words',
      parts(caution({ level: 'stop' }), caution({ level: 'note' })),
      [['Level', 'a stop', 'a note']],
    ],
    [
      'words, with the values of either rulebook',
      parts(caution(), caution({ do: 'Stay {flue.gap} off.' }), [2, 3]),
      [['What to do', 'Keep 2 in off.', 'Stay 3 in off.']],
    ],
    [
      'another rule of the same value, as it is written',
      parts(caution(), caution({ do: 'Keep {flue.other} off.' })),
      [['What to do', 'Keep {flue.gap} off.', 'Keep {flue.other} off.']],
    ],
    [
      'one that goes, whole',
      parts(caution(), undefined),
      [
        ['Level', 'a warning', 'not there'],
        ['It says', 'It is hot.', 'not there'],
        ['What to do', 'Keep 2 in off.', 'not there'],
      ],
    ],
    [
      'source and values',
      parts(caution(), caution({ source: { kind: 'memory', remark: 'Ask.' }, rules: ['flue.gap'] })),
      [
        ['Source', 'common practice, no source', 'from memory, not checked'],
        ['Remark', 'none', 'Ask.'],
        ['Values it rests on', 'none', 'flue.gap'],
      ],
    ],
    [
      'what an agency says beside it',
      parts(caution(), caution({ beside: [beside('stop')] })),
      [['Beside', 'none', 'Harrow, a stop: Ring us. Wait. (practice)']],
    ],
  ])('%s', (_, told, expected) => expect(told).toEqual(expected));

  test('no row of a published step shows the same before and now, and none shows nothing', () => {
    const steps = changesByVersion(data, releases);
    expect(steps.some(({ cautions }) => cautions.length > 0)).toBe(true);
    for (const { cautions } of steps)
      for (const { id, parts: told } of cautions) {
        expect(told, id).not.toEqual([]);
        for (const { part, before, after } of told) expect(after, `${id}, ${part}`).not.toBe(before);
      }
  });
});

describe('beside what was published', () => {
  const written = (level: string, says = 'It is hot.') =>
    `b: { level: ${level}, says: ${says}, do: Keep off., source: { kind: practice } }\n`;
  /** A folder of some version whose one caution is as given; 2026.1 was published with it as a stop. */
  const told = (version: string, cautions: string, reasons = '[]\n') =>
    problemsOf({
      'rulebook.yaml': `version: "${version}"\n`,
      'cautions/a.yaml': cautions,
      'reasons.yaml': reasons,
      'releases/2026.1.json': published,
    }).map(formatProblem);
  const published = rulebookJson({
    ...data,
    version: '2026.1',
    rules: {},
    documents: {},
    cautions: { 'caution.a.b': caution({ level: 'stop', do: 'Keep off.' }) },
  });
  const reason = (version: string) =>
    `- { rule: caution.a.b, version: "${version}", reason: It was never that grave. }\n`;

  test.each(['2026.1', '2026.2'])('the same caution is sound as %s', (version) =>
    expect(told(version, written('stop'))).toEqual([]),
  );

  test.each([
    ['lower level', written('note'), 'caution.a.b'],
    ['other words', written('stop', 'It may touch.'), 'caution.a.b'],
    ['other source', written('stop').replace('practice', 'memory'), 'caution.a.b'],
    ['caution more', `${written('stop')}${written('note').replace('b:', 'c:')}`, 'caution.a.c'],
    ['caution less', '{}\n', 'caution.a.b'],
  ])('a published version bears no %s', (_, cautions, id) =>
    expect(told('2026.1', cautions)).toEqual([
      `rulebook.yaml:1:10  found version 2026.1, which was published with another ${id}  expected a version of its own for what is changed  (published-version)`,
    ]),
  );

  test.each([
    ['a higher level needs no reason', written('stop'), '[]\n'],
    ['other words need none: they are told', written('stop', 'It may touch.'), '[]\n'],
    ['a lower level passes with its reason', written('warn'), reason('2026.2')],
    ['one that goes passes with its reason', written('stop').replace('b:', 'c:'), reason('2026.2')],
  ])('%s', (_, cautions, reasons) => expect(told('2026.2', cautions, reasons)).toEqual([]));

  test.each([
    [
      'a lower level stops at its line',
      written('note'),
      '[]\n',
      'cautions/a.yaml:1:13  found a note, which was a stop in 2026.1  expected a reason for 2026.2 in reasons.yaml  (safety-without-reason)',
    ],
    [
      'and with a reason that was given for another version',
      written('note'),
      reason('2026.3'),
      'cautions/a.yaml:1:13  found a note, which was a stop in 2026.1  expected a reason for 2026.2 in reasons.yaml  (safety-without-reason)',
    ],
    [
      'one that is gone stops',
      written('stop').replace('b:', 'c:'),
      '[]\n',
      'rulebook.yaml:1:10  found no caution caution.a.b, which 2026.1 had  expected it to stay, or a reason for 2026.2 in reasons.yaml  (safety-without-reason)',
    ],
  ])('%s', (_, cautions, reasons, problem) => expect(told('2026.2', cautions, reasons)).toEqual([problem]));
});
