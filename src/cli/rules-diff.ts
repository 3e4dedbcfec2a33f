import { askedByCalculations, useName, usesOf } from '../calc/uses.ts';
import { changeMeaning, diffRulebooks } from '../rulebook/changes/diff.ts';
import { loadProject } from '../rulebook/project.ts';
import { valueHeadline } from '../rulebook/value-text.ts';
import { valuesApart } from '../rulebook/values-apart.ts';
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
  for (const { id, kind, before: old, after: now } of changes) {
    console.log(`\n${kind}  ${id}\n  ${changeMeaning[kind]}`);
    if (old && now && JSON.stringify(old.value) !== JSON.stringify(now.value))
      console.log(`  ${valuesApart(old.value, now.value).join(' -> ')}`);
    else if (now && !old) console.log(`  ${valueHeadline(now.value)}`);
    if (old && now && JSON.stringify(old.source) !== JSON.stringify(now.source))
      console.log(`  source: ${JSON.stringify(old.source)}\n  -> ${JSON.stringify(now.source)}`);
    if (old && now && old.says !== now.says) console.log(`  "${old.says}"\n  -> "${now.says}"`);
    for (const use of usesOf(id, data, references, asked)) console.log(`  touches ${useName(use)}`);
  }
  return 0;
});
