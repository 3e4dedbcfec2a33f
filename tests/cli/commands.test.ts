import { execFile, spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly said: string;
}

/** Runs a command of the project as npm would. */
const command = (name: string, ...args: string[]): Promise<Ended> =>
  new Promise((resolve) => {
    execFile(
      process.execPath,
      [`src/cli/${name}.ts`, ...args],
      { maxBuffer: 2 ** 24 },
      (error, out, said) => {
        resolve({ code: typeof error?.code === 'number' ? error.code : 0, out, said: said.trim() });
      },
    );
  });

const folder = mkdtempSync(join(tmpdir(), 'commands-'));

/** A file in a folder of its own, with this text. */
function written(name: string, text: string): string {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
}

const example = readFileSync('public/example-job.json', 'utf8');

/** Each is the example job with one slip. */
const hostile: readonly [what: string, text: string, sentence: RegExp][] = [
  ['an unknown key', example.replace('"crew"', '"crw"'), /unknown key "crw"; expected "crew"/],
  [
    'a missing unit',
    example.replace('"66 ft"', '"66"'),
    /home\.length\): found "66", a number with no unit; expected a length/,
  ],
  [
    'an eave deeper than the ridge',
    example.replace('"eave": "3 in"', '"eave": "30 in"'),
    /30 in, deeper than the ridge at 15 in/,
  ],
];

