import type { ValueChange } from '../changes/judge.ts';
import type { RuleSource, RuleValue } from '../schema.ts';
import type { LocalPageText, Logo } from './read.ts';
import type { Agency, LocalCaution, Note } from './schema.ts';

/** One value that an agency sets, beside the rulebook's. */
export interface LocalChange {
  readonly rule: string;
  /** The agency, by its id. */
  readonly agency: string;
  readonly value: RuleValue;
  readonly reason: string;
  readonly source: RuleSource;
  /** `same`: as in the rulebook, said again. */
  readonly kind: ValueChange | 'same';
  readonly file: string;
  readonly line: number;
}

/** What an agency says beside the rulebook's words: under its own name, never among them. */
export type LocalNote = Note & { readonly id: string; readonly agency: string };
export type LoadedLocalCaution = LocalCaution & { readonly id: string; readonly agency: string };
export type LocalPage = LocalPageText & { readonly agency: string };

/** Whose folder it is, with its picture. */
export type LocalAgency = Agency & { readonly picture: Logo | undefined };

/** Everything local that a build holds. */
export interface Local {
  readonly agencies: readonly LocalAgency[];
  /** In the order of rules, then of agencies. */
  readonly changes: readonly LocalChange[];
  /** Derived values that come out otherwise because of a change, by their ids. */
  readonly recomputed: readonly string[];
  readonly notes: readonly LocalNote[];
  readonly cautions: readonly LoadedLocalCaution[];
  readonly pages: readonly LocalPage[];
}
