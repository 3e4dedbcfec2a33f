import { diffRulebooks, type RuleChange } from '../changes/diff.ts';
import { partsApart } from '../changes/parts-apart.ts';
import { compareVersions } from '../changes/releases.ts';
import type { Problem } from '../problem.ts';
import { type Entry, problemAt, problemAtKey } from '../rule-files.ts';
import type { RulebookData } from '../rulebook.ts';
import { valueHeadline } from '../value-text.ts';
import type { WithAgency } from './read.ts';
import type { LocalValue } from './schema.ts';
import { ruleNamed } from './setting.ts';

/** Ids part what two agencies say, short names tell readers whose it is: neither may be another's too, told apart by capitals or spaces alone. */
export function sameName(layers: readonly WithAgency[]): Problem[] {
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
export const editionProblems = ({ agency }: WithAgency, today: string): Problem[] =>
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
export function basedOnProblems(
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
