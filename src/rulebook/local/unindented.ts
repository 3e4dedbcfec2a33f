/** A line that begins with a key, without a space before it, and has words behind the colon. */
const AT_THE_HEAD = /^([a-z_]+):[ \t]+[^\s#]/;

/**
 * The first line, from 1 on, at whose very head stands a field of an entry, which belongs below the entry's name; undefined where there is none.
 * @example unindented('permit:\ntitle: Ask first\n', ['title', 'says'])?.line // => 2
 */
export function unindented(
  text: string,
  fields: readonly string[],
): { readonly line: number; readonly field: string } | undefined {
  for (const [place, line] of text.split('\n').entries()) {
    const [, field = ''] = AT_THE_HEAD.exec(line) ?? [];
    if (fields.includes(field)) return { line: place + 1, field };
  }
  return undefined;
}
