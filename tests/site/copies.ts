import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { filesIn } from '../../src/built/files.ts';

/** A few pages are enough to try one version against another; the rest would only be fetched. */
const LEFT_OUT = new RegExp(
  `^dist/(${[
    'copy|pagefind|cautions|checks|know|safety|sources|train|trouble|hosting|recheck|licences',
    'rules/(?!access\\.roof-holes\\.diameter)',
    'calculators/(?!index|patch-kit)',
    'do/(?!index|patching|filling-through-roof-holes)',
    'cards/(?!index|patching)',
  ].join('|')})\\b`,
);

/** Versions of a small site, each made from the built one, its worker written anew. */
export class Versions {
  readonly #at = mkdtempSync(join(tmpdir(), 'heel-to-ridge-versions-'));

  /** A folder that holds the site as changed by `edit`; what `after` does is done when the worker is written already. */
  make(
    name: string,
    edit: (folder: string) => void = () => {},
    after: (folder: string) => void = () => {},
  ): string {
    const folder = join(this.#at, name);
    cpSync('dist', folder, { recursive: true, filter: (from) => !LEFT_OUT.test(from.replaceAll('\\', '/')) });
    edit(folder);
    execFileSync(process.execPath, ['src/cli/copy-worker.ts', folder], {
      stdio: ['ignore', 'ignore', 'inherit'],
    });
    after(folder);
    return folder;
  }

  remove(): void {
    rmSync(this.#at, { recursive: true, force: true, maxRetries: 3 });
  }
}

/** Changes every file of a folder whose name fits; a change that changes nothing is a mistake of the test. */
export function change(folder: string, files: RegExp, from: string | RegExp, to: string): void {
  let changed = 0;
  for (const file of filesIn(folder).filter((each) => files.test(each))) {
    const text = readFileSync(join(folder, file), 'utf8');
    const next = text.replaceAll(from, to);
    if (next !== text) writeFileSync(join(folder, file), next);
    changed += next === text ? 0 : 1;
  }
  if (changed === 0) throw new Error(`found no ${from} in ${files}`);
}

/** Gives rules of the exported rulebook other numbers, and the rulebook another version. */
export function changeRulebook(
  folder: string,
  version: string,
  numbers: Readonly<Record<string, number>>,
): void {
  const file = join(folder, 'data/rulebook.json');
  const rulebook = JSON.parse(readFileSync(file, 'utf8'));
  for (const [id, number] of Object.entries(numbers)) rulebook.rules[id].value.number = number;
  writeFileSync(file, JSON.stringify({ ...rulebook, version }, null, 1));
  change(folder, /\.html$/, rulebook.version, version);
}
