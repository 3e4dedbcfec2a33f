import { statSync } from 'node:fs';
import { localPageProblems } from '../remark/local-page.ts';
import { siteAddresses } from '../remark/site-addresses.ts';
import { marksShown } from '../rulebook/local/marks.ts';
import { readLayer } from '../rulebook/local/read.ts';
import { ifSeveral } from '../rulebook/local/several-folders.ts';
import { DataError, formatProblem } from '../rulebook/problem.ts';
import { loadProject, localFolders, withLocal } from '../rulebook/project.ts';
import { howTo, InputError, run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent local:check',
  does: 'Says what is wrong in an agency’s folder, or that nothing is; without a folder, in those that LOCAL names.',
  given: '[FOLDER ...]',
};

const counted = ({ length }: readonly unknown[], one: string): string =>
  `${length} ${one}${length === 1 ? '' : 's'}`;

await run(COMMAND, ({ words }) => {
  const folders = words.length > 0 ? words : localFolders();
  if (folders.length === 0)
    throw new InputError('found no folder, expected npm run local:check FOLDER, or LOCAL=FOLDER');
  const missing = folders.find((folder) => !statSync(folder, { throwIfNoEntry: false })?.isDirectory());
  if (missing !== undefined)
    throw new InputError(
      `found no folder "${missing}", expected one that npm run local:new wrote, as ${howTo(COMMAND)}${words.length > 0 ? '' : ifSeveral(missing)}`,
    );
  const { base, releases } = loadProject('let pass', []);
  const { data, local } = withLocal(base, releases, folders);
  const addresses = siteAddresses(data, local);
  const problems = (local?.pages ?? []).flatMap((page) => localPageProblems(page, data, addresses));
  if (problems.length > 0) throw new DataError(problems);
  for (const folder of folders) {
    const layer = readLayer(folder);
    for (const each of marksShown(layer)) console.log(formatProblem(each));
    if (layer.empty.length > 0)
      console.log(
        `${folder}: found no entry in ${layer.empty.join(', ')}; what stands behind the mark # does not count; this stops nothing`,
      );
  }
  const { changes = [], notes = [], cautions = [], pages = [] } = local ?? {};
  console.log(
    `rulebook ${data.version}: ${[
      counted(changes, 'value'),
      counted(notes, 'note'),
      counted(cautions, 'caution'),
      counted(pages, 'page'),
    ].join(', ')}, no mistakes`,
  );
  return 0;
});
