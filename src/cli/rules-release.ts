import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runCheck } from '../calc/checks/run-check.ts';
import { rulebookJson } from '../rulebook/export/json.ts';
import { loadProject, rulesFolder } from '../rulebook/project.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import { InputError, run } from './run.ts';

await run(
  {
    name: 'npm run --silent rules:release',
    does: 'Keeps the rulebook as published, if every check holds; from then on a change needs a new version.',
  },
  () => {
    const { base: data, files } = loadProject('refused', []);
    const rules = openRulebook(data);
    const failing = files.checks.filter(({ entry }) => !runCheck(entry, rules).holds);
    if (failing.length > 0)
      throw new InputError(
        `found ${failing.length} checks that don't hold, expected none; npm run checks names them. Nothing is published.`,
      );
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
  },
);
