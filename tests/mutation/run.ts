import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { InputError, run } from '../../src/cli/run.ts';

/** The share of mutants that has to be noticed. */
const LEAST_NOTICED = 0.85;

const here = import.meta.dirname;
const tools = resolve('node_modules/.cache/mutation');

/** Its packages are many and only this needs them, so they are fetched the first time it runs, as its own lock file says. */
function install(): void {
  const lock = readFileSync(join(here, 'package-lock.json'), 'utf8');
  const done = join(tools, 'installed.json');
  if (existsSync(done) && readFileSync(done, 'utf8') === lock) return;
  mkdirSync(tools, { recursive: true });
  for (const name of ['package.json', 'package-lock.json']) cpSync(join(here, name), join(tools, name));
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], { cwd: tools, stdio: 'inherit' });
  if (status !== 0) throw new Error('the packages of the mutation run could not be installed');
  writeFileSync(done, lock);
}

/** The folders that mutants are made in, each by its name and what it holds. */
const folders: Readonly<Record<string, string>> = {
  quantity: 'src/quantity',
  ...Object.fromEntries(
    readdirSync('src/calc', { withFileTypes: true })
      .filter((each) => each.isDirectory())
      .map(({ name }) => [name, `src/calc/${name}`]),
  ),
  calc: 'src/calc',
  rulebook: 'src/rulebook',
  job: 'src/job',
  drawings: 'src/drawings',
};

/** What is asked for: a folder by its name, or one file of it, such as "job/fill-log.ts". */
interface Asked {
  /** As it was asked for. */
  readonly word: string;
  /** As its report is called. */
  readonly name: string;
  readonly folder: string;
  readonly file: string | undefined;
}

function askedFor(word: string): Asked {
  const [name = '', ...rest] = word.split('/');
  const [folder, file] = [folders[name], rest.length > 0 ? rest.join('/') : undefined];
  if (folder === undefined || !Object.hasOwn(folders, name))
    throw new InputError(`found ${word}, expected one of ${Object.keys(folders).join(', ')}`);
  if (file !== undefined && !existsSync(join(folder, file)))
    throw new InputError(`found ${word}, expected a file of ${folder}`);
  return { word, name: word.replaceAll('/', '-'), folder, file };
}

const optionsFor = ({ folder, file }: Asked, report: string, temporary: string) => ({
  mutate: [`${folder}/${file ?? (folder === 'src/calc' ? '*.ts' : '**/*.ts')}`, '!**/*.d.ts'],
  // Words that people read are proofread elsewhere; a changed word in a comparison is a changed comparison, which is tried.
  mutator: { excludedMutations: ['StringLiteral'] },
  testRunner: 'in-memory',
  plugins: [join(here, 'plugin.ts')],
  coverageAnalysis: 'perTest',
  concurrency: Number(process.env.MUTATION_AT_ONCE ?? 1),
  maxTestRunnerReuse: 400,
  // A mutant that never ends is mostly stopped by the count of its hits; this is for the rest, on a busy machine.
  timeoutMS: 30_000,
  dryRunTimeoutMinutes: 15,
  ignorePatterns: ['dist', '.astro', 'test-results', 'tests/site', 'tests/mutation', '.ci'],
  // Not below node_modules: node strips types only elsewhere.
  tempDirName: temporary,
  cleanTempDir: 'always',
  reporters: ['json', process.stdout.isTTY ? 'progress' : 'progress-append-only'],
  jsonReporter: { fileName: report },
  allowConsoleColors: false,
  checkers: [],
  // A file as it is written is held against what the generator writes.
  disableTypeChecks: false,
  logLevel: 'warn',
  warnings: { slow: false },
});

interface Mutant {
  readonly status: string;
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly location: Record<'start' | 'end', { readonly line: number; readonly column: number }>;
}
interface Report {
  readonly files: Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>;
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').slice(0, 100);

function replaced(source: string, { start, end }: Mutant['location']): string {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, at) => line.slice(at === 0 ? start.column - 1 : 0, at === last ? end.column - 1 : undefined))
    .join('\n');
}

interface Counted {
  readonly noticed: number;
  /** Of those noticed, the ones that never ended. */
  readonly endless: number;
  readonly all: number;
}

function mutantsOf(asked: Asked): Counted {
  const { word, name, folder } = asked;
  const report = join(tools, 'reports', `${name}.json`);
  const temporary = mkdtempSync(join(tmpdir(), 'heel-to-ridge-mutants-'));
  const options = join(temporary, 'options.json');
  writeFileSync(options, JSON.stringify(optionsFor(asked, report, join(temporary, 'copy'))));
  const program = join(tools, 'node_modules/@stryker-mutator/core/bin/stryker.js');
  const { status } = spawnSync(process.execPath, [program, 'run', options], {
    stdio: 'inherit',
    env: { ...process.env, MUTATION_TOOLS: tools, MUTATION_FOLDER: folder },
  });
  rmSync(temporary, { recursive: true, force: true });
  if (status !== 0) throw new Error(`the mutants of ${word} could not be tried`);
  const { files } = JSON.parse(readFileSync(report, 'utf8')) as Report;
  let [noticed, endless, all] = [0, 0, 0];
  for (const [file, { source, mutants }] of Object.entries(files))
    for (const mutant of mutants) {
      if (mutant.status === 'Timeout') endless += 1;
      if (['Killed', 'Timeout'].includes(mutant.status)) noticed += 1;
      else if (!['Survived', 'NoCoverage'].includes(mutant.status)) continue;
      else {
        const { line, column } = mutant.location.start;
        const found = oneLine(replaced(source, mutant.location));
        console.log(
          `  ${file}:${line}:${column} ${mutant.status === 'NoCoverage' ? 'never run' : mutant.mutatorName}: ${found} -> ${oneLine(mutant.replacement ?? '')}`,
        );
      }
      all += 1;
    }
  return { noticed, endless, all };
}

const told = (name: string, { noticed, endless, all }: Counted): string =>
  `${name}: ${noticed} of ${all} noticed, ${all === 0 ? 100 : ((100 * noticed) / all).toFixed(1)} %; ${endless} of them never ended`;

const COMMAND = {
  name: 'npm run code:mutate',
  does: 'Puts faults into the code on purpose, which takes hours, and lists those that no test notices.',
  given: '[FOLDER or FILE ..., such as quantity job/fill-log.ts]',
};

await run(COMMAND, ({ words }) => {
  const asked = (words.length > 0 ? words : Object.keys(folders)).map(askedFor);
  install();
  const sum = { noticed: 0, endless: 0, all: 0 };
  for (const each of asked) {
    const began = performance.now();
    const found = mutantsOf(each);
    sum.noticed += found.noticed;
    sum.endless += found.endless;
    sum.all += found.all;
    console.log(`${told(each.word, found)}; in ${Math.round((performance.now() - began) / 1000)} s`);
  }
  console.log(`${told('in all', sum)} (${100 * LEAST_NOTICED} % asked)`);
  return sum.noticed >= LEAST_NOTICED * sum.all ? 0 : 1;
});
