import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { calculationNamed } from '../../src/calc/calculations.ts';
import * as profiles from '../../src/calc/cavity/profile.ts';
import { cavitySection } from '../../src/calc/cavity/section.ts';
import { choiceField } from '../../src/calc/declare/field.ts';
import { onTheTape } from '../../src/calc/holes/allowed-positions.ts';
import { ruleNames } from '../../src/calc/holes/problem.ts';
import { readJobFile } from '../../src/job/job-file.ts';
import { jobParts } from '../../src/job/parts/parts.ts';
import { workJob } from '../../src/job/work.ts';
import * as dimension from '../../src/quantity/dimension.ts';
import * as quantity from '../../src/quantity/quantity.ts';
import * as units from '../../src/quantity/units.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { bareRoof } from '../calc/holes/roofs.ts';
import { theProject } from '../the-project.ts';

const { data } = theProject();
const exampleJob = readJobFile(readFileSync('public/example-job.json', 'utf8'));

const plan = exampleJob.ok ? workJob(exampleJob.value, openRulebook(data)) : exampleJob;

/** What an example may take as given, besides what its own module exports: quantities, sections of a cavity, a field, the rulebook, the example job and its plan. */
const given = {
  ...quantity,
  ...dimension,
  ...units,
  ...profiles,
  cavitySection,
  choiceField,
  bareRoof,
  onTheTape,
  ruleNames,
  calculationNamed,
  data,
  openRulebook,
  rules: openRulebook(data),
  job: exampleJob.ok ? exampleJob.value : undefined,
  plan: plan.ok ? plan.value : undefined,
  jobParts,
};

const modules = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name))
  .map((name) => join('src', name))
  .sort();

/** What follows the end of a comment on its line is no part of the example: so stand files that mutants are put into. */
const EXAMPLE = /@example (.+?) \/\/ => (.+?)(?: \*\/.*)?$/gm;

const examples = modules.flatMap((file) =>
  [...readFileSync(file, 'utf8').matchAll(EXAMPLE)].map(([, call = '', value = '']) => ({
    file,
    call,
    value,
  })),
);

/** Only text that stands in this repository is run. */
const evaluated = (text: string, scope: Readonly<Record<string, unknown>>): unknown =>
  new Function(...Object.keys(scope), `return (${text});`)(...Object.values(scope));

describe('the examples in the docstrings are true', () => {
  test.each(examples)('$file: $call', async ({ file, call, value }) => {
    const own: Record<string, unknown> = await import(join(process.cwd(), file));
    expect(evaluated(call, { ...given, ...own })).toEqual(evaluated(value, {}));
  });

  test('there are many, and none is written so that it can’t be run', () => {
    const written = modules.flatMap((file) => readFileSync(file, 'utf8').match(/@example/g) ?? []);
    expect(examples).toHaveLength(written.length);
    expect(examples.length).toBeGreaterThanOrEqual(30);
  });
});
