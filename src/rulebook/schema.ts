import { z } from 'zod';

/**
 * The shape of the rule files. One doc comment a field: the guide for people who write rules is made from them.
 * Every object is strict, so that a misspelt key is an error and not a silence.
 */

/** A day, as 2026-11-25. */
const day = z.iso.date();

/** One plain sentence or more, in our own words. */
const words = z.string().trim().min(1);

const ruleId = z
  .string()
  .regex(/^[a-z0-9-]+(\.[a-z0-9-]+)+$/, 'dotted lower-case id such as patch.layers.overlap');

/** A derived value as arithmetic on other rules; worked out when the rulebook is loaded, never typed in. */
export type Formula =
  | number
  | { rule: string; part?: 'low' | 'high' | undefined }
  | { add: Formula[] }
  | { subtract: [Formula, Formula] }
  | { times: Formula[] }
  | { divide: [Formula, Formula] };

export const formulaSchema: z.ZodType<Formula> = z.lazy(() =>
  z.union([
    z.number(),
    z.strictObject({
      /** The rule whose value is taken. */
      rule: ruleId,
      /** Which end of a range is taken: of a range always, of nothing else. */
      part: z.enum(['low', 'high']).optional(),
    }),
    z.strictObject({ add: z.array(formulaSchema).min(2) }),
    z.strictObject({ subtract: z.tuple([formulaSchema, formulaSchema]) }),
    z.strictObject({ times: z.array(formulaSchema).min(2) }),
    z.strictObject({ divide: z.tuple([formulaSchema, formulaSchema]) }),
  ]),
);

/** One column of a table rule. */
const columnSchema = z.strictObject({
  /** Short name by which code asks for the column. */
  name: z.string().regex(/^[a-z][a-z0-9-]*$/, 'lower-case name such as framing'),
  /** Heading shown to the reader. */
  title: words,
  /** Unit of the column's numbers, in the source's own unit; absent for a column of words. */
  unit: z.string().optional(),
  /**
   * How a row is found by this column; absent for a column that is looked up.
   * `word` the same word, `number` the same number, `at-most` the smallest entry that is not below what is asked,
   * `at-least` the largest entry that is not above it,
   * `straight-line` between the two nearest rows, `band` the row whose [low, high] holds it.
   */
  key: z.enum(['word', 'number', 'at-most', 'at-least', 'straight-line', 'band']).optional(),
  /** Distance between one row and the next in this column; a missing row is then an error. */
  step: z.number().positive().optional(),
  /** Why the bands of this column may leave gaps; absent where they may not. */
  gaps: words.optional(),
  /** Words that its source prints in the place of some of its numbers, such as "no limit"; only for a column that is looked up. */
  words: z.array(words).min(1).optional(),
});

const cell = z.union([z.number(), z.string(), z.tuple([z.number(), z.number()])]);

/** What the rule says: a value in its source's own unit. */
export const valueSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    /** One value. */
    kind: z.literal('exact'),
    /** The value; absent where a formula gives it. */
    number: z.number().optional(),
    /** How the value follows from other rules; only for a derived rule. */
    formula: formulaSchema.optional(),
    /** Unit, from the closed list; "1" for a pure number. */
    unit: z.string(),
  }),
  z.strictObject({
    /** The value or more. */
    kind: z.literal('at-least'),
    /** The bound. */
    number: z.number(),
    /** Unit, from the closed list. */
    unit: z.string(),
  }),
  z.strictObject({
    /** The value or less. */
    kind: z.literal('at-most'),
    /** The bound. */
    number: z.number(),
    /** Unit, from the closed list. */
    unit: z.string(),
  }),
  z.strictObject({
    /** Between two values, both included. */
    kind: z.literal('between'),
    /** The lower end. */
    low: z.number(),
    /** The upper end. */
    high: z.number(),
    /** Unit, from the closed list. */
    unit: z.string(),
  }),
  z.strictObject({
    /** One of a list of words. */
    kind: z.literal('one-of'),
    /** The words, each once. */
    choices: z
      .array(words)
      .min(1)
      .refine((all) => new Set(all).size === all.length, 'each word once'),
  }),
  z.strictObject({
    /** A table looked up by one or more of its columns. */
    kind: z.literal('table'),
    /** The columns in order. */
    columns: z.array(columnSchema).min(2),
    /** The rows, a cell for each column: a number, a word, or [low, high]. */
    rows: z.array(z.array(cell)).min(1),
  }),
]);

