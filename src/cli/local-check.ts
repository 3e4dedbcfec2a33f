import { localPageProblems } from '../remark/local-page.ts';
import { siteAddresses } from '../remark/site-addresses.ts';
import { DataError } from '../rulebook/problem.ts';
import { loadProject, localFolders, withLocal } from '../rulebook/project.ts';
import { InputError, run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent local:check',
  does: 'Says what is wrong in an agency’s folder, or that nothing is; without a folder, in those that LOCAL names.',
  given: '[FOLDER ...]',
};

await run(COMMAND, ({ words }) => {
  const folders = words.length > 0 ? words : localFolders();
  if (folders.length === 0)
    throw new InputError('found no folder, expected npm run local:check FOLDER, or LOCAL=FOLDER');
  const { base, releases } = loadProject('let pass', []);
  const { data, local } = withLocal(base, releases, folders);
  const addresses = siteAddresses(data, local);
  const problems = (local?.pages ?? []).flatMap((page) => localPageProblems(page, data, addresses));
  if (problems.length > 0) throw new DataError(problems);
  const { changes = [], notes = [], cautions = [], pages = [] } = local ?? {};
  console.log(
    `rulebook ${data.version}: ${changes.length} values, ${notes.length} notes, ${cautions.length} cautions, ${pages.length} pages, no mistakes`,
  );
  return 0;
});
