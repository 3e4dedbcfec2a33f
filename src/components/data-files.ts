import { createHash } from 'node:crypto';
import { jobSchema, jobsSchema } from '../job/json-schema.ts';
import { rulesCsv, sourcesCsv } from '../rulebook/export/csv.ts';
import { rulebookJson, rulebookJsonSchema } from '../rulebook/export/json.ts';
import { localJson } from '../rulebook/export/local.ts';
import { recallJson } from '../rulebook/export/recall.ts';
import { baseRulebook, local, rulebook, ruleFiles } from './rulebook.ts';

/** A file of data that the site offers to other programs. */
export interface DataFile {
  readonly name: string;
  readonly type: string;
  readonly what: string;
  readonly text: string;
}

const schemaText = (schema: unknown): string => `${JSON.stringify(schema, null, 2)}\n`;

/** Every file of data, made from the rulebook that this build is made from. */
export const dataFiles: readonly DataFile[] = [
  {
    name: 'rulebook.json',
    type: 'application/json',
    what: 'The whole rulebook: rules, documents, cautions. Reading it back gives the same rulebook.',
    text: rulebookJson(rulebook),
  },
  {
    name: 'rulebook.csv',
    type: 'text/csv',
    what: 'Every rule as a row of a spreadsheet; a table stands as JSON in its cell.',
    text: rulesCsv(rulebook, baseRulebook),
  },
  {
    name: 'sources.csv',
    type: 'text/csv',
    what: 'Every document that values are drawn from, as a row of a spreadsheet.',
    text: sourcesCsv(rulebook),
  },
  {
    name: 'rulebook.schema.json',
    type: 'application/schema+json',
    what: 'The shape of rulebook.json, as JSON Schema 2020-12.',
    text: schemaText(rulebookJsonSchema()),
  },
  {
    name: 'job.schema.json',
    type: 'application/schema+json',
    what: 'The shape of a job file, as JSON Schema 2020-12.',
    text: schemaText(jobSchema()),
  },
  {
    name: 'jobs.schema.json',
    type: 'application/schema+json',
    what: 'The shape of a file with all jobs of a phone, as JSON Schema 2020-12.',
    text: schemaText(jobsSchema()),
  },
  {
    name: 'recall.json',
    type: 'application/json',
    what: 'The versions of the rulebook that are recalled, each with its reason. Copies of the site ask for it.',
    text: recallJson(
      baseRulebook.version,
      ruleFiles.recalls.map(({ entry }) => entry),
    ),
  },
  ...(local
    ? [
        {
          name: 'local.json',
          type: 'application/json',
          what: 'What is local: each value beside the rulebook’s, with its reason and source; notes and cautions.',
          text: localJson(baseRulebook, rulebook, local),
        },
      ]
    : []),
];

/** The SHA-256 of a text, in hexadecimal, as sha256sum prints it. */
export const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');
