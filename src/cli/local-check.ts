import { localPageProblems } from '../remark/local-page.ts';
import { DataError } from '../rulebook/problem.ts';
import { loadProject, localFolders, withLocal } from '../rulebook/project.ts';
import { InputError, run } from './run.ts';

await run(() => {
  const given = process.argv.slice(2);
  const folders = given.length > 0 ? given : localFolders();
  if (folders.length === 0)
    throw new InputError('found no folder, expected npm run local:check FOLDER, or LOCAL=FOLDER');
  const { base, releases } = loadProject('let pass', []);
  const { data, local } = withLocal(base, releases, folders);
  const problems = (local?.pages ?? []).flatMap((page) => localPageProblems(page, data));
  if (problems.length > 0) throw new DataError(problems);
  const { changes = [], notes = [], cautions = [], pages = [] } = local ?? {};
  console.log(
    `rulebook ${data.version}: ${changes.length} values, ${notes.length} notes, ${cautions.length} cautions, ${pages.length} pages, no mistakes`,
  );
  return 0;
});
