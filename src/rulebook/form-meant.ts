/** The form of fields that are more than words, as it is written. */
const samples: Readonly<Record<string, string>> = {
  source: '{ kind: practice }',
  value: '{ kind: at-least, number: 3, unit: in }',
  on: '[do/first-visit]',
  number: '3',
  unit: 'in',
};

const kinds: Readonly<Record<string, string>> = {
  string: 'words',
  number: 'a number',
  array: 'a list in brackets',
  tuple: 'a list in brackets',
};

/** What a field should have been, and what stands in its place. */
export interface Misformed {
  /** Its name; undefined for an entry as a whole, and for one of a list. */
  readonly key: string | undefined;
  /** What the schema asks for: string, number, object, array. */
  readonly asked: string;
  /** What was found; undefined where nothing was. */
  readonly value: unknown;
  /** Whether this is no field, but a whole entry or a whole file. */
  readonly whole?: 'entry' | 'file' | undefined;
}

/**
 * How is a field written that has the wrong form? So that it can be put right by somebody who never saw such a file before.
 * @example formMeant({ key: 'edition', asked: 'string', value: 2026 }) // => 'double quotes about it: edition: "2026"'
 * @example formMeant({ key: 'source', asked: 'object', value: 'practice' }) // => 'the form source: { kind: practice }'
 */
export function formMeant({ key, asked, value, whole }: Misformed): string {
  if (whole !== undefined && asked === 'object')
    return whole === 'file'
      ? 'a line for each field: its name, a colon, a space, then the words'
      : 'its lines below it, each with two spaces before it and no mark # at its head';
  const sample = key === undefined ? undefined : samples[key];
  const line = key === undefined ? '' : `${key}: `;
  if (value === undefined || value === null) {
    const written =
      sample === undefined
        ? `a line "${line.trim()}" with ${kinds[asked] ?? 'its keys'} behind the colon`
        : `a line such as ${line}${sample}`;
    return value === undefined || sample !== undefined
      ? written
      : `${kinds[asked] ?? 'its keys'} behind the colon, on the same line`;
  }
  switch (asked) {
    case 'string':
      return typeof value !== 'object'
        ? `double quotes about it${Number.isInteger(value) ? `: ${line}"${value}"` : ''}`
        : 'words, with double quotes about all of them';
    case 'number':
      return 'a number by itself, without a unit and without quotes';
    case 'array':
    case 'tuple':
      return typeof value === 'object'
        ? `a list in brackets, such as ${line}${sample ?? '[one, another]'}`
        : `brackets about it: ${line}[${String(value).slice(0, 60)}]`;
    case 'object':
    case 'record':
      return sample === undefined
        ? 'keys with their values, in braces: { key: value }'
        : `the form ${line}${sample}`;
    default:
      return `a ${asked}`;
  }
}
