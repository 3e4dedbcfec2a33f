import type { Entries } from '../../calc/declare/entries.ts';

/** The entries of the example job, out of the text of its file. */
export function exampleEntries(text: string): Entries {
  const { format: _format, version: _version, ...entries } = JSON.parse(text) as Record<string, unknown>;
  return entries;
}
