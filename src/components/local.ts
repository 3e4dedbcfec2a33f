import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
import { restingOn } from '../rulebook/changed.ts';
import type { LoadedLocalCaution, LocalAgency, LocalChange, LocalNote } from '../rulebook/local/local.ts';
import { readPageHead } from '../rulebook/local/page-head.ts';
import type { RuleSource } from '../rulebook/schema.ts';
import { sourceLine } from '../rulebook/status.ts';
import { valueHeadline } from '../rulebook/value-text.ts';
import { baseRulebook, local, rulebook } from './rulebook.ts';

/** The agency of an id. */
export function agencyOf(id: string): LocalAgency {
  const found = local?.agencies.find((each) => each.id === id);
  if (!found) throw new Error(`found no agency "${id}", expected one whose folder is taken`);
  return found;
}

/** The values that agencies set for a rule. */
export const changesOf = (rule: string): readonly LocalChange[] =>
  local?.changes.filter((each) => each.rule === rule) ?? [];

/** The values that agencies set, on which a derived value rests. */
export const changesBehind = (rule: string): readonly LocalChange[] =>
  local?.changes.filter(
    (each) => each.rule !== rule && each.kind !== 'same' && restingOn(baseRulebook, each.rule).has(rule),
  ) ?? [];

/** What an agency says of a place, under its name. */
export interface Said {
  readonly agency: LocalAgency;
  readonly notes: readonly LocalNote[];
  readonly cautions: readonly LoadedLocalCaution[];
}

/** What each agency says of a rule, by its id, or of a page, by its path. */
export const saidOf = (place: string): readonly Said[] =>
  (local?.agencies ?? [])
    .map((agency): Said => {
      const here = (each: LocalNote | LoadedLocalCaution) =>
        each.agency === agency.id && each.on.includes(place);
      return {
        agency,
        notes: local?.notes.filter(here) ?? [],
        cautions: local?.cautions.filter(here) ?? [],
      };
    })
    .filter(({ notes, cautions }) => notes.length + cautions.length > 0);

/** How a value stands to the rulebook's, as the table of values says it. */
export function localState(rule: string): string {
  if (changesOf(rule).some(({ kind }) => kind !== 'same')) return 'changed locally';
  return local?.recomputed.includes(rule) ? 'follows from a local change' : 'as in the rulebook';
}

/** The value of a rule in the rulebook as it was published. */
export const baseHeadline = (rule: string): string => {
  const found = baseRulebook.rules[rule];
  return found ? valueHeadline(found.value) : '';
};

/** Whose a value is that is not the rulebook's own, and the rulebook's, each to stand behind what it belongs to; nothing where the two are one. */
export function besideBase(rule: string): readonly [by: string, base: string] {
  const found = rulebook.rules[rule];
  if (found?.by === undefined) return ['', ''];
  const [here, there] = [valueHeadline(found.value), baseHeadline(rule)];
  return [` (${found.by})`, `. In the rulebook: ${here === there ? 'other numbers' : there}`];
}

/** What an agency set of the values that an answer rests on, or what follows from it: each by its title with whose it is, to stand behind the answer; nothing where all are the rulebook's own. */
export function setBehind(rules: readonly string[]): string {
  const theirs = rules.flatMap((id) => {
    const found = rulebook.rules[id];
    return found?.by === undefined ? [] : [`${found.title} (${found.by})`];
  });
  return theirs.length > 0 ? `, with ${theirs.join('; ')}` : '';
}

/** Where something local comes from, in a line. */
export const localSource = (source: RuleSource): string => sourceLine(source, rulebook.documents);

/** A page of an agency's own, ready to be shown. */
export interface ShownLocalPage {
  readonly agency: string;
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
  readonly notes: readonly string[];
  readonly Content: AstroComponentFactory;
}

interface LocalModule {
  readonly default: AstroComponentFactory;
  readonly frontmatter: { readonly notes?: readonly string[] };
}

const modules = import.meta.glob<LocalModule>('../generated/local-pages/*/*.mdx', { eager: true });

/** Every page of an agency's own. @throws Error for one that was not generated with the same folders. */
export const localPages: readonly ShownLocalPage[] = (local?.pages ?? []).map(
  ({ agency, slug, file, text }) => {
    const made = modules[`../generated/local-pages/${agency}/${slug}.mdx`];
    const { head } = readPageHead(file, text);
    if (!made || !head)
      throw new Error(`found no page made from ${file}, expected "npm run generate" to have made it`);
    return { agency, slug, ...head, notes: made.frontmatter.notes ?? [], Content: made.default };
  },
);
