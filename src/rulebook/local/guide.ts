import { documentSchema, sourceSchema, valueSchema } from '../schema.ts';
import { commentsOf, commentsOfForms } from './comments.ts';
import { agencySchema, localCautionSchema, localValueSchema, noteSchema } from './schema.ts';

/** One field of a file, in the words of its schema. */
export interface ExplainedField {
  readonly name: string;
  readonly says: string;
  readonly needed: boolean;
}

/** One file of an agency's folder, or one form that a field may have. */
export interface ExplainedPart {
  readonly name: string;
  readonly what: string;
  readonly fields: readonly ExplainedField[];
}

/** The texts of the files that the schemas stand in: their doc comments are the guide. */
export interface SchemaTexts {
  /** src/rulebook/schema.ts */
  readonly rulebook: string;
  /** src/rulebook/local/schema.ts */
  readonly local: string;
}

interface Shape {
  readonly shape: Readonly<Record<string, { safeParse(value: unknown): { readonly success: boolean } }>>;
}

/** @throws Error for a field without a comment: the guide has to explain each. */
const fieldsOf = ({ shape }: Shape, comments: ReadonlyMap<string, string>, of: string): ExplainedField[] =>
  Object.entries(shape).map(([name, field]) => {
    const says = comments.get(name);
    if (says === undefined) throw new Error(`found no comment on "${name}" of ${of}, expected one`);
    return { name, says, needed: !field.safeParse(undefined).success };
  });

/**
 * What does each file of an agency's folder hold, field by field? In the order in which they are best filled in.
 * @throws Error for a field whose schema says nothing of it.
 */
export function folderGuide({ rulebook, local }: SchemaTexts): ExplainedPart[] {
  const cautions = new Map([
    ...commentsOf(rulebook, 'cautionSchema'),
    ...commentsOf(local, 'localCautionSchema'),
  ]);
  return [
    {
      name: 'agency.yaml',
      what: 'Whose folder this is. It alone must be there.',
      fields: fieldsOf(agencySchema, commentsOf(local, 'agencySchema'), 'agency.yaml'),
    },
    {
      name: 'values.yaml',
      what: 'Values that differ here, each under the id of its rule. The id stands on the page of the value, above its name.',
      fields: fieldsOf(localValueSchema, commentsOf(local, 'localValueSchema'), 'values.yaml'),
    },
    {
      name: 'notes.yaml',
      what: 'Notes that stand on pages and values under your name, each under a name of your own.',
      fields: fieldsOf(noteSchema, commentsOf(local, 'noteSchema'), 'notes.yaml'),
    },
    {
      name: 'cautions.yaml',
      what: 'Cautions of your own, each under a name of your own.',
      fields: fieldsOf(localCautionSchema, cautions, 'cautions.yaml'),
    },
    {
      name: 'sources.yaml',
      what: 'Documents that your values rest on, each under an id of your own.',
      fields: fieldsOf(documentSchema, commentsOf(rulebook, 'documentSchema'), 'sources.yaml'),
    },
  ];
}

/** The forms of a value or of a source: what stands at `kind`, what it means, and what else that form has. */
function formsOf(
  options: readonly (Shape & { readonly shape: { readonly kind: { readonly value: string } } })[],
  comments: readonly ReadonlyMap<string, string>[],
): ExplainedPart[] {
  return options.map((option, place) => {
    const { kind } = option.shape;
    const own = comments[place] ?? new Map<string, string>();
    const [, ...fields] = fieldsOf(option, own, kind.value);
    return { name: kind.value, what: own.get('kind') ?? '', fields };
  });
}

/** The forms that a value may have. A formula is for rules of the rulebook alone. */
export const valueForms = ({ rulebook }: SchemaTexts): ExplainedPart[] =>
  formsOf(valueSchema.options, commentsOfForms(rulebook, 'valueSchema')).map((form) => ({
    ...form,
    fields: form.fields.filter(({ name }) => name !== 'formula'),
  }));

/** The forms that a source may have; what is worked out from other rules is the rulebook's own. */
export const sourceForms = ({ rulebook }: SchemaTexts): ExplainedPart[] =>
  formsOf(sourceSchema.options, commentsOfForms(rulebook, 'sourceSchema')).filter(
    ({ name }) => name !== 'derived',
  );
