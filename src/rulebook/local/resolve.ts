import type { Problem } from '../problem.ts';
import type { Entry } from '../rule-files.ts';
import type { Rule, RulebookData } from '../rulebook.ts';
import type { RuleSource, RuleValue, SourceDocument } from '../schema.ts';
import { bareNumberProblems } from './bare-numbers.ts';
import { withBeside } from './beside.ts';
import { documentProblems, sourceProblems } from './citations.ts';
import { decide } from './decide.ts';
import { basedOnProblems, editionProblems, sameName } from './edition.ts';
import type { Local } from './local.ts';
import { placeProblems } from './places.ts';
import type { Layer, WithAgency } from './read.ts';
import type { Agency } from './schema.ts';
import { type Setting, settingOf, sourceIn } from './setting.ts';
import { settledRulebook } from './settle.ts';
import { whoseValues } from './whose.ts';

/** What folders of agencies are held against, besides the rulebook. */
export interface LocalContext {
  readonly releases: readonly RulebookData[];
  /** Today, as 2026-11-25. */
  readonly today: string;
  /** The paths of the pages that notes may stand on, such as do/patching. */
  readonly pages: readonly string[];
}

/** A rulebook with what is local in it, or what is wrong. */
export interface Resolved {
  readonly data: RulebookData;
  readonly local: Local;
  readonly problems: readonly Problem[];
}

/**
 * The rulebook with agencies' folders laid over it: of several values for one rule the strictest, everything derived worked out again. The order in which
 * the folders are given does not matter. The rulebook that is handed in stays as it is.
 */
export function resolveLocal(base: RulebookData, layers: readonly Layer[], context: LocalContext): Resolved {
  const ordered = layers
    .filter((layer): layer is WithAgency => layer.agency !== undefined)
    .sort((a, b) => (a.agency.id < b.agency.id ? -1 : 1));
  const problems: Problem[] = layers.flatMap((layer) => layer.problems);
  const documents: Record<string, SourceDocument> = { ...base.documents };
  const settings: Setting[] = [];

  problems.push(...sameName(ordered));
  for (const layer of ordered) {
    problems.push(
      ...editionProblems(layer, context.today),
      ...basedOnProblems(base, layer, context.releases),
    );
    for (const { id, entry } of layer.documents) documents[`${layer.agency.id}.${id}`] = entry;
    problems.push(...documentProblems(base, layer));
    for (const entry of layer.values) {
      const read = settingOf(base, layer, entry);
      if ('rule' in read) settings.push(read);
      else problems.push(...read.problems);
    }
    problems.push(
      ...sourceProblems(base, layer, context.today),
      ...placeProblems(base, layer, context.pages),
      ...bareNumberProblems(base, layer),
    );
  }

  const bySetting = new Map<string, Setting[]>();
  for (const setting of settings) {
    const { id } = setting.rule;
    bySetting.set(id, [...(bySetting.get(id) ?? []), setting]);
  }
  const values: Record<string, RuleValue> = {};
  const deciding: Record<string, Setting> = {};
  for (const [id, some] of bySetting) {
    const decided = decide(some);
    problems.push(...decided.problems);
    if (decided.value) {
      values[id] = decided.value;
      deciding[id] = decided.by;
    }
  }
  const settled = settledRulebook(base, values, bySetting);
  problems.push(...settled.problems);

  const rules: Record<string, Rule> = { ...settled.data.rules };
  for (const [id, { change }] of Object.entries(deciding))
    rules[id] = { ...(rules[id] as Rule), source: change.source };
  for (const [id, whose] of Object.entries(whoseValues(base, values, bySetting, settled.recomputed, ordered)))
    rules[id] = { ...(rules[id] as Rule), ...whose };
  const agencies = ordered.map(({ agency, logo }) => ({ ...agency.entry, picture: logo }));
  const from = <T extends object>(list: readonly Entry<T>[], { agency }: WithAgency) =>
    list.map(({ id, entry }) => ({ ...entry, id: `${agency.id}.${id}`, agency: agency.id }));
  const cited = <T extends { readonly source?: RuleSource | undefined }>(entry: T, layer: WithAgency): T =>
    entry.source ? { ...entry, source: sourceIn(layer, entry.source) } : entry;
  const cautions = ordered.flatMap((layer) => from(layer.cautions, layer).map((each) => cited(each, layer)));
  return {
    data: {
      ...settled.data,
      version: stamp(base.version, agencies),
      documents,
      rules,
      cautions: withBeside(base.cautions, cautions, agencies, documents),
    },
    local: {
      agencies,
      changes: settings
        .map(({ change }) => change)
        .sort((a, b) => (a.rule === b.rule ? 0 : a.rule < b.rule ? -1 : 1)),
      recomputed: settled.recomputed,
      notes: ordered.flatMap((layer) => from(layer.notes, layer).map((note) => cited(note, layer))),
      cautions,
      pages: ordered.flatMap(({ agency, pages }) => pages.map((page) => ({ ...page, agency: agency.id }))),
    },
    problems,
  };
}

/** What stands wherever a version does. @example stamp('2026.1', [{ short: 'Harrow Valley', version: '2026-10-01' }]) // => '2026.1 + Harrow Valley 2026-10-01' */
export const stamp = (version: string, agencies: readonly Pick<Agency, 'short' | 'version'>[]): string =>
  [version, ...agencies.map((each) => `${each.short} ${each.version}`)].join(' + ');
