import type { Rule } from './rulebook.ts';
import type { RuleSource, SourceDocument } from './schema.ts';

/** How much a value's source is worth, in a word that stands beside it everywhere. */
export type Status = 'read' | 'reprint' | 'not read' | 'practice' | 'memory' | 'derived';

/**
 * The word for a source.
 * @example statusOf({ kind: 'document', document: 'irc', clause: '1', read: 'not-read' }) // => 'not read'
 */
export const statusOf = (source: RuleSource): Status =>
  source.kind === 'document' ? (source.read === 'not-read' ? 'not read' : source.read) : source.kind;

/** What each status word means, to a reader. */
export const statusMeaning: Readonly<Record<Status, string>> = {
  read: 'The number was read in the publisher’s own text of the named document.',
  reprint:
    'The number was read in a reprint, a copy or an extract of the named document, not in its publisher’s own.',
  'not read': 'The number is cited by others; the document itself was not read.',
  practice: 'Common practice of the trade, with no published source.',
  memory: 'Recalled, and not checked against any text. Check it before you rely on it.',
  derived: 'Worked out by us from other values; the working is shown.',
};

/**
 * The edition that was read: the value's own where it has one, else that of its document.
 * @example editionOf({ kind: 'document', document: 'irc', clause: '1', read: 'reprint', edition: '2021' }, { irc: { edition: '2015' } }) // => '2021'
 */
export const editionOf = (
  source: RuleSource,
  documents: Readonly<Record<string, SourceDocument>>,
): string | undefined =>
  source.kind === 'document' ? (source.edition ?? documents[source.document]?.edition) : undefined;

/**
 * The source in a line: document, edition, clause; or the status word where there is no document.
 * @example sourceLine({ kind: 'practice' }, {}) // => 'common practice, no source'
 */
export function sourceLine(source: RuleSource, documents: Readonly<Record<string, SourceDocument>>): string {
  if (source.kind !== 'document') {
    return {
      practice: 'common practice, no source',
      memory: 'from memory, not checked',
      derived: 'worked out by us',
    }[source.kind];
  }
  const document = documents[source.document];
  return document
    ? `${document.document} (${editionOf(source, documents)}), ${source.clause}`
    : source.document;
}

/**
 * The source in a few words: the document by its name, else what there is in place of one.
 * @example sourceInBrief({ kind: 'document', document: 'irc', clause: '1', read: 'read' }, { irc: { document: 'IRC' } }) // => 'IRC'
 */
export const sourceInBrief = (
  source: RuleSource,
  documents: Readonly<Record<string, SourceDocument>>,
): string =>
  source.kind === 'document'
    ? (documents[source.document]?.document ?? source.document)
    : sourceLine(source, documents);

/**
 * The source as a note tells it where nothing can be tapped: a derived value names the values it was worked out from, by their titles.
 * @example noteLine({ kind: 'derived', working: 'Twice a.', from: ['a'] }, {}, () => 'Overlap') // => 'worked out by us from: Overlap'
 */
export function noteLine(
  source: RuleSource,
  documents: Readonly<Record<string, SourceDocument>>,
  titleOf: (id: string) => string,
): string {
  const line = sourceLine(source, documents);
  return source.kind === 'derived' ? `${line} from: ${source.from.map(titleOf).join('; ')}` : line;
}

/**
 * Where the value of a rule is from, in a line; of a value that several folders gave, where each figure is from and whose, the status of the first
 * told elsewhere.
 * @example ruleLine({ source: { kind: 'practice' }, mixed: [{ figures: '40 in', by: 'One', source: { kind: 'practice' } }, { figures: '42 in', by: 'Two', source: { kind: 'memory' } }] }, (source) => source.kind) // => 'practice for 40 in, One; memory for 42 in, Two'
 */
export const ruleLine = (
  { source, mixed }: Pick<Rule, 'source' | 'mixed'>,
  line: (source: RuleSource) => string,
): string =>
  mixed
    ?.map(({ figures, by, source: own }, place) => {
      const status = place > 0 && own.kind === 'document' ? `${statusOf(own)}, ` : '';
      return `${status}${line(own)} for ${figures}, ${by}`;
    })
    .join('; ') ?? line(source);

/** Every source of a rule: one, or of a value that several folders gave each figure’s. @example sourcesOf({ source: { kind: 'memory' } }) // => [{ kind: 'memory' }] */
export const sourcesOf = ({ source, mixed }: Pick<Rule, 'source' | 'mixed'>): readonly RuleSource[] =>
  mixed?.map((each) => each.source) ?? [source];

/** Every kind of source, in the order they are counted. */
export const sourceKinds = ['regulation', 'standard', 'handbook', 'practice', 'memory', 'derived'] as const;
export type SourceKind = (typeof sourceKinds)[number];

/**
 * Regulation, standard or handbook as the document says, else practice, memory or derived.
 * @example sourceKindOf({ kind: 'memory' }, {}) // => 'memory'
 */
export const sourceKindOf = (
  source: RuleSource,
  documents: Readonly<Record<string, SourceDocument>>,
): SourceKind =>
  source.kind === 'document' ? (documents[source.document]?.kind ?? 'handbook') : source.kind;