describe('the job command', () => {
  test('works the example job into JSON with its holes', async () => {
    const { code, out } = await command('job', 'public/example-job.json');
    expect(code).toBe(0);
    // 66 ft takes five holes: four reach 8 + 3 × 16 + 8 = 64 ft at most.
    expect(JSON.parse(out).rows[0].holes).toHaveLength(5);
  });

  test('works it into a sheet of text, with what was entered', async () => {
    const { out } = await command('job', 'public/example-job.json', '--text');
    expect(out).toContain('CEILING: carries it');
    expect(out).toContain('Width across the cavity: 13 ft 10 in');
  });

  test.each(hostile)(
    'ends at %s with one clear sentence, exit code 2 and nothing half worked',
    async (what, text, sentence) => {
      const { code, out, said } = await command('job', written(`${what}.json`, text));
      expect(code).toBe(2);
      expect(out).toBe('');
      expect(said.split('\n')).toHaveLength(1);
      expect(said).toMatch(sentence);
    },
  );

  // The rule that the browser keeps: a home typed over the example was not looked at because the example was.
  test('of a home typed over the example counts its survey as not looked at, and says what is still the example’s', async () => {
    const other = written('other home.json', example.replace(/"name": "[^"]*"/, '"name": "Lot 8"'));
    const { code, out, said } = await command('job', other, '--text');
    expect(code).toBe(0);
    expect(said).toContain('still the example’s: the survey, ');
    expect(out).toContain('Something here has not been looked at');
    expect((await command('job', 'public/example-job.json', '--text')).said).toBe('');
  });

  test('tells an unknown key and a missing unit together, a line each', async () => {
    const text = example.replace('"crew"', '"crw"').replace('"66 ft"', '"66"');
    const { code, said } = await command('job', written('two slips.json', text));
    expect(code).toBe(2);
    expect(said.split('\n')).toEqual([
      expect.stringContaining('unknown key "crw"'),
      expect.stringContaining('a number with no unit'),
    ]);
  });
});

describe('the calc command', () => {
  test('lists every calculation', async () => {
    expect((await command('calc', '--list')).out).toContain('ceiling-load: Will the ceiling carry');
  });

  test('names the nearest to an unknown calculation', async () => {
    expect(await command('calc', 'ceiling-lod')).toMatchObject({
      code: 2,
      out: '',
      said: expect.stringContaining('"ceiling-load"'),
    });
  });
});

describe('a reader that leaves early', () => {
  /** Runs a command whose output is closed after its first piece, or before it, as `head` and `true` do. */
  const leaving = (when: 'at once' | 'after a piece', ...[name, ...args]: readonly string[]) =>
    new Promise<Pick<Ended, 'code' | 'said'>>((resolve) => {
      const running = spawn(process.execPath, [`src/cli/${name}.ts`, ...args]);
      let said = '';
      running.stderr.on('data', (piece) => {
        said += piece;
      });
      if (when === 'at once') running.stdout.destroy();
      else running.stdout.once('data', () => running.stdout.destroy());
      running.on('close', (code) => resolve({ code: code ?? -1, said }));
    });

  test.each<[what: string, when: 'at once' | 'after a piece', code: number, args: string[]]>([
    ['a record', 'after a piece', 0, ['job', 'public/example-job.json', '--record']],
    ['a sheet', 'at once', 0, ['job', 'public/example-job.json', '--text']],
    ['a list', 'at once', 0, ['calc', '--list']],
    ['what differs', 'after a piece', 0, ['rules-diff', '2026.1', '2026.3']],
    ['help', 'at once', 0, ['rules-check', '--help']],
  ])('of %s, %s, ends it without a word, and with its own code', async (_, when, code, args) => {
    expect(await leaving(when, ...args)).toEqual({ code, said: '' });
  });
});

describe('the rules:diff command', () => {
  test('names the value that moved, whether it is looser, and every calculator and page it touches', async () => {
    const moved = mkdtempSync(join(tmpdir(), 'moved-'));
    cpSync('rules', moved, { recursive: true });
    const file = join(moved, 'access/roof-holes.yaml');
    const hole = 'symbol: dh\n  value: { kind: exact, number: 6,';
    writeFileSync(file, readFileSync(file, 'utf8').replace(hole, hole.replace('6', '7')));
    const { code, out } = await command('rules-diff', 'now', moved);
    expect(code).toBe(0);
    // The hole, and what follows from it: the cap is as wide, the metal patch reaches past it.
    expect(out).toContain('access.roof-holes.diameter');
    expect(out).toContain('6 in -> 7 in');
    // What a reader finds by looking: the page that says how a hole is cut, and the patch that covers it.
    expect(out).toContain('touches page: do/cutting-and-guarding-the-hole');
    expect(out).toMatch(/touches calculator: /);
  });

  test('shows a caution before and now, and what kind of change it is', async () => {
    const moved = mkdtempSync(join(tmpdir(), 'moved-'));
    cpSync('rules', moved, { recursive: true });
    const file = join(moved, 'cautions/before.yaml');
    const stop = 'seal-first:\n  level: stop';
    writeFileSync(file, readFileSync(file, 'utf8').replace(stop, stop.replace('stop', 'note')));
    const { code, out } = await command('rules-diff', 'now', moved);
    expect(code).toBe(0);
    expect(out).toContain('0 rules differ, 1 caution differs');
    expect(out).toContain('looser  caution.before.seal-first');
    expect(out).toContain('Level: a stop -> a note');
  });
});

describe('the rules:diff command, given what is no rulebook', () => {
  test.each([
    [
      'an agency’s folder',
      'rules/local/harrow-valley',
      "an agency's folder, expected a folder with the files of a whole rulebook",
    ],
    ['no file', 'nowhere', 'expected now, a published version (2026.1'],
  ])('%s ends it with one sentence and exit code 2', async (_, word, sentence) => {
    const { code, out, said } = await command('rules-diff', 'now', word);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(said.split('\n')).toHaveLength(1);
    expect(said).toContain(sentence);
  });
});

describe('the checks command', () => {
  const check = (total: string) => `- title: Thirteen inches at three pounds a cubic foot
  calculation: ceiling-load
  given: { board: gypsum 1/2 in, framing: 16 in, depth: 13 in, density: 3 lb/ft3 }
  expect: { total: ${total} }
  from: { kind: hand, working: 13 / 12 x 3 = 3.25 }
`;
  test('passes a folder whose figures hold', async () => {
    const own = mkdtempSync(join(tmpdir(), 'holds-'));
    writeFileSync(join(own, 'own.yaml'), check('3.25 lb/ft2'));
    expect(await command('checks', '--dir', own)).toMatchObject({
      code: 0,
      out: expect.stringContaining('1 passed, 0 failed'),
    });
  });

  test('ends with exit code 1 and found / expected where one does not', async () => {
    const own = mkdtempSync(join(tmpdir(), 'fails-'));
    writeFileSync(join(own, 'own.yaml'), check('3.3 lb/ft2'));
    const { code, out } = await command('checks', '--dir', own);
    expect(code).toBe(1);
    expect(out).toContain('total: found 3.25 lb/ft², expected 3.3 lb/ft2');
  });
});

/** The commands of the project, by their scripts in package.json. */
const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> };
const commands = Object.entries(scripts).flatMap(([script, line]) => {
  const [, name] = /^node src\/cli\/([a-z-]+)\.ts$/.exec(line) ?? [];
  return name === undefined ? [] : [{ script, name }];
});

