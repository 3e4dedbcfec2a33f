import { type Document, isAlias, isNode, isScalar, type Node, Scalar, visit, type YAMLError } from 'yaml';
import type { Problem } from './problem.ts';

/** A fault of a YAML text in plain words, and where in the text it is. */
interface Fault extends Pick<Problem, 'found' | 'expected' | 'check'> {
  readonly at: number;
  /** Nothing that the parser says after this one is to be believed. */
  readonly last?: true;
}

/** The parser's own words, no longer than this and nothing unseen among them: they may hold a piece of the text. */
const MOST_WORDS = 120;
const shown = (words: string): string => words.slice(0, MOST_WORDS).replace(/\p{C}/gu, '?');

const check = 'yaml';

/** Where the line begins that holds a place, and where its words do. */
const lineStart = (text: string, at: number): number => text.slice(0, at).lastIndexOf('\n') + 1;
const lineOf = (text: string, at: number): string => text.slice(lineStart(text, at)).split('\n', 1)[0] ?? '';
const wordsStart = (text: string, at: number): number =>
  lineStart(text, at) + (lineOf(text, at).match(/^\s*/)?.[0].length ?? 0);

const tabHeads = (text: string, at: number): boolean => /^\s*\t/.test(lineOf(text, at));

const OUT_OF_LINE = 'a line that stands neither with the lines above it nor below one of them';
const indent = (at: number, found: string): Fault => ({
  at,
  found,
  expected: 'as many spaces before it as before the lines it belongs with',
  check,
});

const colon = (at: number): Fault => ({
  at,
  found: 'a colon in words that have no quotes',
  expected: 'quotes about all of the words: "Mind this: it falls."',
  check,
});

const noColon = (at: number): Fault => ({
  at,
  found: 'a line that is neither a key with its value nor a part of one',
  expected: 'the key, a colon, a space, then the value',
  check,
});

const needsQuotes = (text: string, at: number): Fault => ({
  at,
  found: `words that begin with ${text[at]}`,
  expected: 'quotes about all of the words',
  check,
});

/** Words that begin with a sign of YAML's own, which the parser takes away without a complaint: * calls back what & has marked. */
function signsTaken(text: string, document: Document): Fault[] {
  const faults: Fault[] = [];
  const words = new Map<string, number>();
  const marked = new Set<string>();
  visit(document, (_, node) => {
    if (!isNode(node) || !node.range) return;
    const [at] = node.range;
    if (isAlias(node)) {
      if (!marked.has(node.source)) faults.push(needsQuotes(text, at));
      words.delete(node.source);
    } else if (node.anchor !== undefined) {
      marked.add(node.anchor);
      if (isScalar(node)) words.set(node.anchor, text.lastIndexOf(`&${node.anchor}`, at));
    }
  });
  return [...faults, ...[...words.values()].map((at) => needsQuotes(text, at))];
}

/** The last quote that opens before a place: the one that the parser never saw closed. */
function openingQuote(document: Document, before: number): number | undefined {
  let found: number | undefined;
  visit(document, (_, node) => {
    if (!isScalar(node) || !node.range) return;
    const quoted = node.type === Scalar.QUOTE_DOUBLE || node.type === Scalar.QUOTE_SINGLE;
    if (quoted && node.range[0] < before) found = Math.max(found ?? 0, node.range[0]);
  });
  return found;
}

/** The key that stands at a place, and where the same key stood first. */
function twice(document: Document, at: number): { readonly key: string; readonly first: number } | undefined {
  let found: { key: string; first: number } | undefined;
  visit(document, {
    Map: (_, map) => {
      const keys = map.items.map(({ key }) => key as Node);
      const again = keys.find((key) => key.range?.[0] === at);
      const first = keys.find(
        (key) => isScalar(key) && isScalar(again) && key !== again && key.value === again.value,
      );
      if (!isScalar(again) || !first?.range) return undefined;
      found = { key: String(again.value), first: first.range[0] };
      return visit.BREAK;
    },
  });
  return found;
}

