import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { readRulebookJson } from '../export/json.ts';
import type { Problem } from '../problem.ts';
import { type Entry, problemAt, problemAtKey, type RuleFiles } from '../rule-files.ts';
import type { RulebookData } from '../rulebook.ts';
import type { Reason } from '../schema.ts';
import { type CautionChange, diffCautions } from './caution-diff.ts';
import { cautionParts } from './caution-parts.ts';
import { cautionProblems } from './caution-problems.ts';
import { diffRulebooks, type RuleChange } from './diff.ts';
import { needsReason } from './needs-reason.ts';
import { type PartApart, partsApart } from './parts-apart.ts';

/** Where the rulebooks that were published are kept, below the folder of the rules: one exported file a version, never changed. */
const FOLDER = 'releases';

/** Which of two versions is the later? Year, then number: 2026.10 comes after 2026.9. @example compareVersions('2026.10', '2026.9') > 0 // => true */
export function compareVersions(a: string, b: string): number {
  const [[ay = 0, an = 0], [by = 0, bn = 0]] = [a.split('.').map(Number), b.split('.').map(Number)];
  return ay - by || an - bn;
}

/**
 * The published rulebooks of a folder, the oldest first.
 * @throws ExportError for a file that is no exported rulebook; Error for one whose name is not its version.
 */
export function readReleases(rulesFolder: string): readonly RulebookData[] {
  const folder = join(rulesFolder, FOLDER);
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => {
      const shown = relative(process.cwd(), join(folder, name));
      const data = readRulebookJson(readFileSync(join(folder, name), 'utf8'), shown);
      if (name !== `${data.version}.json`)
        throw new Error(
          `${shown}: found rulebook ${data.version}, expected the file to be named ${data.version}.json`,
        );
      return data;
    })
    .sort((a, b) => compareVersions(a.version, b.version));
}

/** What a version changed, against the one published before it. */
export interface VersionChanges {
  readonly from: string;
  readonly to: string;
  readonly changes: readonly (RuleChange & { readonly parts: readonly PartApart[] })[];
  readonly cautions: readonly (CautionChange & { readonly parts: readonly PartApart[] })[];
}

/** Every step from one published version to the next, and on to the rulebook at hand; the newest first. */
export function changesByVersion(data: RulebookData, releases: readonly RulebookData[]): VersionChanges[] {
  const steps = [...releases.filter(({ version }) => compareVersions(version, data.version) < 0), data];
  return steps
    .slice(1)
    .map((to, place): VersionChanges => {
      const from = steps[place] ?? to;
      const changes = diffRulebooks(from, to).map((change) => ({
        ...change,
        parts: partsApart(change, [from.documents, to.documents]),
      }));
      const cautions = diffCautions(from, to).map((change) => ({
        ...change,
        parts: cautionParts(change, [from, to]),
      }));
      return { from: from.version, to: to.version, changes, cautions };
    })
    .reverse();
}

/** Why a safety value or a caution was let looser in a version, or changed so that it may be, if a reason stands in the rulebook. */
export const reasonFor = (reasons: readonly Reason[], version: string, rule: string): string | undefined =>
  reasons.find((each) => each.rule === rule && each.version === version)?.reason;

/**
 * Is every recalled version one that somebody can have: published, or the one at hand? A recall of any other stops nothing, and its writer would
 * believe that it does.
 */
export function recallProblems(
  { recalls, version }: Pick<RuleFiles, 'recalls' | 'version'>,
  releases: readonly Pick<RulebookData, 'version'>[],
): Problem[] {
  const known = [...new Set([...releases.map((each) => each.version), version])].sort(compareVersions);
  return recalls
    .filter(({ id }) => !known.includes(id))
    .map((entry) =>
      problemAt(
        entry,
        ['version'],
        `a recall of ${entry.id}, which was never published`,
        `one that was (${known.join(', ')}), or no recall`,
        'recalled-version',
      ),
    );
}

/**
 * What is wrong with a rulebook beside those that were published? A published version must stay as it is; an id is for ever; and a safety
 * value that got looser, or may have, needs its reason, as a caution does that is gone or of a lower level.
 */
export function releaseProblems(
  data: RulebookData,
  {
    rules,
    cautions,
    reasons,
    versionFile,
  }: Pick<RuleFiles, 'rules' | 'cautions' | 'reasons' | 'versionFile'>,
  releases: readonly RulebookData[],
): Problem[] {
  const same = releases.find(({ version }) => version === data.version);
  if (same) {
    const [first] = [...diffRulebooks(same, data), ...diffCautions(same, data)];
    if (!first) return [];
    return [
      {
        ...versionFile,
        found: `version ${data.version}, which was published with another ${first.id}`,
        expected: 'a version of its own for what is changed',
        check: 'published-version',
      },
    ];
  }
  const [latest] = changesByVersion(data, releases);
  const given = reasons.map(({ entry }) => entry);
  if (!latest) return [];
  const ofCautions = cautionProblems(
    latest.cautions,
    [latest.from, latest.to],
    { cautions, versionFile },
    (id) => reasonFor(given, data.version, id) !== undefined,
  );
  const ofRules = latest.changes.flatMap((change): Problem[] => {
    if (change.kind === 'gone')
      return [
        {
          ...versionFile,
          found: `no rule ${change.id}, which ${latest.from} had`,
          expected: 'it to stay, or to be an alias of the rule that took its place',
          check: 'permanent-id',
        },
      ];
    const asks = needsReason(change);
    if (!asks || reasonFor(given, data.version, change.id)) return [];
    const entry = rules.find(({ id }) => id === change.id) as Entry<unknown>;
    const found = `${asks.found} than in ${latest.from}`;
    const expected = `a reason for ${data.version} in reasons.yaml`;
    const check = 'safety-without-reason';
    return [
      asks.at === undefined
        ? problemAtKey(entry, found, expected, check)
        : problemAt(entry, [asks.at], found, expected, check),
    ];
  });
  return [...ofRules, ...ofCautions];
}
