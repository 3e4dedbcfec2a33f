import { z } from 'zod';
import { cautionSchema, documentSchema, sourceSchema, valueSchema } from '../schema.ts';

/**
 * The shape of an agency's folder. One doc comment a field: they are the comments of the folder that `npm run local:new` writes.
 * Every object is strict, so that a misspelt key is an error and not a silence.
 */

/** More than this is no note any more. */
const LONGEST_TEXT = 4000;

/** Signs that can't be seen, or that turn the order of others about: nobody could check what they do. */
const HIDDEN = /[\p{Cc}\p{Cs}\p{Co}\p{Cn}\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff]/u;

/** Are these words that a reader sees as they are? Line ends and tabs are spaces to a page. */
export const plainlySeen = (text: string): boolean => !HIDDEN.test(text.replace(/[\n\r\t]/g, ' '));

const words = z
  .string()
  .trim()
  .min(1)
  .refine((text) => text.length <= LONGEST_TEXT, `no more than ${LONGEST_TEXT} letters`);

const shortName = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'a short name in small letters, such as harrow-valley');

/** Where a note or a caution stands: rules and cautions by their ids, pages by their path, such as do/patching. */
const on = z
  .array(
    z
      .string()
      .regex(/^[a-z0-9-]+([./][a-z0-9-]+)*$/, 'the id of a rule, or the path of a page such as do/patching'),
  )
  .min(1);

/** agency.yaml: whose folder this is. */
export const agencySchema = z.strictObject({
  /** A short name in small letters, for addresses and ids: harrow-valley. */
  id: shortName.max(40),
  /** The agency's full name. */
  name: words,
  /** The name in short, as it stands beside the version at the head and foot of every page and print. */
  short: words.refine((text) => text.length <= 40, 'a name of no more than 40 letters'),
  /** How to reach the agency: telephone, post, desk. Plain words. */
  contact: words,
  /** The area it serves: counties, towns. */
  area: words,
  /** Who answers questions about these notes. */
  answers: words,
  /** A picture beside this file, png, jpg or webp; leave it out if there is none. */
  logo: z
    .string()
    .regex(/^[A-Za-z0-9_-]+\.(png|jpe?g|webp)$/, 'the name of a png, jpg or webp file in this folder')
    .optional(),
  /** The day of this edition of your notes, as 2026-10-01. Change it whenever you change anything here. */
  version: z.iso.date(),
  /** The rulebook your changed values were held against, in quotes: "2026.1". */
  based_on: z.custom<string>(
    (given) => typeof given === 'string' && /^\d{4}\.\d+$/.test(given),
    'year and number in quotes, such as "2026.1"',
  ),
});

/** An entry of values.yaml, under the id of the rule whose value it sets. */
export const localValueSchema = z.strictObject({
  /** Your value, in the form that the rule has; a safety value may only be stricter. */
  value: valueSchema,
  /** Why it differs here, in a sentence. */
  reason: words,
  /** Where it comes from: a document of your own sources.yaml or of the rulebook, or practice. */
  source: sourceSchema,
});

/** An entry of notes.yaml, under a name of your own. */
export const noteSchema = z.strictObject({
  /** What it is about, as a heading would say it. */
  title: words,
  /** The note, in plain words: no marks, no links. A number with a unit only if `source` is the document that says it. */
  says: words,
  /** Where it stands: ids of rules, paths of pages and calculators. */
  on,
  /** Where it comes from, if it rests on a text. */
  source: sourceSchema.optional(),
});

/** An entry of cautions.yaml, under a name of your own. */
export const localCautionSchema = cautionSchema.omit({ rules: true }).extend({
  /** What is the matter, one sentence. A number with a unit only if `source` is the document that says it. */
  says: words,
  /** What to do about it, one sentence or two. */
  do: words,
  /** Where it stands: ids of cautions, to stand beside them on every page, card and result; ids of rules; paths of pages and calculators. */
  on,
});

/** An entry of sources.yaml, under an id of your own. */
export const localDocumentSchema = documentSchema;

export type Agency = z.infer<typeof agencySchema>;
export type LocalValue = z.infer<typeof localValueSchema>;
export type Note = z.infer<typeof noteSchema>;
export type LocalCaution = z.infer<typeof localCautionSchema>;
