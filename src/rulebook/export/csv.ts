import { isDeepStrictEqual } from 'node:util';
import type { RulebookData } from '../rulebook.ts';
import type { RuleSource } from '../schema.ts';
import { editionOf, sourceKindOf, sourcesOf, statusOf } from '../status.ts';
import { valueHeadline } from '../value-text.ts';

/** A cell that a spreadsheet must not take for a formula, quoted as RFC 4180 asks. */
function cell(value: string | number | undefined): string {
  const text = value === undefined ? '' : String(value);
  const safe = typeof value === 'string' && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const csv = (head: readonly string[], rows: readonly (readonly (string | number | undefined)[])[]): string =>
  [head, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');

const byId = <T>(entries: Readonly<Record<string, T>>): [string, T][] =>
  Object.entries(entries).sort(([a], [b]) => (a < b ? -1 : 1));

/**
 * Every rule as a row of a spreadsheet; a table stands as JSON in its cell. `base` is the rulebook as it was published: where an agency's value holds instead,
 * the published one stands beside it.
 */
export function rulesCsv(
  { rules, documents }: RulebookData,
  base: Pick<RulebookData, 'rules'> = { rules },
): string {
  const head = [
    'id',
    'title',
    'says',
    'value',
    'kind',
    'number',
    'low',
    'high',
    'unit',
    'table',
    'set by',
    'in the rulebook',
    'applies to',
    'safety',
    'status',
    'source kind',
    'document',
    'edition',
    'clause',
    'read on',
    'remark',
  ];
  return csv(
    head,
    byId(rules).map(([id, rule]) => {
      const { title, says, value, applies_to, safety, by } = rule;
      const published = base.rules[id];
      /** One line; of a value that several folders gave, a line for each of its sources. */
      const told = (of: (source: RuleSource) => string | undefined) => {
        const lines = sourcesOf(rule).map((source) => of(source) ?? '');
        return lines.some(Boolean) ? lines.join('\n') : undefined;
      };
      const cited = (source: RuleSource) => (source.kind === 'document' ? source : undefined);
      return [
        id,
        title,
        says,
        valueHeadline(value),
        value.kind,
        'number' in value ? value.number : undefined,
        value.kind === 'between' ? value.low : undefined,
        value.kind === 'between' ? value.high : undefined,
        'unit' in value ? value.unit : undefined,
        value.kind === 'table' ? JSON.stringify({ columns: value.columns, rows: value.rows }) : undefined,
        by,
        published && !isDeepStrictEqual(published.value, value) ? valueHeadline(published.value) : undefined,
        applies_to,
        safety,
        told(statusOf),
        told((source) => sourceKindOf(source, documents)),
        told((source) => documents[cited(source)?.document ?? '']?.document),
        told((source) => editionOf(source, documents)),
        told((source) => cited(source)?.clause),
        told((source) => cited(source)?.on),
        told((source) =>
          'remark' in source ? source.remark : source.kind === 'derived' ? source.working : undefined,
        ),
      ];
    }),
  );
}

/** Every document that values are drawn from as a row of a spreadsheet, with how many values it gives. */
export function sourcesCsv({ rules, documents }: RulebookData): string {
  const drawn = (id: string): number =>
    Object.values(rules).filter((rule) =>
      sourcesOf(rule).some((source) => source.kind === 'document' && source.document === id),
    ).length;
  return csv(
    ['id', 'kind', 'document', 'title', 'edition', 'read in', 'publisher', 'standing', 'found at', 'values'],
    byId(documents).map(
      ([id, { kind, document, title, edition, read_in, publisher, standing, found_at }]) => [
        id,
        kind,
        document,
        title,
        edition,
        read_in,
        publisher,
        standing,
        found_at,
        drawn(id),
      ],
    ),
  );
}
