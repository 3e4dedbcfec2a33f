import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { type Resolved, resolveLocal } from '../../../src/rulebook/local/resolve.ts';
import { loadProject, notablePages } from '../../../src/rulebook/project.ts';

export const EXAMPLE = 'rules/local/harrow-valley';

/** Everything of a value frozen, however deep: what then changes it throws. */
function frozen<T>(value: T): T {
  if (value !== null && typeof value === 'object' && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const each of Object.values(value)) frozen(each);
  }
  return value;
}

export const base = frozen(loadProject('let pass', []).base);

const pages = notablePages();
export const context = { releases: [], today: '2026-11-25', pages };

/** An agency's folder of these files, handed over and taken away again. Where `agency.yaml` is not given it is sound. */
export function inLayer<T>(
  files: Readonly<Record<string, string | Uint8Array>>,
  use: (folder: string) => T,
  from?: string,
): T {
  const folder = mkdtempSync(join(tmpdir(), 'local-'));
  try {
    if (from) cpSync(from, folder, { recursive: true });
    for (const [name, text] of Object.entries({ ...(from ? {} : { 'agency.yaml': agency() }), ...files })) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    return use(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export const agency = (id = 'a-valley', basedOn = `"${base.version}"`, short = 'Valley'): string =>
  [
    `id: ${id}`,
    'name: A valley',
    `short: ${short}`,
    'contact: The desk.',
    'area: The valley.',
    'answers: The lead.',
    'version: 2026-10-01',
    `based_on: ${basedOn}`,
    '',
  ].join('\n');

export const setting = (id: string, value: string, source = '{ kind: practice }'): string =>
  `${id}:\n  value: ${value}\n  reason: It is so here.\n  source: ${source}\n`;

/** What a folder of these files resolves to; files in problems are named from inside the folder. */
export const resolved = (files: Readonly<Record<string, string | Uint8Array>>, more = context): Resolved =>
  inLayer(files, (folder) => {
    const found = resolveLocal(base, [readLayer(folder)], more);
    const inside = `${relative(process.cwd(), folder)}/`;
    return {
      ...found,
      problems: found.problems.map((each) => ({ ...each, file: each.file.replace(inside, '') })),
    };
  });
