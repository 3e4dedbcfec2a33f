import type { Recall } from '../schema.ts';

/** What the file of recalled versions says it is. */
const RECALL_FORMAT = 'heel-to-ridge recall';

/** The versions that are recalled, as the text of a JSON file: copies of the site on phones ask for it. `version` is the rulebook that says so. */
export const recallJson = (version: string, recalled: readonly Recall[]): string =>
  `${JSON.stringify({ format: RECALL_FORMAT, version, recalled }, null, 1)}\n`;

/**
 * The recalled versions that a text holds; undefined where it is no such file, as when a network answers with a page of its own.
 * @example readRecall('{"format":"heel-to-ridge recall","version":"2026.2","recalled":[{"version":"2026.1","reason":"A load is wrong."}]}')?.length // => 1
 * @example readRecall('<p>Sign in') // => undefined
 */
export function readRecall(text: string): readonly Recall[] | undefined {
  try {
    const read = JSON.parse(text) as { readonly format?: unknown; readonly recalled?: unknown } | null;
    if (read?.format !== RECALL_FORMAT || !Array.isArray(read.recalled)) return undefined;
    return read.recalled.filter(
      (each): each is Recall => typeof each?.version === 'string' && typeof each?.reason === 'string',
    );
  } catch {
    return undefined;
  }
}
