import { readFileSync } from 'node:fs';
import { sentence } from '../calc/declare/read-fields.ts';
import { enteredLines } from '../job/entered-lines.ts';
import { openJobFile, readJobFile, writeJobFile } from '../job/job-file.ts';
import { writeRecord } from '../job/record.ts';
import { jobSheet } from '../job/sheet.ts';
import { namesOf, ofThisHome, stillExamples } from '../job/still-examples.ts';
import { workJob } from '../job/work.ts';
import { loadProject } from '../rulebook/project.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import { plannedJson } from './planned-json.ts';
import { stopIfRecalled } from './recalled.ts';
import { InputError, notAsked, run } from './run.ts';

const EXAMPLE = new URL('../../public/example-job.json', import.meta.url);

const COMMAND = {
  name: 'npm run --silent job',
  does: 'Works a job file into its plan, as JSON.',
  given: 'FILE.json',
  options: {
    text: { does: 'prints the plan as a sheet of text' },
    'behind-stops': { does: 'prints the figures behind an open stop too' },
    record: { does: 'prints a record instead: the job, every figure, the rules behind them' },
  },
};

await run(COMMAND, (given) => {
  const [text, behindStops, record] = [given.has('text'), given.has('behind-stops'), given.has('record')];
  const [file, ...rest] = given.words;
  if (file === undefined || rest.length > 0) throw notAsked(COMMAND, given);
  if (record && (text || behindStops))
    throw new InputError('found --record with another option, expected it alone');
  const written = textOf(file);
  // Before it is opened, which would stop at an unknown key: all that is wrong is told together.
  const job = readJobFile(written);
  if (!job.ok) throw new InputError(job.problems.map(sentence).join('\n'));
  const opened = openJobFile(written);
  if (!opened.ok) throw new InputError(opened.problems.map(sentence).join('\n'));
  const example = openJobFile(readFileSync(EXAMPLE, 'utf8'));
  if (!example.ok) throw new Error(example.problems.map(sentence).join('\n'));
  const still = stillExamples(opened.value.entries, example.value.entries);
  const entries = ofThisHome(opened.value.entries, example.value.entries);
  const counted = readJobFile(writeJobFile(entries));
  if (!counted.ok) throw new InputError(counted.problems.map(sentence).join('\n'));
  const { data, files } = loadProject();
  stopIfRecalled(files.recalls, data.version);
  const rules = openRulebook(data);
  const plan = workJob(counted.value, rules);
  if (!plan.ok) throw new InputError(plan.problems.map(sentence).join('\n'));
  if (still.length > 0)
    console.error(
      `${file}: found what is still the example’s: ${namesOf(still)}; expected what was seen, done or signed at this home. It counts as not entered.`,
    );
  if (record) {
    process.stdout.write(writeRecord(entries, plan.value, rules, data));
    return 0;
  }
  console.log(
    text
      ? [jobSheet(plan.value, data.cautions, rules, behindStops), '', ...enteredLines(entries)].join('\n')
      : JSON.stringify(plannedJson(plan.value, rules, data.cautions, behindStops), null, 2),
  );
  return 0;
});

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw new InputError(`found no file "${file}" that can be read, expected a job file`);
  }
}
