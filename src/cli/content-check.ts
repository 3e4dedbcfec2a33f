import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectProse, projectWords, writtenPages } from '../proofread/project-prose.ts';
import {
  HIGHEST_GRADE,
  readingEase,
  type Sentence,
  sentencesIn,
  sentencesInCautions,
  tooHard,
} from '../proofread/reading-ease.ts';
import { misspelt, speller, WORD_LIST } from '../proofread/spelling.ts';
import { wordListProblems } from '../proofread/word-list.ts';
import { DataError } from '../rulebook/problem.ts';
import { run } from './run.ts';

const CAUTIONS = 'rules/cautions';

const line = (name: string, cells: readonly (string | number)[]): string =>
  name.padEnd(52) + cells.map((cell) => String(cell).padStart(12)).join('');

/** A line of the report: how much is said, and the grade it asks of its reader. */
function row(name: string, sentences: readonly Sentence[], most?: number): string {
  const { words, sentences: count, grade } = readingEase(sentences.map(({ text }) => text));
  const each = count === 0 ? '-' : (words / count).toFixed(1);
  return line(name, [words, count, each, grade?.toFixed(1) ?? '-', most ?? '-']);
}

await run(
  {
    name: 'npm run --silent content:check',
    does: 'Says what is spelt wrong or too hard to read, with a table of how hard each page is.',
  },
  () => {
    const read: readonly { kind: string; file: string; sentences: readonly Sentence[] }[] = [
      ...writtenPages().map(({ kind, file, source }) => ({ kind, file, sentences: sentencesIn(source) })),
      ...readdirSync(CAUTIONS)
        .sort()
        .map((name) => join(CAUTIONS, name))
        .map((file) => ({
          kind: 'cautions',
          file,
          sentences: sentencesInCautions(file, readFileSync(file, 'utf8')),
        })),
    ];
    console.log(line('page', ['words', 'sentences', 'words each', 'grade', 'at most']));
    for (const { kind, file, sentences } of read) console.log(row(file, sentences, HIGHEST_GRADE[kind]));
    const problems = [
      ...read.flatMap(({ kind, file, sentences }) => tooHard(kind, file, sentences)),
      ...wordListProblems(WORD_LIST, readFileSync(WORD_LIST, 'utf8'), speller()),
      ...misspelt(projectProse(), speller(projectWords())),
    ];
    if (problems.length > 0) throw new DataError(problems);
    return 0;
  },
);
