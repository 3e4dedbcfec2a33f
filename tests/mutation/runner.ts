import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import fc from 'fast-check';
import { type Collected, collectFrom } from './collect.ts';
import { importersOf, load, loadAfresh } from './modules.ts';
import { isAsked, leftOutGroups, testsOf } from './tests.ts';

/** What Stryker's instrumented code and its test runners share. */
interface Shared {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number | undefined;
  mutantCoverage?: Coverage;
}
type Hits = Record<string, number>;
interface Coverage {
  static: Hits;
  perTest: Record<string, Hits>;
}
interface MutantRun {
  readonly activeMutant: { readonly id: string };
  readonly sandboxFileName: string;
  readonly testFilter?: readonly string[];
  readonly hitLimit?: number;
  readonly mutantActivation: 'runtime' | 'static';
}

const shared: Shared = {};
Object.assign(globalThis, { __stryker__: shared });

/** A counterexample is enough: nobody reads the smallest one. Random cases begin from a fixed number, so that two runs kill the same mutants. */
fc.configureGlobal({ endOnFailure: true, seed: 20_260_101 });

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name));

const mutated = process.env.MUTATION_FOLDER ?? '';
const testFiles = testsOf(mutated);

const collect = async (file: string): Promise<readonly Collected[]> =>
  (await collectFrom(file, leftOutGroups, () => load(file))).filter(isAsked);

/** What was found where nothing was changed, for the processes that did not run the tests so. */
interface Unchanged {
  /** How long each test takes, in ms. */
  readonly took: Readonly<Record<string, number>>;
  /** The mutants that are met as the files load. */
  readonly loading: readonly string[];
}
const unchangedFile = `${process.env.MUTATION_TOOLS}/unchanged-${mutated.replaceAll('/', '-')}.json`;

const related = (file: string): string[] => {
  const importers = importersOf(file);
  return testFiles.filter((each) => importers.has(each));
};

/** Runs one test; what it throws, undefined where it holds. */
async function failureOf(test: Collected): Promise<string | undefined> {
  shared.currentTestId = test.id;
  try {
    await test.run();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  } finally {
    shared.currentTestId = undefined;
  }
}

/** The folders that can’t use a file, since arrows point one way: they need not be loaded again. */
function below(file: string): readonly string[] {
  const order = ['src/quantity/', 'src/rulebook/', 'src/calc/', 'src/job/', 'src/drawings/'];
  return order.slice(
    0,
    Math.max(
      0,
      order.findIndex((folder) => file.startsWith(folder)),
    ),
  );
}

export class Runner {
  readonly #tests = new Map<string, Collected>();
  #unchanged: Unchanged | undefined;

  /** All is loaded before any test runs, so that what a module does as it loads is never taken for a test's doing. */
  async init(): Promise<void> {
    shared.activeMutant = undefined;
    for (const file of filesBelow(mutated)) if (/(?<!\.d)\.ts$/.test(file)) await load(file);
    for (const file of testFiles) for (const test of await collect(file)) this.#tests.set(test.id, test);
  }

  async dryRun({ files = [] }: { readonly files?: readonly string[] }) {
    const wanted = new Set(files.flatMap((file) => related(relative(process.cwd(), file))));
    const tests = [];
    for (const test of this.#tests.values()) {
      if (!wanted.has(test.file)) continue;
      const began = performance.now();
      const failureMessage = await failureOf(test);
      const timeSpentMs = performance.now() - began;
      const { id, file: fileName, title: name } = test;
      tests.push({
        id,
        name,
        fileName,
        timeSpentMs,
        ...(failureMessage === undefined ? { status: 0 } : { status: 1, failureMessage }),
      });
    }
    const took = Object.fromEntries(tests.map(({ id, timeSpentMs }) => [id, timeSpentMs]));
    const loading = Object.keys(shared.mutantCoverage?.static ?? {});
    writeFileSync(unchangedFile, JSON.stringify({ took, loading } satisfies Unchanged));
    return { status: 'complete', tests, mutantCoverage: coverage() };
  }

  mutantRun(run: MutantRun) {
    return run.mutantActivation === 'static' ? this.#loadedWith(run) : this.#switchedOn(run);
  }

  /** A mutant in what runs: all stays loaded, the quick tests first. Some tables of tests work out their rows as they load. */
  async #switchedOn(run: MutantRun) {
    this.#unchanged ??= JSON.parse(readFileSync(unchangedFile, 'utf8')) as Unchanged;
    const { took, loading } = this.#unchanged;
    const tests = (run.testFilter ?? []).flatMap((id) => this.#tests.get(id) ?? []);
    tests.sort((a, b) => (took[a.id] ?? 0) - (took[b.id] ?? 0));
    activate(run.activeMutant.id, run.hitLimit);
    const result = await this.#judged(tests);
    return result.status === 'survived' && loading.includes(run.activeMutant.id)
      ? this.#loadedWith(run)
      : result;
  }

  /** A mutant in what a module does as it loads: its tests are loaded again with the mutant in place. */
  async #loadedWith({ activeMutant, sandboxFileName, hitLimit }: MutantRun) {
    const file = relative(process.cwd(), sandboxFileName);
    loadAfresh(below(file));
    activate(activeMutant.id, hitLimit);
    const files = related(file);
    let nrOfTests = 0;
    for (const each of files) {
      try {
        const tests = await collect(each);
        const result = await this.#judged(tests, nrOfTests, false);
        if (result.status !== 'survived') return deactivated(result);
        nrOfTests += tests.length;
      } catch (error) {
        const killedBy = [...this.#tests.values()].filter((test) => test.file === each).map(({ id }) => id);
        return deactivated({
          status: 'killed',
          killedBy: killedBy.slice(0, 1),
          failureMessage: String(error),
          nrOfTests,
        });
      }
    }
    return deactivated({ status: 'survived', nrOfTests });
  }

  async #judged(tests: readonly Collected[], before = 0, last = true) {
    let nrOfTests = before;
    for (const test of tests) {
      nrOfTests += 1;
      const failureMessage = await failureOf(test);
      const tooOften = (shared.hitCount ?? 0) > (shared.hitLimit ?? Number.POSITIVE_INFINITY);
      if (tooOften) return deactivated({ status: 'timeout', reason: 'it never ends' });
      if (failureMessage !== undefined)
        return deactivated({ status: 'killed', killedBy: [test.id], failureMessage, nrOfTests });
    }
    return last ? deactivated({ status: 'survived', nrOfTests }) : { status: 'survived', nrOfTests };
  }
}

/** Stryker lets a mutant be met a hundred times as often as where nothing was changed; ten times is plenty. */
const EASED = 10;

function activate(id: string, hitLimit: number | undefined): void {
  shared.activeMutant = id;
  shared.hitCount = 0;
  shared.hitLimit = hitLimit === undefined ? undefined : Math.max(1000, hitLimit / EASED);
}

function deactivated<Result>(result: Result): Result {
  shared.activeMutant = undefined;
  shared.hitCount = undefined;
  shared.hitLimit = undefined;
  return result;
}

/** What runs both while files load and in tests is tried in the tests first, with all still loaded. */
function coverage(): Coverage {
  const { static: loading = {}, perTest = {} } = shared.mutantCoverage ?? {};
  const inTests = new Set(Object.values(perTest).flatMap((hits) => Object.keys(hits)));
  return { static: Object.fromEntries(Object.entries(loading).filter(([id]) => !inTests.has(id))), perTest };
}
