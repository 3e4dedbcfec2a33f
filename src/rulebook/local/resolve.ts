import { changedRulebook, restingOn } from '../changed.ts';
import { diffRulebooks, type RuleChange } from '../changes/diff.ts';
import { same, valueChange } from '../changes/judge.ts';
import { partsApart } from '../changes/parts-apart.ts';
import { compareVersions } from '../changes/releases.ts';
import { nearest } from '../nearest.ts';
import type { Problem } from '../problem.ts';
import { type Entry, isUnread, problemAt, problemAtKey } from '../rule-files.ts';
import type { Rule, RulebookData } from '../rulebook.ts';
import type { RuleSource, RuleValue, SourceDocument } from '../schema.ts';
import { sourceInBrief } from '../status.ts';
import { valueHeadline } from '../value-text.ts';
import { bareNumberProblems } from './bare-numbers.ts';
import type { LoadedLocalCaution, Local, LocalAgency, LocalChange } from './local.ts';
import { type Given, mixedFrom } from './mixed.ts';
import type { Layer } from './read.ts';
import type { Agency, LocalValue } from './schema.ts';
import { sizeProblem } from './size-meant.ts';
import { notComparable, strictest } from './strictest.ts';

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

type WithAgency = Layer & { readonly agency: Entry<Agency> };

