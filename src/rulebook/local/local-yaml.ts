import { Lexer } from 'yaml';
import type { Problem } from '../problem.ts';
import { readYaml, type YamlFile } from '../yaml-file.ts';

/** The lexer's own mark before a scalar. */
const SCALAR = '\u001f';
const MOST_SHOWN = 40;

/** A piece of a YAML text, as the lexer parts it. */
interface Piece {
  readonly text: string;
  readonly at: number;
  /** Words without quotes. */
  readonly plain: boolean;
}

function piecesOf(text: string): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  let scalar = false;
  for (const each of new Lexer().lex(text)) {
    if (each === SCALAR) {
      scalar = true;
      continue;
    }
    // The lexer's other marks stand for no text.
    if (!text.startsWith(each, at)) continue;
    pieces.push({ text: each, at, plain: scalar && !/^["']/.test(each) });
    scalar = false;
    at += each.length;
  }
  return pieces;
}

const lineStart = (text: string, at: number): number => text.lastIndexOf('\n', at - 1) + 1;
const isEmpty = (words: string): boolean => words.trim() === '';
const indentOf = (line: string): number => /^ */.exec(line)?.[0].length ?? 0;

/** Does nothing stand below a line that could be the value of the key on it? */
function nothingBelow(text: string, at: number): boolean {
  const key = indentOf(text.slice(lineStart(text, at)));
  const [, ...below] = text.slice(at).split('\n');
  const next = below.find((line) => !isEmpty(line) && !/^\s*#/.test(line));
  return next === undefined || (indentOf(next) <= key && !/^\s*- /.test(next));
}

/**
 * Where does a mark # take words away that somebody most likely wanted read? Behind words without quotes, on their line or at the head of the line that
 * goes on with them; and between a key and all of its words. A remark on a line by itself, or behind quotes or brackets that are closed, takes nothing.
 * @example wordsCutOff('do: Stay off roof #2.') // => [18]
 * @example wordsCutOff('# Ours.\ndo: "Stay off roof #2."') // => []
 */
export function wordsCutOff(text: string): number[] {
  if (!text.includes('#')) return [];
  const pieces = piecesOf(text).filter(({ text: each }) => !isEmpty(each));
  return pieces.flatMap(({ text: piece, at, plain }, place) => {
    if (plain || !piece.startsWith('#')) return [];
    const before = pieces[place - 1];
    if (!before || before.text.startsWith('#')) return [];
    const start = lineStart(text, at);
    if (before.at >= start) {
      const takes = before.plain || (before.text === ':' && nothingBelow(text, at));
      return takes ? [at] : [];
    }
    // Of the line above, whose words it would go on with were it no remark.
    const above = lineStart(text, Math.max(0, start - 1));
    const goesOn =
      before.plain && before.at + before.text.length > above && at - start > indentOf(text.slice(above));
    return goesOn ? [at] : [];
  });
}

/** A YAML file of an agency's folder: as any other, and no mark # takes words away unsaid. */
export function readLocalYaml(name: string, text: string): YamlFile {
  const file = readYaml(name, text);
  const problems = wordsCutOff(text).map((at): Problem => {
    const start = lineStart(text, at);
    const [rest = ''] = text.slice(at).split(/\r?\n/, 1);
    const shown = rest.length > MOST_SHOWN ? `${rest.slice(0, MOST_SHOWN)}…` : rest;
    return {
      file: name,
      line: text.slice(0, start).split('\n').length,
      column: at - start + 1,
      found: `the mark # among words without quotes: "${shown.replace(/\p{C}/gu, '?')}" would be left out`,
      expected: 'double quotes about all of the words; a remark of your own on a line by itself',
      check: 'local-words',
    };
  });
  const [first] = problems;
  if (!first) return file;
  // What the parser says farther down may only follow from what was taken away.
  const before = file.problems.filter(({ line }) => line < first.line);
  return { ...file, value: undefined, problems: [...before, ...problems] };
}
