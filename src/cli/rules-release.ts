import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { rulebookJson } from '../rulebook/export/json.ts';
import { loadProject, rulesFolder } from '../rulebook/project.ts';
import { InputError, run } from './run.ts';

await run(() => {
  const { base: data } = loadProject('refused', []);
  const file = join(rulesFolder, 'releases', `${data.version}.json`);
  const text = rulebookJson(data);
  if (existsSync(file) && readFileSync(file, 'utf8') !== text)
    throw new InputError(
      `found rulebook ${data.version} published with other words, expected a new version in rules/rulebook.yaml`,
    );
  mkdirSync(join(rulesFolder, 'releases'), { recursive: true });
  writeFileSync(file, text);
  console.log(`rulebook ${data.version} is kept as published, in rules/releases`);
  return 0;
});
