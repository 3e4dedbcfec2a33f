import { fleschKincaid } from 'flesch-kincaid';
import type { Nodes } from 'mdast';
import { syllable } from 'syllable';
import type { Problem } from '../rulebook/problem.ts';
import { readYaml } from '../rulebook/yaml-file.ts';
import { treeOf } from './prose-in.ts';

/**
 * The highest school grade that words may ask of their reader: those of a procedure, of a page for when it goes wrong, and of the
 * cautions that stand in both. Other kinds of page are told, not stopped.
 */
export const HIGHEST_GRADE: Readonly<Record<string, number>> = { do: 8, trouble: 8, cautions: 8 };

/** A sentence, and the line of its paragraph. */
export interface Sentence {
  readonly text: string;
  readonly line: number;
}

export interface ReadingEase {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
  /** The grade of a US school, by Flesch and Kincaid; undefined where nothing is said. */
  readonly grade: number | undefined;
}

/** Stands for the value of a rule: as long as most of them are when they are read aloud. */
const SOME_VALUE = 'Six feet';

const sentencesOf = new Intl.Segmenter('en', { granularity: 'sentence' });
const WORD = /[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu;

/** The words of one text. @example wordsOf('Tie it: 6-ply, don’t knot it.').length // => 6 */
export const wordsOf = (text: string): string[] => text.match(WORD) ?? [];

/**
 * The sentences of a page: of its summary, its paragraphs, the items of its lists and the cells of its tables, each of which ends one.
 * Headings are no sentences, and would make a page look easier than it is; cautions are counted by themselves.
 */
export function sentencesIn(source: string): Sentence[] {
  const found: Sentence[] = [];
  const summary = /^summary:\s*(.*)$/m.exec(source);
  if (summary)
    found.push(...sentencesAt(source.slice(0, summary.index).split('\n').length, summary[1] ?? ''));
  const walk = (node: Nodes): void => {
    if (node.type === 'paragraph' || node.type === 'tableCell')
      found.push(...sentencesAt(node.position?.start.line ?? 1, said(node)));
    else if (node.type !== 'heading' && 'children' in node) node.children.forEach(walk);
  };
  walk(treeOf(source));
  return found;
}

/** The sentences of a file of cautions: what each says and what it asks to do. */
export function sentencesInCautions(file: string, source: string): Sentence[] {
  const { value, placeOf } = readYaml(file, source);
  return Object.entries((value ?? {}) as Record<string, { says?: string; do?: string }>).flatMap(
    ([key, caution]) =>
      (['says', 'do'] as const).flatMap((part) =>
        sentencesAt(placeOf([key, part]).line, (caution[part] ?? '').replace(/\{[^}]*\}/g, SOME_VALUE)),
      ),
  );
}

const sentencesAt = (line: number, text: string): Sentence[] =>
  [...sentencesOf.segment(text.replace(/\s+/g, ' '))]
    .filter(({ segment }) => wordsOf(segment).length > 0)
    .map(({ segment }) => ({ text: segment.trim(), line }));

function said(node: Nodes): string {
  if (node.type === 'text' || node.type === 'inlineCode') return node.value;
  if (node.type === 'mdxJsxTextElement' && (node.name === 'Rule' || node.name === 'Worked'))
    return SOME_VALUE;
  return 'children' in node ? node.children.map(said).join('') : ' ';
}

/**
 * How hard are these sentences to read?
 * By hand, Flesch and Kincaid: 0.39 × 3 words a sentence + 11.8 × 1 syllable a word − 15.59 = −2.62.
 * @example readingEase(['Cut the tape.']).grade.toFixed(2) // => '-2.62'
 */
export function readingEase(sentences: readonly string[]): ReadingEase {
  const words = sentences.flatMap(wordsOf);
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  const counts = { sentence: sentences.length, word: words.length, syllable: syllables };
  return {
    words: words.length,
    sentences: sentences.length,
    syllables,
    grade: words.length === 0 ? undefined : fleschKincaid(counts),
  };
}

/** What a page says that is too hard for its kind: the page, with its hardest sentence. */
export function tooHard(kind: string, file: string, sentences: readonly Sentence[]): Problem[] {
  const most = HIGHEST_GRADE[kind];
  const { grade } = readingEase(sentences.map(({ text }) => text));
  if (most === undefined || grade === undefined || grade <= most) return [];
  const gradeOf = ({ text }: Sentence): number => readingEase([text]).grade ?? 0;
  const hardest = [...sentences].sort((a, b) => gradeOf(b) - gradeOf(a))[0];
  return [
    {
      file,
      line: hardest?.line ?? 1,
      column: 1,
      found: `words of grade ${grade.toFixed(1)}, the hardest here: "${hardest?.text ?? ''}"`,
      expected: `grade ${most} or below: shorter sentences, shorter words`,
      check: 'reading-ease',
    },
  ];
}
