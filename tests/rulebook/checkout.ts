import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** Builds the site. */
export const ASTRO = 'node_modules/astro/bin/astro.mjs';
export const WHILE_IT_BUILDS = 180_000;

/** The file of the rules of holes, and what in it stands before the number of their diameter. */
export const HOLES = 'rules/access/roof-holes.yaml';
export const DIAMETER =
  'so that the hose passes and a lipped cap closes it.\n  symbol: dh\n  value: { kind: exact, number: ';

const copied = ['rules', 'content', 'src', 'public', 'astro.config.mjs', 'package.json', 'tsconfig.json'];

export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly said: string;
}

/** A copy of the project, to change a line of and see what follows. Its generated files are its own. */
export interface Checkout {
  /** Where it is. */
  readonly folder: string;
  /** Puts other text in the place of some that stands in a file just once; hands back what undoes it. */
  readonly change: (file: string, from: string, to: string) => () => void;
  readonly read: (file: string) => string;
  /** The names of all files in a folder of it. */
  readonly files: (folder: string) => readonly string[];
  /** Runs a script of it, from inside it. */
  readonly node: (script: string, ...args: string[]) => Promise<Ended>;
  readonly remove: () => void;
}

/** `more` is what its scripts find in their environment besides. */
export function checkout(more: Readonly<Record<string, string>> = {}): Checkout {
  const folder = mkdtempSync(join(tmpdir(), 'checkout-'));
  const generated = resolve('src/generated');
  for (const name of copied)
    cpSync(name, join(folder, name), { recursive: true, filter: (file) => resolve(file) !== generated });
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'));
  const read = (file: string): string => readFileSync(join(folder, file), 'utf8');
  return {
    folder,
    read,
    files: (name) => readdirSync(join(folder, name)),
    change: (file, from, to) => {
      const before = read(file);
      const times = before.split(from).length - 1;
      if (times !== 1) throw new Error(`found "${from}" ${times} times in ${file}, expected once`);
      writeFileSync(
        join(folder, file),
        before.replace(from, () => to),
      );
      return () => writeFileSync(join(folder, file), before);
    },
    node: (script, ...args) =>
      new Promise((ended) => {
        const fixed = { ASTRO_TELEMETRY_DISABLED: '1', NO_COLOR: '1', NODE_ENV: 'production' };
        const env = { ...process.env, ...fixed, ...more };
        execFile(process.execPath, [script, ...args], { cwd: folder, env }, (error, out, said) =>
          ended({ code: error === null ? 0 : Number(error.code ?? 1), out, said }),
        );
      }),
    remove: () => rmSync(folder, { recursive: true, maxRetries: 3 }),
  };
}
