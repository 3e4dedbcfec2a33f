import { existsSync } from 'node:fs';
import { runCheck } from '../calc/checks/run-check.ts';
import { DataError } from '../rulebook/problem.ts';
import { loadProject } from '../rulebook/project.ts';
import { readCheckFiles } from '../rulebook/rule-files.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import { InputError, run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent checks',
  does: 'Holds the published and hand-worked examples against the program.',
  options: { dir: { takes: 'FOLDER', does: 'takes a folder of your own such examples instead' } },
};

await run(COMMAND, (given) => {
  const folder = given.valueOf('dir');
  if (folder !== undefined && !existsSync(folder))
    throw new InputError(`found no folder "${folder}", expected one of check files`);
  // The checks hold the rulebook as it was published, whatever an agency sets.
  const { base, files } = loadProject();
  const { checks, problems } =
    folder === undefined ? { checks: files.checks, problems: [] } : readCheckFiles(folder);
  if (problems.length > 0) throw new DataError(problems);
  const rules = openRulebook(base);
  let failed = 0;
  for (const { entry, file, path } of checks) {
    const result = runCheck(entry, rules);
    if (result.holds) continue;
    failed += 1;
    const { line } = file.placeOf(path);
    console.log(`${file.name}:${line}  ${result.title}`);
    if (result.trouble) console.log(`  ${result.trouble}`);
    for (const { figure, expected, found, holds } of result.figures) {
      if (!holds)
        console.log(
          `  ${figure}: found ${found}, expected ${expected}${entry.tolerance ? ` within ${entry.tolerance}` : ''}`,
        );
    }
  }
  console.log(`${checks.length - failed} passed, ${failed} failed`);
  if (checks.length === 0) throw new InputError('found no checks, expected at least one');
  return failed > 0 ? 1 : 0;
});
