import { z } from 'zod';
import type { LoadedCaution, Rule, RulebookData } from '../rulebook.ts';
import { cautionSchema, documentSchema, ruleSchema, sourceSchema } from '../schema.ts';

/** What every exported rulebook says it is. */
const RULEBOOK_FORMAT = 'heel-to-ridge rulebook';

/** A rulebook as one file, for other programs and for later comparison. */
const exportSchema = z.strictObject({
  /** What this file is. */
  format: z.literal(RULEBOOK_FORMAT),
  /** Version of the rulebook: year and number; where an agency set values, a plus sign, its name and the day of its edition. */
  version: z.string().regex(/^\d{4}\.\d+( \+ .+ \d{4}-\d{2}-\d{2})*$/),
  /** Every rule by its id; a derived value has its number beside its formula. */
  rules: z.record(
    z.string(),
    ruleSchema.extend({
      /** Whose value it is, where it is not the rulebook's own. */
      by: z.string().optional(),
      /** Where no one agency gave the value whole: whose each of its figures is, with its own source. */
      mixed: z
        .array(
          z.strictObject({
            figures: z.string(),
            by: z.string(),
            source: sourceSchema,
          }),
        )
        .optional(),
    }),
  ),
  /** Every document that values are drawn from, by its id. */
  documents: z.record(z.string(), documentSchema),
  /** Every caution by its id. */
  cautions: z.record(
    z.string(),
    cautionSchema.extend({
      /** What agencies say beside it. */
      beside: z
        .array(
          cautionSchema
            .pick({ level: true, says: true, do: true })
            .extend({ agency: z.string(), from: z.string().default('not told') }),
        )
        .optional(),
    }),
  ),
});

/** A file that is not an exported rulebook, or one with mistakes in it. */
export class ExportError extends Error {
  override name = 'ExportError';
}

/** Where an entry stands in the files is of no use outside the project. */
const bare = <T extends { readonly id: string; readonly file: string; readonly line: number }>({
  id: _id,
  file: _file,
  line: _line,
  ...entry
}: T) => entry;

const sorted = <T>(entries: Readonly<Record<string, T>>): [string, T][] =>
  Object.entries(entries).sort(([a], [b]) => (a < b ? -1 : 1));

/**
 * The whole rulebook as the text of a JSON file, ids in order, so that two of them can be laid side by side.
 * @example JSON.parse(rulebookJson(data)).format // => 'heel-to-ridge rulebook'
 */
export const rulebookJson = (data: RulebookData): string =>
  `${JSON.stringify(
    {
      format: RULEBOOK_FORMAT,
      version: data.version,
      rules: Object.fromEntries(sorted(data.rules).map(([id, rule]) => [id, bare(rule)])),
      documents: Object.fromEntries(sorted(data.documents)),
      cautions: Object.fromEntries(sorted(data.cautions).map(([id, caution]) => [id, bare(caution)])),
    },
    null,
    1,
  )}\n`;

/**
 * Reads an exported rulebook back; `file` names it where an entry is asked for its place.
 * @throws ExportError with a sentence for what is no export, or has an entry that its schema refuses.
 * @example readRulebookJson(rulebookJson(data), 'x.json').version === data.version // => true
 */
export function readRulebookJson(text: string, file: string): RulebookData {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    throw new ExportError(`${file}: found text that is not JSON, expected an exported rulebook`);
  }
  const read = exportSchema.safeParse(parsed);
  if (!read.success) {
    const [issue] = read.error.issues;
    throw new ExportError(
      `${file}: ${issue?.path.join('.') || 'the file'}: ${issue?.message}, expected an exported rulebook`,
    );
  }
  const { version, rules, documents, cautions } = read.data;
  const placed = <T extends object>(entries: Record<string, T>) =>
    Object.fromEntries(Object.entries(entries).map(([id, entry]) => [id, { ...entry, id, file, line: 1 }]));
  return {
    version,
    rules: placed(rules) as Record<string, Rule>,
    documents,
    cautions: placed(cautions) as Record<string, LoadedCaution>,
  };
}

/** The JSON Schema of an exported rulebook, made from the schema of the rule files. */
export const rulebookJsonSchema = () => ({
  title: 'Heel to Ridge rulebook',
  ...z.toJSONSchema(exportSchema, { target: 'draft-2020-12' }),
});