/** Where a value comes from. */
export const sourceSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    /** A document listed in sources.yaml. */
    kind: z.literal('document'),
    /** Its id in sources.yaml. */
    document: z.string(),
    /** Section, table, paragraph: enough to find the place. */
    clause: words,
    /** The edition that was read, where it is not the one that sources.yaml gives for the document. */
    edition: words.optional(),
    /** `read` in the publisher's own text, `reprint` in a copy or extract, named under `read_in` of the document or in the remark, `not-read` cited by others only; the weaker where mixed. */
    read: z.enum(['read', 'reprint', 'not-read']),
    /** The day it was read; absent where the reading was not dated, and then the audit lists it as due. */
    on: day.optional(),
    /** What the reader should know of the reading: a conversion, a condition, a spelling put right. */
    remark: words.optional(),
  }),
  z.strictObject({
    /** Common practice of the trade, with no published source. */
    kind: z.literal('practice'),
    /** What the reader should know of it. */
    remark: words.optional(),
  }),
  z.strictObject({
    /** Recalled, and not checked against any text; shown as such. */
    kind: z.literal('memory'),
    /** What the reader should know of it. */
    remark: words.optional(),
  }),
  z.strictObject({
    /** Worked out by us from other rules. */
    kind: z.literal('derived'),
    /** The working, as a reader can follow it. */
    working: words,
    /** The rules it is worked from. */
    from: z.array(ruleId).min(1),
  }),
]);

/** One rule: a value, what it means, where it comes from. */
export const ruleSchema = z.strictObject({
  /** What the value is, as a heading would say it. */
  title: words,
  /** One plain sentence: what the value asks for. */
  says: words,
  /** The letter that stands for it in a shown working. */
  symbol: z.string().optional(),
  /** The value. */
  value: valueSchema,
  /** Where it comes from. */
  source: sourceSchema,
  /** What it applies to: which homes, roofs, materials. */
  applies_to: words,
  /** Can people, ceilings or roofs come to harm if it is not kept? Then which way is stricter. */
  safety: z
    .enum(['lower is stricter', 'higher is stricter', 'narrower is stricter', 'as it stands'])
    .optional(),
  /** Ids it had before; they lead here for ever. */
  aliases: z.array(ruleId).optional(),
});

/** A published version whose figures are to be worked by no more. */
const recallSchema = z.strictObject({
  /** The version, as 2026.1. */
  version: z.string().regex(/^\d{4}\.\d+$/, 'year and number in quotes, such as "2026.1"'),
  /** What is wrong with it, to someone on a roof: one plain sentence. */
  reason: words,
});

/** What rulebook.yaml says of the rulebook as a whole. */
export const rulebookSchema = z.strictObject({
  /** Year and number, in quotes. */
  version: z.string(),
  /** Versions that are recalled, each once; a copy of one stops its calculators as soon as it hears of it. */
  recall: z
    .array(recallSchema)
    .refine((all) => new Set(all.map(({ version }) => version)).size === all.length, 'each version once')
    .optional(),
});

/** A document that values are drawn from. */
export const documentSchema = z.strictObject({
  /** What kind of text it is. */
  kind: z.enum(['regulation', 'standard', 'handbook']),
  /** Its name as cited: 24 CFR part 3280. */
  document: words,
  /** Its title. */
  title: words,
  /** The edition or year that was read. */
  edition: words,
  /** In what text it was read, in a short sentence, where that was not its publisher's own: then nothing of it is cited as `read`. */
  read_in: words.optional(),
  /** Who publishes it. */
  publisher: words,
  /** How binding it is here, and on whom. */
  standing: words,
  /** Where the public can find it, if it can. */
  found_at: words.optional(),
});

