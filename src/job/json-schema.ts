import type { Field, Fields } from '../calc/declare/field.ts';
import { jobFields } from './job-fields.ts';
import { JOB_FORMAT, JOB_VERSION } from './job-file.ts';

type Schema = { readonly [key: string]: unknown };

/** The JSON Schema (2020-12) of a job file, made from the declaration of its fields. */
export const jobSchema = (): Schema => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'Heel to Ridge job',
  ...groupSchema({}, { format: { const: JOB_FORMAT }, version: { const: JOB_VERSION } }, jobFields),
});

function groupSchema(more: Schema, before: Readonly<Record<string, Schema>>, fields: Fields): Schema {
  const needed = Object.entries(fields)
    .filter(([, field]) => !field.optional && !mayBeLeftOut(field))
    .map(([name]) => name);
  return {
    ...more,
    type: 'object',
    properties: {
      ...before,
      ...Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, fieldSchema(field)])),
    },
    required: [...Object.keys(before), ...needed],
    additionalProperties: false,
  };
}

/** A group all of whose fields may be left out may be left out itself; so may a list. */
const mayBeLeftOut = (field: Field): boolean =>
  field.kind === 'list' ||
  (field.kind === 'group' &&
    Object.values(field.of).every((each) => each.optional === true || mayBeLeftOut(each)));

function fieldSchema(field: Field): Schema {
  const described = { title: field.label, description: field.hint };
  switch (field.kind) {
    case 'group':
      return groupSchema(described, {}, field.of);
    case 'list':
      return {
        ...described,
        type: 'array',
        maxItems: field.most,
        items: groupSchema({ title: field.one }, {}, field.of),
      };
    case 'choice':
      return { ...described, enum: field.choices };
    case 'year':
      return { ...described, type: 'integer', minimum: 1900, maximum: 2100 };
    case 'count':
      return { ...described, type: 'integer', minimum: field.least, maximum: field.most };
    case 'date':
      return { ...described, type: 'string', format: 'date', examples: [field.example] };
    case 'words':
      return { ...described, type: 'string', maxLength: 200, examples: [field.example] };
    case 'quantity':
      return {
        ...described,
        type: 'string',
        description: `${field.hint} A ${field.dimension} with its unit.`,
        examples: [field.example],
      };
  }
}
