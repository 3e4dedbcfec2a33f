import { askedByCalculations, useName, usesOf } from '../calc/uses.ts';
import { changeMeaning, diffRulebooks } from '../rulebook/changes/diff.ts';
import { partsApart } from '../rulebook/changes/parts-apart.ts';
import { loadProject } from '../rulebook/project.ts';
import { rulebookAt } from './rulebook-at.ts';
import { notAsked, run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent rules:diff',
  does: 'Says what differs between two rulebooks, each "now", a published version, a folder of rules or an exported file.',
  given: 'BEFORE AFTER',
};

await run(COMMAND, (given) => {
  const [from, to, ...rest] = given.words;
  if (from === undefined || to === undefined || rest.length > 0) throw notAsked(COMMAND, given);
  const [before, after] = [rulebookAt(from), rulebookAt(to)];
  const changes = diffRulebooks(before, after);
  console.log(`rulebook ${before.version} -> ${after.version}: ${changes.length} rules differ`);
  const { data, files, references } = loadProject('let pass', []);
  const asked = askedByCalculations(
    data,
    files.checks.map(({ entry }) => entry),
  );
  for (const change of changes) {
    const { id, kind } = change;
    console.log(`\n${kind}  ${id}\n  ${changeMeaning[kind]}`);
    for (const { part, before: was, after: is } of partsApart(change, [before.documents, after.documents]))
      console.log(`  ${part}: ${was} -> ${is}`);
    for (const use of usesOf(id, data, references, asked)) console.log(`  touches ${useName(use)}`);
  }
  return 0;
});