/** What the commonest of the parser's complaints mean; undefined for one that is rare. */
function plain(
  text: string,
  document: Document,
  errors: readonly YAMLError[],
  error: YAMLError,
): Fault | undefined {
  const [at, end] = error.pos;
  const has = (code: YAMLError['code']) => errors.some((other) => other.code === code && other.pos[0] === at);
  if (tabHeads(text, at) && (error.code === 'TAB_AS_INDENT' || error.code === 'BAD_INDENT'))
    return {
      at: lineStart(text, at) + lineOf(text, at).indexOf('\t'),
      found: 'a tab at the head of a line',
      expected: 'spaces in its place, as many as before the lines it belongs with',
      check,
      last: true,
    };
  switch (error.code) {
    case 'BLOCK_AS_IMPLICIT_KEY': {
      if (!has('MULTILINE_IMPLICIT_KEY')) return colon(at);
      // The value ends on its own line; what follows it, farther in, was taken for more of it.
      const ends =
        errors.find(({ code, pos }) => code === 'MULTILINE_IMPLICIT_KEY' && pos[0] === at)?.pos[1] ?? end;
      return indent(
        wordsStart(text, ends),
        'a line farther in than the one above it, which has its value already',
      );
    }
    case 'BLOCK_IN_FLOW':
      return colon(at);
    case 'TAB_AS_INDENT':
      return { at, found: 'a tab inside a line', expected: 'a space in its place', check };
    case 'BAD_SCALAR_START':
      return needsQuotes(text, at);
    case 'BAD_ALIAS':
      return text[at] === '&' ? needsQuotes(text, at) : undefined;
    case 'MULTILINE_IMPLICIT_KEY':
      return noColon(at);
    case 'BAD_INDENT':
      if (!/^Flow/.test(error.message)) return indent(wordsStart(text, at), OUT_OF_LINE);
      return {
        at,
        found: 'a bracket that is opened before here and not closed',
        expected: `a ${/\S$/.exec(error.message)?.[0] ?? 'bracket'} where it ends, and lines farther in until then`,
        check,
        last: true,
      };
    case 'MISSING_CHAR': {
      const [, quote] = /^Missing closing (["'])quote/.exec(error.message) ?? [];
      if (quote !== undefined)
        return {
          at: openingQuote(document, at) ?? at,
          found: `a quote ${quote} that is opened and not closed`,
          expected: `another ${quote} where the words end`,
          check,
          last: true,
        };
      if (/^Implicit map keys/.test(error.message)) return noColon(at);
      return /^Sequence item/.test(error.message) ? indent(wordsStart(text, at), OUT_OF_LINE) : undefined;
    }
    case 'UNEXPECTED_TOKEN': {
      if (/["']\s*$/.test(text.slice(lineStart(text, at), at)))
        return {
          at,
          found: 'words after the quote that closes the value',
          expected: 'one pair of double quotes about all of it, with no double quote between them',
          check,
          last: true,
        };
      return text.slice(lineStart(text, at), at).trim() === '' ? indent(at, OUT_OF_LINE) : undefined;
    }
    default:
      return undefined;
  }
}

/**
 * What is wrong with the YAML of a text, in plain words with the parser's own behind them. What only follows from a fault is not told: of one line the
 * first, and after a quote or bracket that is left open nothing. In the order of their places.
 */
export function yamlFaults(text: string, document: Document, lineAt: (offset: number) => number): Fault[] {
  const { errors } = document;
  const faults = signsTaken(text, document);
  const doubles: Fault[] = [];
  for (const [place, error] of errors.entries()) {
    const [said = ''] = error.message.split('\n');
    const parser = ` (the parser: ${shown(said)})`;
    const [at] = error.pos;
    if (error.code === 'DUPLICATE_KEY') {
      const again = twice(document, at);
      doubles.push({
        at,
        found: `the key ${again ? `"${shown(again.key)}"` : 'here'} a second time${again ? `, first on line ${lineAt(again.first)}` : ''}${parser}`,
        expected: 'each key once: take one away, or give it a name of its own',
        check: 'duplicate-id',
      });
      continue;
    }
    if (faults.at(-1)?.last || errors.slice(0, place).some(({ pos }) => pos[0] === at)) continue;
    // A tab inside a line is told only where nothing else is wrong there.
    const sameLine = (other: YAMLError) => lineAt(other.pos[0]) === lineAt(at);
    if (
      error.code === 'TAB_AS_INDENT' &&
      !tabHeads(text, at) &&
      errors.some((other) => other.code !== 'TAB_AS_INDENT' && sameLine(other))
    )
      continue;
    const fault = plain(text, document, errors, error) ?? {
      at,
      found: 'something that is no YAML',
      expected: 'keys with values; quotes about words that hold signs',
      check,
    };
    if (faults.some((other) => lineAt(other.at) === lineAt(fault.at))) continue;
    faults.push({ ...fault, found: fault.found + parser });
  }
  const told = [...faults, ...doubles].sort((a, b) => a.at - b.at);
  const end = told.findIndex(({ last }) => last);
  return end < 0 ? told : told.slice(0, end + 1);
}
