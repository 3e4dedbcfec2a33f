import { askedByCalculations, useName, usesOf } from '../calc/uses.ts';
import { changeMeaning, diffRulebooks } from '../rulebook/changes/diff.ts';
import { loadProject } from '../rulebook/project.ts';
import { valueHeadline } from '../rulebook/value-text.ts';
import { rulebookAt } from './rulebook-at.ts';
import { InputError, run } from './run.ts';

await run(() => {
  const [from, to, ...rest] = process.argv.slice(2);
  if (from === undefined || to === undefined || rest.length > 0)
    throw new InputError(
      `found ${process.argv.slice(2).join(' ') || 'nothing'}, expected npm run --silent rules:diff -- BEFORE AFTER, each "now", a published version, a folder of rules or an exported file`,
    );
  const [before, after] = [rulebookAt(from), rulebookAt(to)];
  const changes = diffRulebooks(before, after);
  console.log(`rulebook ${before.version} -> ${after.version}: ${changes.length} rules differ`);
  const { data, references } = loadProject('let pass', []);
  const asked = askedByCalculations(data);
  for (const { id, kind, before: old, after: now } of changes) {
    console.log(`\n${kind}  ${id}\n  ${changeMeaning[kind]}`);
    if (old && now && valueHeadline(old.value) !== valueHeadline(now.value))
      console.log(`  ${valueHeadline(old.value)} -> ${valueHeadline(now.value)}`);
    else if (old && now && JSON.stringify(old.value) !== JSON.stringify(now.value))
      console.log(`  ${JSON.stringify(old.value)}\n  -> ${JSON.stringify(now.value)}`);
    else if (now && !old) console.log(`  ${valueHeadline(now.value)}`);
    if (old && now && JSON.stringify(old.source) !== JSON.stringify(now.source))
      console.log(`  source: ${JSON.stringify(old.source)}\n  -> ${JSON.stringify(now.source)}`);
    if (old && now && old.says !== now.says) console.log(`  "${old.says}"\n  -> "${now.says}"`);
    for (const use of usesOf(id, data, references, asked)) console.log(`  touches ${useName(use)}`);
  }
  return 0;
});
