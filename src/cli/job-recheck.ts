import { readFileSync } from 'node:fs';
import { onOneLine, sentence } from '../calc/declare/read-fields.ts';
import { cautionSentence } from '../job/caution-words.ts';
import { readRecord, recheck } from '../job/record.ts';
import { loadProject } from '../rulebook/project.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import type { RuleValue } from '../rulebook/schema.ts';
import { valueHeadline } from '../rulebook/value-text.ts';
import { recallOf, stopIfRecalled } from './recalled.ts';
import { InputError, run } from './run.ts';

const told = (value: RuleValue | undefined): string =>
  value === undefined
    ? 'not there'
    : value.kind === 'table'
      ? JSON.stringify(value.rows)
      : valueHeadline(value);

/** The text of a file that a command names. */
function textOf(file: string | undefined): string {
  try {
    return readFileSync(file ?? '', 'utf8');
  } catch {
    throw new InputError(
      `found no file "${file ?? ''}" that can be read, expected npm run --silent job:recheck -- RECORD.json`,
    );
  }
}

await run(() => {
  const record = readRecord(textOf(process.argv[2]));
  if (!record.ok) throw new InputError(record.problems.map(sentence).join('\n'));
  const { data, files } = loadProject();
  stopIfRecalled(files.recalls, data.version);
  const rules = openRulebook(data);
  const found = recheck(record.value, rules, data.rules);
  if (!found.ok) throw new InputError(found.problems.map(sentence).join('\n'));
  const { from, to, figures, differing, changed, cautions } = found.value;
  const recalled = recallOf(files.recalls, from);
  if (recalled) console.log(`rulebook ${recalled.version} is recalled: ${recalled.reason}\n`);
  console.log(
    `recorded under rulebook ${from}, worked again under ${to}: ${differing.length} of ${figures} figures differ, ${changed.length} of the rules behind them changed`,
  );
  for (const { label, before, after, because } of differing) {
    console.log(`\n${onOneLine(`${label}: ${before ?? 'not there'} -> ${after ?? 'not there'}`)}`);
    for (const each of because) console.log(`  ${each.rule}: ${told(each.before)} -> ${told(each.after)}`);
    if (because.length === 0) console.log('  no rule behind it changed');
  }
  if (cautions.length > 0) console.log('\nCautions that stand with these figures:');
  for (const id of cautions) console.log(`\n${cautionSentence(data.cautions[id], rules)}`);
  return differing.length > 0 ? 1 : 0;
});
