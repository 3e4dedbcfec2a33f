import { z } from 'zod';

/** One sentence or more, in our own words; numbers come in by a placeholder. */
const words = z.string().trim().min(1);

/** A name of an entry, a figure or a column, as calculations and tables write them. */
const name = z.string().regex(/^[a-z][a-z0-9_-]*$/, 'a lower-case name such as depth_at');

/** Where the answer to a question comes from. No answer is typed in. */
const answerSchema = z.union([
  z.strictObject({
    /** The rule whose value is the answer. */
    rule: z.string(),
    /** One end of a range. */
    part: z.enum(['low', 'high']).optional(),
    /** For a table: the row, by its key columns, amounts with their unit. */
    row: z.record(name, z.string()).optional(),
    /** For a table: the column that answers. */
    column: name.optional(),
  }),
  z.strictObject({
    /** The calculation that works the answer out. */
    calculation: z.string(),
    /** What is put in, field by field, as a person would write it. */
    given: z.record(z.string(), z.unknown()),
    /** The figure that answers. */
    figure: name,
  }),
  z.strictObject({
    /** The caution whose words are the answer. */
    caution: z.string(),
  }),
]);

/** One question of a lesson. */
export const questionSchema = z.strictObject({
  /** The question. `{depth}` or `{fills.0.gross}` stands for an entry that is given, `{patch.layers.overlap}` for the value of a rule. */
  asks: words,
  /** Where the answer comes from. */
  answer: answerSchema,
  /** Why it is so, in a sentence or two; rules may stand in it as in the question. */
  because: words.optional(),
});

export type RawQuestion = z.infer<typeof questionSchema>;
export type RawAnswer = z.infer<typeof answerSchema>;
