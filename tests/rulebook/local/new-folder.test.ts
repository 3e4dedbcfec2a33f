import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { EXAMPLE } from './folder.ts';

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly said: string;
}

const node = (script: string, args: readonly string[], typed = '', env = {}): Promise<Ended> =>
  new Promise((ended) => {
    const child = execFile(
      process.execPath,
      [script, ...args],
      { env: { ...process.env, ...env } },
      (error, out, said) => ended({ code: error === null ? 0 : Number(error.code ?? 1), out, said }),
    );
    child.stdin?.end(typed);
  });
const begin = (args: readonly string[], typed?: string) => node('src/cli/local-new.ts', args, typed);
const check = (folder: string) => node('src/cli/local-check.ts', [folder]);

describe('a new folder', () => {
  let place: string;
  beforeAll(() => {
    place = mkdtempSync(join(tmpdir(), 'new-'));
  });
  afterAll(() => rmSync(place, { recursive: true }));

  test('is written from what is typed, line by line, and passes as it is', async () => {
    const folder = join(place, 'typed');
    const made = await begin(
      [],
      ['The "Valley": Homes', 'Valley', 'valley', 'Call.', 'Here.', 'Us.', folder, ''].join('\n'),
    );
    expect(made).toMatchObject({ code: 0, said: '' });
    expect(await check(folder)).toMatchObject({ code: 0, said: '' });
    expect(readFileSync(join(folder, 'agency.yaml'), 'utf8')).toContain(
      '# Who answers questions about these notes.',
    );
  });

  test('passes with every example in it made to count', async () => {
    const folder = join(place, 'flags');
    const given = { name: 'A', short: 'B', id: 'c', contact: 'd', area: 'e', answers: 'f', folder };
    expect((await begin(Object.entries(given).flatMap(([name, text]) => [`--${name}`, text]))).code).toBe(0);
    for (const name of ['values', 'notes', 'cautions', 'sources']) {
      const file = join(folder, `${name}.yaml`);
      // What stands before the empty line is words; the example comes after it, its own remarks further in.
      const lines = readFileSync(file, 'utf8').split('\n');
      const start = lines.lastIndexOf('#') + 1;
      const example = lines.slice(start).map((line) => line.replace(/^# /, ''));
      writeFileSync(file, [...lines.slice(0, start), ...example].join('\n'));
    }
    const told = await check(folder);
    expect(told.said).toBe('');
    expect(told.out).toContain('1 value, 1 note, 1 caution, 1 page');
  });

  test('a question whose answer can not be taken is asked once more, and no answer is lost', async () => {
    const folder = join(place, 'our notes');
    const typed = ['A', 'B', 'Not An Id', 'c', 'd', 'e', 'f', '', place, folder, ''];
    const made = await begin([], typed.join('\n'));
    expect(made).toMatchObject({ code: 0, said: '' });
    for (const told of [
      'found "Not An Id", expected a short name in small letters, such as harrow-valley. Once more.',
      'found no folder, expected one, such as ../our-notes. Once more.',
      `found "${place}" there already, expected a folder that is new. Once more.`,
      // What is to be pasted holds a space: the shell must take it for one word.
      `npm run --silent local:check '${folder}'\n`,
      `LOCAL='${folder}' npm start\n`,
    ])
      expect(made.out).toContain(told);
    expect(readFileSync(join(folder, 'agency.yaml'), 'utf8')).toContain('id: "c"');
  });

  test('~ is the home folder', async () => {
    const made = await node(
      'src/cli/local-new.ts',
      [],
      ['A', 'B', 'c', 'd', 'e', 'f', '~/notes', ''].join('\n'),
      { HOME: place, USERPROFILE: place },
    );
    expect(made).toMatchObject({ code: 0, said: '' });
    expect(existsSync(join(place, 'notes', 'agency.yaml'))).toBe(true);
    expect(made.out).toContain(join(place, 'notes'));
  });

  test('is not written over one that is there', async () => {
    expect(await begin(['--folder', place, '--name', 'x'], '')).toMatchObject({ code: 2 });
  });

  test('is not written from answers that are no answers', async () => {
    const folder = join(place, 'none');
    const given = [
      '--name',
      '',
      '--short',
      's',
      '--id',
      '../x',
      '--contact',
      'c',
      '--area',
      'a',
      '--answers',
      'w',
    ];
    const ended = await begin([...given, '--folder', folder]);
    expect(ended.code).toBe(2);
    expect(ended.said).toMatch(/^found answers that can not be taken: .*id: a short name/);
    expect(existsSync(folder)).toBe(false);
  });

  test('that is not there is told in a line', async () => {
    const ended = await check(join(place, 'nowhere'));
    expect(ended.code).toBe(2);
    expect(ended.said).toMatch(/^found no folder ".*nowhere", expected one that npm run local:new wrote/);
  });
});

describe('with LOCAL set', () => {
  const env = { LOCAL: EXAMPLE };
  test('the command line calculates with what holds here, and says so', async () => {
    const { out } = await node('src/cli/calc.ts', ['patch-layers'], '', env);
    expect(JSON.parse(out)).toMatchObject({
      rulebook: expect.stringContaining('+ Harrow Valley 2026-10-01'),
    });
  });
  test('the checks hold the rulebook as it was published', async () => {
    expect(await node('src/cli/checks.ts', [], '', env)).toMatchObject({ code: 0, said: '' });
  });
});