/** Words that stand at a step or a result that can hurt someone. */
export const cautionSchema = z.strictObject({
  /** `stop`: nothing goes on until it is settled. `warn`: harm is near. `note`: worth knowing. */
  level: z.enum(['stop', 'warn', 'note']),
  /** What is the matter, one sentence. */
  says: words,
  /** What to do about it, one sentence or two. */
  do: words,
  /** Where it comes from. */
  source: sourceSchema,
  /** The rules whose values it rests on. */
  rules: z.array(ruleId).optional(),
});

/** Where a check's document says it. */
const placeInDocument = {
  /** Its id in sources.yaml. */
  document: z.string(),
  /** Table, example, page. */
  clause: words,
  /** How it was read. */
  read: z.enum(['read', 'reprint', 'not-read']),
  /** What the reader should know of it. */
  remark: words.optional(),
} as const;

/** A published or hand-worked example that the calculations must reproduce. */
export const checkSchema = z.strictObject({
  /** What is checked, as a sentence. */
  title: words,
  /** The calculation, by its name. */
  calculation: z.string(),
  /** What is put in, field by field, as a person would write it. */
  given: z.record(z.string(), z.unknown()),
  /**
   * What must come out, by name: a quantity with its unit, a word, or true / false. A figure by its own name; a cell of a table as
   * `marks.1.mark`: table, row counted from 1, column.
   */
  expect: z.record(z.string(), z.union([z.string(), z.number(), z.boolean()])).default({}),
  /** Words that must stand in a remark of the answer. */
  says: z.array(words).optional(),
  /** Words that must stand in none: for a bound, what lies just outside it. */
  does_not_say: z.array(words).optional(),
  /** Cautions that must stand with the answer, by their ids. */
  cautions: z.array(z.string()).optional(),
  /** Cautions that must not: for a bound, what lies just inside it. */
  no_cautions: z.array(z.string()).optional(),
  /** Words that the refusal must say, where these entries can't be worked; then nothing else is expected. */
  refuses: words.optional(),
  /** How far a figure may be off: an amount in the unit of the expected figure, or a share of it such as 0.2 %. Absent: not at all. */
  tolerance: z.string().optional(),
  /** Where the expected figures come from. */
  from: z.discriminatedUnion('kind', [
    z.strictObject({
      /** Printed in a document. */
      kind: z.literal('document'),
      ...placeInDocument,
    }),
    z.strictObject({
      /** Worked by hand. */
      kind: z.literal('hand'),
      /** The working, with nothing left out. */
      working: words,
      /** The document whose formula or numbers are worked with, where there is one; the arithmetic is ours. */
      rests_on: z.strictObject(placeInDocument).optional(),
    }),
  ]),
});

/** Why a safety value or a caution was let looser: the build stops without. */
export const reasonSchema = z.strictObject({
  /** The rule or the caution, by its id. */
  rule: ruleId,
  /** The version that changed it. */
  version: z.string().regex(/^\d{4}\.\d+$/, 'year and number in quotes, such as "2026.2"'),
  /** Why it is right to allow more, or to warn less, in a sentence that a reviewer can check. */
  reason: words,
});

/** Why no check guards a value, or a part of it, against being moved. */
export const unguardedSchema = z.strictObject({
  /** The rule, by its id. */
  rule: ruleId,
  /** Which of its numbers, as "npm run rules:mutate" names it: "low", "row 1, roll"; absent for all of them. */
  part: words.optional(),
  /** Why, in a sentence that a reviewer can check. */
  reason: words,
});

export type RawRule = z.infer<typeof ruleSchema>;
export type RuleValue = z.infer<typeof valueSchema>;
export type RuleSource = z.infer<typeof sourceSchema>;
export type SourceDocument = z.infer<typeof documentSchema>;
export type Caution = z.infer<typeof cautionSchema>;
export type Check = z.infer<typeof checkSchema>;
export type Recall = z.infer<typeof recallSchema>;
export type Reason = z.infer<typeof reasonSchema>;
export type Unguarded = z.infer<typeof unguardedSchema>;
export type Column = z.infer<typeof columnSchema>;
export type TableValue = Extract<RuleValue, { kind: 'table' }>;
