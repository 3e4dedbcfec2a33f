import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** The rulebook is read once a run: the tests that load it are handed the same data, which nothing changes. */
const { loadProject: load, ...rest } = await import(`${process.cwd()}/src/rulebook/project.ts`);

const known = new Map<string, unknown>();

/** A process that is started after another finds what that one read; places in the files are left out. */
function read(given: readonly unknown[], key: string): unknown {
  const kept = join(process.cwd(), `project-${Buffer.from(key).toString('hex')}.json`);
  if (!existsSync(kept)) writeFileSync(kept, JSON.stringify(load(...given)));
  return JSON.parse(readFileSync(kept, 'utf8'));
}

export function loadProject(...given: readonly unknown[]): unknown {
  const key = JSON.stringify(given);
  if (!known.has(key)) known.set(key, read(given, key));
  return known.get(key);
}

export const { rulesFolder, referringFolders, localFolders, notablePages, today, withLocal } = rest;
