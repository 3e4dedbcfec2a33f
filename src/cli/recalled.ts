import type { Recall } from '../rulebook/schema.ts';
import { InputError } from './run.ts';

type Listed = readonly { readonly entry: Recall }[];

/**
 * Is this version of the rulebook recalled? An agency's edition is, where the version that it stands on is.
 * @example recallOf([{ entry: { version: '2026.1', reason: 'A load is wrong.' } }], '2026.1 + Harrow Valley 2026-10-01')?.reason // => 'A load is wrong.'
 */
export const recallOf = (recalls: Listed, version: string): Recall | undefined =>
  recalls.find(({ entry }) => entry.version === version.split(' + ')[0])?.entry;

/** Ends a command before any figure where the rulebook it would work with is recalled. @throws InputError with the reason. */
export function stopIfRecalled(recalls: Listed, version: string): void {
  const recall = recallOf(recalls, version);
  if (recall)
    throw new InputError(
      `STOP. Rulebook ${recall.version} is recalled: ${recall.reason} No figure is worked with it; take a newer version.`,
    );
}