describe('every command', () => {
  test('is found in package.json', () => {
    const running = readdirSync('src/cli').filter((file) =>
      readFileSync(join('src/cli', file), 'utf8').includes('await run('),
    );
    expect(commands.map(({ name }) => `${name}.ts`).sort()).toEqual(running.sort());
  });

  test.each(commands)(
    '$script asked with --help says what it does in a sentence, and its options',
    async ({ script, name }) => {
      // In this process: to begin twenty others took as long as all the commands that are really run.
      const log = vi.spyOn(console, 'log').mockReturnValue();
      const { argv } = process;
      process.argv = [process.execPath, `src/cli/${name}.ts`, '--help'];
      await import(`../../src/cli/${name}.ts`);
      process.argv = argv;
      const out = log.mock.calls.join('\n');
      log.mockRestore();
      const [does = '', , how = ''] = out.split('\n');
      expect(does).toMatch(/^[A-Z].*\w\.$/);
      expect(how).toMatch(new RegExp(`^ {2}npm (run (--silent )?)?${script}\\b`));
      // Every option of the line above is told below it.
      for (const [option] of how.matchAll(/--[a-z][a-z-]*(?=[ \]]|$)(?! npm)/g))
        if (option !== '--silent') expect(out).toMatch(new RegExp(`^ {2}${option}\\b.{3,}$`, 'm'));
      expect(out).toMatch(/^ {2}--help /m);
    },
  );

  test.concurrent.each<[what: string, name: string, args: string[], said: string]>([
    ['an option that it has not', 'rules-check', ['--all'], 'found the option --all, expected --help'],
    [
      'an option a letter wrong',
      'start',
      ['--prot', '4000'],
      'found the option --prot, expected --port, --built, --help; did you mean --port?',
    ],
    ['an option in short', 'start', ['-p', '4000'], 'found the option -p, expected --port, --built, --help'],
    ['an option without what it takes', 'start', ['--port'], 'found --port alone, expected --port NUMBER'],
    [
      'an option in place of what one takes',
      'start',
      ['--port', '--built'],
      'found --port alone, expected --port NUMBER',
    ],
    [
      'a wish for help in place of a folder',
      'checks',
      ['--dir', '--help'],
      'found --dir alone, expected --dir FOLDER',
    ],
    [
      'a name beside the wish for all names',
      'calc',
      ['roof-heat', '--list'],
      'found --list with "roof-heat", expected --list alone',
    ],
    [
      'a port that is none',
      'start',
      ['--port', 'x'],
      'found --port x, expected a whole number from 1 to 65535',
    ],
    [
      'an option with more than it takes',
      'start',
      ['--built=no'],
      'found --built with "no", expected --built alone',
    ],
    [
      'words where it takes none',
      'start',
      ['now'],
      'found "now", expected npm start [-- [--port NUMBER] [--built]]',
    ],
    [
      'nothing where it needs a name, or the wish for all names',
      'calc',
      [],
      'found nothing, expected npm run --silent calc -- NAME field=value ... | --list',
    ],
    [
      'a field twice',
      'calc',
      ['fall-protection', 'height=9 ft', 'rise=3 in', 'width=14 ft', 'roofing_work=yes', 'height=3 ft'],
      'height: found it given twice, expected it once',
    ],
    [
      'a folder that is not there',
      'local-check',
      ['/nope'],
      'found no folder "/nope", expected one that npm run local:new wrote',
    ],
    ['nothing where it needs a file', 'job', [], 'found nothing, expected npm run --silent job -- FILE.json'],
  ])('given %s, %s ends at once with a sentence', async (_, name, args, expected) => {
    const { code, out, said } = await command(name, ...args);
    expect([code, out]).toEqual([2, '']);
    expect(said).toContain(expected);
    expect(said.split('\n')).toHaveLength(1);
  });
});

