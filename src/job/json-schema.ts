import type { Field, Fields } from '../calc/declare/field.ts';
import { EARLIEST_YEAR, LATEST_YEAR, MOST_LETTERS } from '../calc/declare/read-fields.ts';
import { jobFields } from './job-fields.ts';
import { JOB_FORMAT, JOB_VERSION, TIME } from './job-file.ts';
import { JOB_ID } from './job-id.ts';
import { JOBS_FORMAT, JOBS_VERSION, MOST_JOBS } from './jobs-file.ts';

type Schema = { readonly [key: string]: unknown };

const DIALECT = 'https://json-schema.org/draft/2020-12/schema';

/** The head of a job file: what it must say, and what it may. */
const head = { format: { const: JOB_FORMAT }, version: { const: JOB_VERSION } };
const mayHead = {
  id: {
    title: 'Id',
    description: 'Stays with the job through files and links.',
    type: 'string',
    pattern: JOB_ID,
  },
  changed: {
    title: 'Last change',
    description: 'A time in UTC, such as 2026-11-26T10:42:00Z.',
    type: 'string',
    pattern: TIME,
  },
};

/** The JSON Schema (2020-12) of a job file that can be worked, made from the declaration of its fields. */
export const jobSchema = (): Schema => ({
  $schema: DIALECT,
  title: 'Heel to Ridge job',
  ...groupSchema({}, head, mayHead, jobFields),
});

/** The JSON Schema (2020-12) of a file with all jobs of a phone. Each is a job file, perhaps half typed: what its entries hold is not told here. */
export const jobsSchema = (): Schema => ({
  $schema: DIALECT,
  title: 'Heel to Ridge jobs',
  type: 'object',
  properties: {
    format: { const: JOBS_FORMAT },
    version: { const: JOBS_VERSION },
    jobs: {
      type: 'array',
      maxItems: MOST_JOBS,
      items: {
        title: 'A job file, as job.schema.json tells it once every entry is typed',
        type: 'object',
        properties: {
          ...head,
          ...mayHead,
          ...Object.fromEntries(Object.entries(jobFields).map(([name, field]) => [name, placeSchema(field)])),
        },
        required: Object.keys(head),
        additionalProperties: false,
      },
    },
  },
  required: ['format', 'version', 'jobs'],
  additionalProperties: false,
});

/** The place of an entry: what kind of thing stands there, whatever was typed. */
const placeSchema = (field: Field): Schema => {
  if (field.kind === 'group') return { type: 'object' };
  if (field.kind === 'list') return { type: 'array', maxItems: field.most };
  return { type: ['string', 'number'], maxLength: MOST_LETTERS };
};

function groupSchema(
  more: Schema,
  before: Readonly<Record<string, Schema>>,
  mayBefore: Readonly<Record<string, Schema>>,
  fields: Fields,
): Schema {
  const needed = Object.entries(fields)
    .filter(([, field]) => !field.optional && !mayBeLeftOut(field))
    .map(([name]) => name);
  return {
    ...more,
    type: 'object',
    properties: {
      ...before,
      ...mayBefore,
      ...Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, fieldSchema(field)])),
    },
    required: [...Object.keys(before), ...needed],
    additionalProperties: false,
  };
}

/** A group all of whose fields may be left out may be left out itself; so may a list. */
const mayBeLeftOut = (field: Field): boolean =>
  field.kind === 'list' ||
  (field.kind === 'group' && Object.values(field.of).every((each) => each.optional || mayBeLeftOut(each)));

/** A whole number, or its digits as a form keeps what was typed; the reader holds those to the bounds too. */
const asNumberOrDigits = (
  described: Schema,
  bounds: { readonly minimum: number; readonly maximum: number },
  pattern: string,
): Schema => ({ ...described, type: ['integer', 'string'], ...bounds, pattern });

function fieldSchema(field: Field): Schema {
  const described = { title: field.label, description: field.hint };
  switch (field.kind) {
    case 'group':
      return groupSchema(described, {}, {}, field.of);
    case 'list':
      return {
        ...described,
        type: 'array',
        maxItems: field.most,
        items: groupSchema({ title: field.one }, {}, {}, field.of),
      };
    case 'choice':
      return { ...described, enum: field.choices };
    case 'year':
      return asNumberOrDigits(
        described,
        { minimum: EARLIEST_YEAR, maximum: LATEST_YEAR },
        '^\\s*\\d{4}\\s*$',
      );
    case 'count':
      return asNumberOrDigits(described, { minimum: field.least, maximum: field.most }, '^\\s*\\d{1,9}\\s*$');
    case 'date':
      return { ...described, type: 'string', format: 'date', examples: [field.example] };
    case 'words':
      return { ...described, type: 'string', maxLength: MOST_LETTERS, examples: [field.example] };
    case 'quantity':
      return {
        ...described,
        type: 'string',
        description: `${field.hint} A ${field.dimension} with its unit.`,
        examples: [field.example],
      };
  }
}