/** One setting of a value that can stand beside the rulebook's. */
interface Setting {
  readonly rule: Rule;
  readonly entry: Entry<LocalValue>;
  readonly change: LocalChange;
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

/** Whose each value is that is not the rulebook's own: the agency by its short name, or, of one that was worked out again, what it follows from. */
function whoseValues(
  base: RulebookData,
  values: Readonly<Record<string, RuleValue>>,
  bySetting: ReadonlyMap<string, readonly Setting[]>,
  recomputed: readonly string[],
  layers: readonly WithAgency[],
): Record<string, Pick<Rule, 'by' | 'mixed'>> {
  const shortOf = new Map(layers.map(({ agency: { id, entry } }) => [id, entry.short]));
  const given = ({ change: { agency, value, source } }: Setting): Given => ({
    by: shortOf.get(agency) ?? agency,
    value,
    source,
  });
  const set = Object.entries(values).map(([id, value]): readonly [string, Pick<Rule, 'by' | 'mixed'>] => {
    const changed = (bySetting.get(id) ?? []).filter(({ change }) => change.kind !== 'same');
    const alone = changed.filter(({ change }) => valueChange(change.value, value, undefined) === undefined);
    const named = (some: readonly Setting[]) => some.map((each) => given(each).by).join(' and ');
    if (alone.length > 0) return [id, { by: named(alone) }];
    // No one folder has it: each gave a part, an end of a range or a cell of a table.
    const mixed = mixedFrom(value, changed.map(given), { ...(base.rules[id] as Rule), by: 'the rulebook' });
    return [id, { by: named(changed), mixed }];
  });
  const behind = set.map(([id, { by }]) => ({ name: by, resting: restingOn(base, id) }));
  const follows = recomputed.map((id) => {
    const names = behind.filter(({ resting }) => resting.has(id)).map(({ name }) => name);
    return [id, { by: `follows from ${[...new Set(names)].join(' and ')}` }] as const;
  });
  return Object.fromEntries([...set, ...follows]);
}

/** What stands wherever a version does. @example stamp('2026.1', [{ short: 'Harrow Valley', version: '2026-10-01' }]) // => '2026.1 + Harrow Valley 2026-10-01' */
export const stamp = (version: string, agencies: readonly Pick<Agency, 'short' | 'version'>[]): string =>
  [version, ...agencies.map((each) => `${each.short} ${each.version}`)].join(' + ');

/** Ids part what two agencies say, short names tell readers whose it is: neither may be another's too, told apart by capitals or spaces alone. */
function sameName(layers: readonly WithAgency[]): Problem[] {
  const plain = (name: string): string => name.toLowerCase().replace(/\s+/g, ' ');
  return layers.flatMap(({ agency }, place) => {
    const before = layers.slice(0, place).map((each) => each.agency.entry);
    const shared = (['id', 'short'] as const).find((key) =>
      before.some((other) => plain(other[key]) === plain(agency.entry[key])),
    );
    if (shared === undefined) return [];
    const found = `"${agency.entry[shared]}", which another folder has too`;
    return [problemAt(agency, [shared], found, 'a name of its own', 'local-agency')];
  });
}

/** An edition of tomorrow: a day mistyped, which would stand at the head of every page. */
const editionProblems = ({ agency }: WithAgency, today: string): Problem[] =>
  agency.entry.version > today
    ? [
        problemAt(
          agency,
          ['version'],
          agency.entry.version,
          `the day of this edition, not after today, ${today}`,
          'date-in-future',
        ),
      ]
    : [];

/** An overlay made for an earlier rulebook: which of its values changed since, and no build until somebody has looked. */
function basedOnProblems(
  base: RulebookData,
  layer: WithAgency,
  releases: readonly RulebookData[],
): Problem[] {
  const { agency, values } = layer;
  const given = agency.entry.based_on;
  const order = compareVersions(given, base.version);
  if (order === 0) return [];
  const at = (found: string, expected: string) =>
    problemAt(agency, ['based_on'], found, expected, 'based-on');
  if (order > 0) return [at(`based on ${given}`, `no later rulebook than this one, ${base.version}`)];
  const raised = `"${base.version}", once your values have been looked at again`;
  const then = releases.find(({ version }) => version === given);
  if (!then) return [at(`based on ${given}, of which nothing is kept to compare with`, raised)];
  const overlaid = new Map(values.map((entry) => [ruleNamed(base, entry.id)?.id ?? entry.id, entry]));
  const changed = diffRulebooks(then, base).filter(({ id, kind }) => overlaid.has(id) && kind !== 'wording');
  const names = changed.map(({ id }) => id).join(', ') || 'none';
  return [
    at(`based on ${given}; changed since, of the values set here: ${names}`, raised),
    ...changed.map(({ id, kind, before, after }) =>
      problemAtKey(
        overlaid.get(id) as Entry<LocalValue>,
        `${id}, in the rulebook since ${given} changed (${kind})${howItChanged({ before, after }, [then.documents, base.documents])}`,
        `your value held against the new one, which npm run rules:diff -- ${given} now shows whole; then raise based_on`,
        'based-on',
      ),
    ),
  ];
}

/** From what to what a value changed; where it is the same, what of its rule is not. */
function howItChanged(
  { before, after }: Pick<RuleChange, 'before' | 'after'>,
  documents: readonly [RulebookData['documents'], RulebookData['documents']],
): string {
  const [from, to] = [before, after].map((rule) => (rule ? valueHeadline(rule.value) : 'nothing'));
  if (from !== to || !before || !after) return ` from ${from} to ${to}`;
  const parts = partsApart({ before, after }, documents).map(({ part }) => part.toLowerCase());
  return `: still ${to}, but another ${parts.join(', ')}`;
}

function documentProblems(base: RulebookData, { documents }: Layer): Problem[] {
  return documents
    .filter(({ id }) => Object.hasOwn(base.documents, id))
    .map((entry) =>
      problemAtKey(entry, `"${entry.id}", a document of the rulebook`, 'an id of its own', 'local-source'),
    );
}

/** A rule by its id, or by one that it had before. */
const ruleNamed = ({ rules }: RulebookData, id: string): Rule | undefined =>
  Object.hasOwn(rules, id) ? rules[id] : Object.values(rules).find(({ aliases }) => aliases?.includes(id));

/** A source as the resolved rulebook knows it: a document of the agency's own by its id with the agency's before it. */
const sourceIn = ({ agency, documents }: WithAgency, source: RuleSource): RuleSource =>
  source.kind === 'document' && documents.some(({ id }) => id === source.document)
    ? { ...source, document: `${agency.id}.${source.document}` }
    : source;

function settingOf(
  base: RulebookData,
  layer: WithAgency,
  entry: Entry<LocalValue>,
): Setting | { readonly problems: Problem[] } {
  const rule = ruleNamed(base, entry.id);
  if (!rule) {
    const guess = nearest(entry.id.slice(0, 100), Object.keys(base.rules));
    const expected = guess ? `an id of the rulebook; did you mean "${guess}"?` : 'an id of the rulebook';
    return {
      problems: [problemAtKey(entry, `the rule "${entry.id.slice(0, 100)}"`, expected, 'unknown-rule')],
    };
  }
  const { value, reason, source } = entry.entry;
  if (rule.value.kind === 'exact' && rule.value.formula !== undefined) {
    const from = rule.source.kind === 'derived' ? rule.source.from.join(', ') : 'others';
    return {
      problems: [
        problemAtKey(
          entry,
          `a value for "${rule.id}", which is worked out`,
          `a value for what it rests on: ${from}`,
          'local-derived',
        ),
      ],
    };
  }
  const apart = notComparable(rule.value, value);
  if (apart) return { problems: [problemAt(entry, ['value'], apart.found, apart.expected, 'local-value')] };
  const upsideDown = rangeProblem(value);
  if (upsideDown)
    return {
      problems: [problemAt(entry, ['value'], upsideDown, 'the lower end below the upper', 'empty-range')],
    };
  const oversized = sizeProblem(rule.value, value);
  if (oversized)
    return { problems: [problemAt(entry, ['value'], oversized.found, oversized.expected, 'local-size')] };
  const kind = valueChange(rule.value, value, rule.safety) ?? 'same';
  if (rule.safety !== undefined && kind !== 'stricter' && kind !== 'same') {
    const base = valueHeadline(rule.value);
    const refused =
      kind === 'looser'
        ? [
            `${valueHeadline(value)}, looser than the rulebook's ${base}`,
            `a value as strict or stricter: ${rule.safety}`,
          ]
        : [
            `${valueHeadline(value)}, which can not be called stricter than ${base}`,
            'the value of the rulebook: it is for safety, and has no stricter way',
          ];
    return {
      problems: [
        problemAt(
          entry,
          ['value'],
          refused[0] as string,
          refused[1] as string,
          kind === 'looser' ? 'looser-value' : 'not-comparable',
        ),
      ],
    };
  }
  return {
    rule,
    entry,
    change: {
      rule: rule.id,
      agency: layer.agency.id,
      value,
      reason,
      source: sourceIn(layer, source),
      kind,
      file: entry.file.name,
      line: entry.file.placeOfKey(entry.path).line,
    },
  };
}

function rangeProblem(value: RuleValue): string | undefined {
  if (value.kind === 'between') return value.low < value.high ? undefined : `${value.low} to ${value.high}`;
  if (value.kind !== 'table') return undefined;
  const cell = value.rows.flat().find((each) => Array.isArray(each) && each[0] > each[1]);
  return cell === undefined ? undefined : `[${String(cell)}]`;
}

/** Which of the values set for one rule holds? Of a safety value the strictest; any other must be one and the same. */
function decide(some: readonly Setting[]): { value?: RuleValue; by: Setting; problems: Problem[] } {
  const [first] = some as [Setting];
  const { rule } = first;
  const clash = (found: (others: string) => string, expected: string, check: string) =>
    some.map(({ entry, change }) => {
      const others = some
        .filter(({ change: other }) => other !== change)
        .map(({ change: { agency, value } }) => `${valueHeadline(value)} in the folder of ${agency}`);
      return problemAt(
        entry,
        ['value'],
        `${valueHeadline(change.value)} for "${rule.id}", ${found(others.join(', '))}`,
        expected,
        check,
      );
    });
  if (rule.safety === undefined) {
    const other = some.find(
      ({ change }) => valueChange(first.change.value, change.value, undefined) !== undefined,
    );
    if (other)
      return {
        by: first,
        problems: clash(
          (others) => `and ${others}`,
          'one value in all folders: neither of two is stricter',
          'local-clash',
        ),
      };
    const changed = some.find(({ change }) => change.kind !== 'same');
    return changed ? { value: changed.change.value, by: changed, problems: [] } : { by: first, problems: [] };
  }
  const changed = some.filter(({ change }) => change.kind !== 'same');
  if (changed.length === 0) return { by: first, problems: [] };
  const value = strictest(
    rule.value,
    changed.map(({ change }) => change.value),
    rule.safety,
  );
  if (!value)
    return { by: first, problems: clash(() => 'which has no stricter way', 'none', 'not-comparable') };
  if (rangeProblem(value))
    return {
      by: first,
      problems: clash(
        (others) => `and, sharing nothing with it, ${others}`,
        'ranges that overlap',
        'empty-range',
      ),
    };
  const by = changed.find(({ change }) => valueChange(change.value, value, undefined) === undefined);
  return { value, by: by ?? (changed[0] as Setting), problems: [] };
}

/** The rulebook with the values in it and what is derived worked out again; a derived safety value may not have got looser by it. */
function settledRulebook(
  base: RulebookData,
  values: Readonly<Record<string, RuleValue>>,
  by: ReadonlyMap<string, readonly Setting[]>,
): { data: RulebookData; recomputed: string[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const at = (id: string): Setting => by.get(id)?.[0] as Setting;
  for (const id of Object.keys(values)) {
    for (const { id: derived, source, value } of Object.values(base.rules)) {
      const byHand = source.kind === 'derived' && !(value.kind === 'exact' && value.formula !== undefined);
      if (!byHand || !source.from.includes(id) || Object.hasOwn(values, derived)) continue;
      problems.push(
        problemAtKey(
          at(id).entry,
          `a change of "${id}", from which "${derived}" was worked by hand`,
          `a value for "${derived}" too`,
          'local-derived',
        ),
      );
    }
  }
  let data: RulebookData;
  try {
    data = changedRulebook(base, values);
  } catch (error) {
    const [id] = Object.keys(values);
    if (id === undefined) throw error;
    return {
      data: base,
      recomputed: [],
      problems: [
        ...problems,
        problemAtKey(
          at(id).entry,
          (error as Error).message,
          'values that what is derived can be worked out from',
          'local-derived',
        ),
      ],
    };
  }
  const recomputed: string[] = [];
  for (const rule of Object.values(data.rules)) {
    const before = base.rules[rule.id] as Rule;
    if (Object.hasOwn(values, rule.id) || same(before.value, rule.value)) continue;
    recomputed.push(rule.id);
    const sound = rule.value.kind !== 'exact' || Number.isFinite(rule.value.number);
    const kind = valueChange(before.value, rule.value, rule.safety);
    if (sound && (rule.safety === undefined || kind !== 'looser')) continue;
    for (const id of Object.keys(values).filter((each) => restingOn(base, each).has(rule.id)))
      problems.push(
        problemAt(
          at(id).entry,
          ['value'],
          `a value from which "${rule.id}" comes to ${valueHeadline(rule.value)}, ${sound ? 'looser than' : 'not'} ${valueHeadline(before.value)}`,
          'one that leaves it as strict or stricter',
          'looser-value',
        ),
      );
  }
  return { data, recomputed: recomputed.sort(), problems };
}

/** Does every document that is cited exist, and was none read tomorrow? */
function sourceProblems(
  base: RulebookData,
  { values, notes, cautions, documents, unreadDocuments }: Layer,
  today: string,
): Problem[] {
  const known = [...documents.map(({ id }) => id), ...Object.keys(base.documents)];
  return [...values, ...notes, ...cautions].flatMap((entry): Problem[] => {
    const { source } = entry.entry;
    if (source?.kind === 'derived')
      return [
        problemAt(
          entry,
          ['source', 'kind'],
          'derived',
          'document, practice or memory: local values are set, not worked out',
          'local-source',
        ),
      ];
    if (source?.kind !== 'document') return [];
    const guess = nearest(source.document.slice(0, 100), known);
    return [
      ...(known.includes(source.document) || isUnread(unreadDocuments, source.document)
        ? []
        : [
            problemAt(
              entry,
              ['source', 'document'],
              `the document "${source.document.slice(0, 100)}"`,
              `an id of your sources.yaml or of the rulebook${guess ? `; did you mean "${guess}"?` : ''}`,
              'unknown-source',
            ),
          ]),
      ...(source.on !== undefined && source.on > today
        ? [problemAt(entry, ['source', 'on'], source.on, `a day not after today, ${today}`, 'date-in-future')]
        : []),
    ];
  });
}

/** The rulebook's cautions, each with what agencies say beside it. */
const withBeside = (
  base: RulebookData['cautions'],
  own: readonly LoadedLocalCaution[],
  agencies: readonly LocalAgency[],
  documents: RulebookData['documents'],
): RulebookData['cautions'] =>
  Object.fromEntries(
    Object.entries(base).map(([id, caution]) => {
      const beside = own
        .filter(({ on }) => on.includes(id))
        .map(({ agency, level, says, do: act, source }) => {
          const name = agencies.find((each) => each.id === agency)?.short ?? agency;
          return { agency: name, level, says, do: act, from: sourceInBrief(source, documents) };
        });
      return [id, beside.length > 0 ? { ...caution, beside } : caution];
    }),
  );

/** Is every place that a note names a rule or a page, and every place that a caution names one of these or another caution? */
function placeProblems(
  base: RulebookData,
  { notes, cautions, pages, agency }: WithAgency,
  paths: readonly string[],
): Problem[] {
  const own = pages.map(({ slug }) => `local/${agency.id}/${slug}`);
  const places = [...Object.keys(base.rules), ...paths, ...own];
  const besides = Object.keys(base.cautions);
  return [...notes, ...cautions].flatMap((entry) =>
    entry.entry.on.flatMap((place, at): Problem[] => {
      const known = 'level' in entry.entry ? [...places, ...besides] : places;
      if (known.includes(place)) return [];
      const guess = nearest(place.slice(0, 100), known);
      return [
        problemAt(
          entry,
          ['on', at],
          `"${place.slice(0, 100)}"`,
          `the id of a rule${'level' in entry.entry ? ', of a caution' : ''} or the path of a page${guess ? `; did you mean "${guess}"?` : ', such as do/patching'}`,
          'unknown-place',
        ),
      ];
    }),
  );
}
