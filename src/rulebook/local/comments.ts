/**
 * The doc comments of the fields of one schema, by field, out of the text of the file it stands in.
 * @example commentsOf('export const a = z.strictObject({\n  /** The day. *\/\n  day: z.date(),\n});', 'a').get('day') // => 'The day.'
 */
export function commentsOf(schemaText: string, schema: string): ReadonlyMap<string, string> {
  return commentsIn(blockOf(schemaText, schema));
}

/** The doc comments of each form of a schema that is one of several forms, in their order. */
export function commentsOfForms(schemaText: string, schema: string): ReadonlyMap<string, string>[] {
  return blockOf(schemaText, schema).split('z.strictObject({').slice(1).map(commentsIn);
}

function blockOf(schemaText: string, schema: string): string {
  const from = schemaText.indexOf(`export const ${schema} =`);
  if (from < 0) throw new Error(`found no schema "${schema}" in the text, expected one`);
  const ends = ['\n});', '\n]);'].map((end) => schemaText.indexOf(end, from)).filter((at) => at >= 0);
  return schemaText.slice(from, Math.min(...ends));
}

const commentsIn = (block: string): ReadonlyMap<string, string> =>
  new Map(
    [...block.matchAll(/\/\*\* (.*?) \*\/\n\s+(\w+)[:,]/g)].map(([, comment = '', field = '']) => [
      field,
      comment,
    ]),
  );
