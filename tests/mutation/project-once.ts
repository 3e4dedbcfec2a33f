/** The rulebook is read once a process: the tests that load it are handed the same data, which nothing changes. */
const { loadProject: load, ...rest } = await import(`${process.cwd()}/src/rulebook/project.ts`);

const known = new Map<string, unknown>();

export function loadProject(...given: readonly unknown[]): unknown {
  const key = JSON.stringify(given);
  if (!known.has(key)) known.set(key, load(...given));
  return known.get(key);
}

export const { rulesFolder, referringFolders, localFolders, notablePages, today, withLocal } = rest;