describe('the local:check command', () => {
  test('tells dead links and pages that lie in the wrong place, with file and line', async () => {
    const own = mkdtempSync(join(tmpdir(), 'notes-'));
    cpSync('rules/local/harrow-valley', own, { recursive: true });
    const head = '---\ntitle: Ours\nsummary: What is ours.\n---\n\n';
    writeFileSync(join(own, 'pages/ours.mdx'), `${head}See [how to patch](/do/patchin/).\n`);
    const sound = await command('local-check', 'rules/local/harrow-valley');
    // Nothing is counted as "1 cautions".
    expect(sound.out).not.toMatch(/\b1 \w+s\b/);
    expect(sound.out).not.toContain('no entry');
    const dead = await command('local-check', own);
    expect(dead).toMatchObject({ code: 1, out: '' });
    expect(dead.said).toMatch(
      /pages\/ours\.mdx:6:5 {2}found the link "\/do\/patchin\/" {2}expected .*did you mean "\/do\/patching\/"\? {2}\(broken-link\)$/,
    );
    writeFileSync(join(own, 'ours.mdx'), head);
    const stray = await command('local-check', own);
    expect(stray).toMatchObject({ code: 1, out: '' });
    expect(stray.said).toMatch(
      /ours\.mdx:1:1 {2}found a page that is not read {2}expected it in the folder pages/,
    );
  });

  test('tells files in which no entry stands, emptied or behind marks, and passes', async () => {
    const own = mkdtempSync(join(tmpdir(), 'notes-'));
    cpSync('rules/local/harrow-valley', own, { recursive: true });
    writeFileSync(join(own, 'values.yaml'), '');
    writeFileSync(join(own, 'cautions.yaml'), '# river-fog:\n#   level: warn\n');
    const { code, out } = await command('local-check', own);
    expect(code).toBe(0);
    expect(out).toContain(`${own}: found no entry in values.yaml, cautions.yaml;`);
    expect(out).toMatch(/: 0 values, 3 notes, 0 cautions, /);
  });
});

describe('scripts:join', () => {
  /** A site with two calculators, of seven parts and of two, that share one of them; one part of each is asked for only as it runs. */
  const site = (): string => {
    const at = mkdtempSync(join(tmpdir(), 'site-'));
    for (const name of ['_astro', 'calculators/many', 'calculators/few'])
      mkdirSync(join(at, name), { recursive: true });
    const parts = ['b', 'c', 'd', 'e', 'f', 'shared'];
    const scripts: Readonly<Record<string, string>> = {
      page: 'export const page=()=>console.log("page")',
      later: 'console.log("later")',
      ...Object.fromEntries(parts.map((name) => [name, `export default()=>console.log("${name}")`])),
      many: `import{page}from"./page.js";${parts.map((name) => `import ${name} from"./${name}.js";${name}();`).join('')}page();`,
      few: 'import shared from"./shared.js";shared();import("./later.js")',
      unused: 'console.log("unused")',
    };
    for (const [name, code] of Object.entries(scripts)) writeFileSync(join(at, `_astro/${name}.js`), code);
    const page = (up: string, ...names: string[]) =>
      names.map((name) => `<script type="module" src="${up}_astro/${name}.js"></script>`).join('');
    writeFileSync(join(at, 'index.html'), page('', 'page'));
    writeFileSync(join(at, 'calculators/many/index.html'), page('../../', 'page', 'many'));
    writeFileSync(join(at, 'calculators/few/index.html'), page('../../', 'page', 'few'));
    return at;
  };

  test('makes one script of seven parts, leaves two as they are, and takes away what no page asks for any more', async () => {
    const at = site();
    const few = readFileSync(join(at, 'calculators/few/index.html'), 'utf8');
    expect(await command('scripts-join', at)).toMatchObject({ code: 0, said: '' });
    const many = readFileSync(join(at, 'calculators/many/index.html'), 'utf8');
    const [, whole = ''] = /src="\.\.\/\.\.\/_astro\/(many\.[\w-]{8}\.js)"/.exec(many) ?? [];
    expect(many).toContain('src="../../_astro/page.js"');
    expect(readFileSync(join(at, 'calculators/few/index.html'), 'utf8')).toBe(few);
    expect(readdirSync(join(at, '_astro')).sort()).toEqual(
      ['few.js', 'later.js', whole, 'page.js', 'shared.js'].sort(),
    );
    const code = readFileSync(join(at, '_astro', whole), 'utf8');
    for (const part of ['b', 'c', 'd', 'e', 'f', 'shared'])
      expect(code).toMatch(new RegExp(`["'\`]${part}["'\`]`));
    // What is joined already stays as it is.
    expect(await command('scripts-join', at)).toMatchObject({ code: 0, said: '' });
    expect(readFileSync(join(at, 'calculators/many/index.html'), 'utf8')).toBe(many);
  });
});
