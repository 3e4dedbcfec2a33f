import { askedByCalculations, useName, usesOf } from '../calc/uses.ts';
import { cautionChangeMeaning, diffCautions } from '../rulebook/changes/caution-diff.ts';
import { cautionParts } from '../rulebook/changes/caution-parts.ts';
import { changeMeaning, diffRulebooks } from '../rulebook/changes/diff.ts';
import { type PartApart, partsApart } from '../rulebook/changes/parts-apart.ts';
import { loadProject } from '../rulebook/project.ts';
import { rulebookAt } from './rulebook-at.ts';
import { notAsked, run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent rules:diff',
  does: 'Says what differs between two rulebooks, each "now", a published version, a folder of rules or an exported file.',
  given: 'BEFORE AFTER',
};

const counted = (count: number, name: string): string =>
  count === 1 ? `1 ${name} differs` : `${count} ${name}s differ`;

const tell = (parts: readonly PartApart[]): void => {
  for (const { part, before, after } of parts) console.log(`  ${part}: ${before} -> ${after}`);
};

await run(COMMAND, (given) => {
  const [from, to, ...rest] = given.words;
  if (from === undefined || to === undefined || rest.length > 0) throw notAsked(COMMAND, given);
  const [before, after] = [rulebookAt(from), rulebookAt(to)];
  const changes = diffRulebooks(before, after);
  const cautions = diffCautions(before, after);
  console.log(
    `rulebook ${before.version} -> ${after.version}: ${counted(changes.length, 'rule')}, ${counted(cautions.length, 'caution')}`,
  );
  const { data, files, references } = loadProject('let pass', []);
  const asked = askedByCalculations(
    data,
    files.checks.map(({ entry }) => entry),
  );
  for (const change of changes) {
    const { id, kind } = change;
    console.log(`\n${kind}  ${id}\n  ${changeMeaning[kind]}`);
    tell(partsApart(change, [before.documents, after.documents]));
    for (const use of usesOf(id, data, references, asked)) console.log(`  touches ${useName(use)}`);
  }
  for (const change of cautions) {
    console.log(`\n${change.kind}  ${change.id}\n  ${cautionChangeMeaning[change.kind]}`);
    tell(cautionParts(change, [before, after]));
  }
  return 0;
});
