import { readFileSync } from 'node:fs';
import { onOneLine, sentence } from '../calc/declare/read-fields.ts';
import { cautionSentence } from '../job/caution-sentence.ts';
import { noRuleNamed, recheck, sideText } from '../job/recheck.ts';
import { readRecord } from '../job/record.ts';
import { loadProject } from '../rulebook/project.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import { valuesApart } from '../rulebook/values-apart.ts';
import { recallOf, stopIfRecalled } from './recalled.ts';
import { howTo, InputError, notAsked, run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent job:recheck',
  does: 'Works a saved record again under the rulebook of today, and names the rule behind each figure that differs.',
  given: 'RECORD.json',
};

/** The text of a file that a command names. */
function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw new InputError(`found no file "${file}" that can be read, expected ${howTo(COMMAND)}`);
  }
}

await run(COMMAND, (given) => {
  const [file, ...rest] = given.words;
  if (file === undefined || rest.length > 0) throw notAsked(COMMAND, given);
  const record = readRecord(textOf(file));
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
  for (const { label, before, after, stops, because, rulesRecorded } of differing) {
    console.log(`\n${onOneLine(`${label}: ${sideText(before, stops)} -> ${sideText(after, stops)}`)}`);
    for (const stop of stops) console.log(`  behind the stop ${stop}`);
    for (const each of because)
      console.log(`  ${each.rule}: ${valuesApart(each.before, each.after).join(' -> ')}`);
    if (because.length === 0 && stops.length === 0) console.log(`  ${noRuleNamed({ rulesRecorded })}`);
  }
  if (cautions.length > 0) console.log('\nCautions that stand with these figures:');
  for (const id of cautions) console.log(`\n${cautionSentence(data.cautions[id], rules)}`);
  return differing.length > 0 ? 1 : 0;
});
