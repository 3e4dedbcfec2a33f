import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { bareQuantitiesIn } from '../rulebook/bare-quantity.ts';
import { nearest } from '../rulebook/nearest.ts';
import { splitAtPlaceholders } from '../rulebook/placeholders.ts';
import { DataError, type Problem } from '../rulebook/problem.ts';
import type { RulebookData } from '../rulebook/rulebook.ts';
import { valueText } from '../rulebook/value-text.ts';
import type { Piece } from '../rulebook/whose.ts';
import { readYaml } from '../rulebook/yaml-file.ts';
import { explainIssues, namingKnownKeys } from '../rulebook/zod-issue.ts';
import { type FoundAnswer, findAnswer } from './answers.ts';
import { type GivenEntries, givenEntries } from './entries.ts';
import { questionSchema, type RawQuestion } from './schema.ts';

/** A question with its answer, as the rulebook gives it today. */
export interface Question {
  readonly lesson: string;
  /** Its number, counted through all lessons, so that question sheet and answer sheet agree. */
  readonly number: number;
  readonly asks: readonly Piece[];
  readonly answer: FoundAnswer;
  readonly because?: readonly Piece[];
}

const ENTRY = /\{([a-z][a-z0-9_]*)\}/g;

/**
 * Reads the questions of the lessons: a name for each lesson, and under it its questions in order.
 * @throws DataError with every mistake at once, with file and line: a wrong shape, an unknown rule, calculation, figure or entry, a
 * number that no rule and no entry stands behind.
 */
export function readQuestions(file: string, text: string, data: RulebookData): Question[] {
  const yaml = readYaml(file, text);
  const problems: Problem[] = [...yaml.problems];
  const questions: Question[] = [];
  const complain = (
    path: readonly PropertyKey[],
    problem: Omit<Problem, 'file' | 'line' | 'column'>,
  ): void => {
    problems.push({ file, ...yaml.placeOf(path), ...problem });
  };

  /** Words with what stands for their placeholders; what can't be put in is complained of. */
  function piecesOf(words: string, given: GivenEntries, path: readonly PropertyKey[]): Piece[] {
    for (const { text: found } of bareQuantitiesIn(words)) {
      const expected = 'the entry or the rule it comes from, in braces';
      complain(path, { found: `"${found}"`, expected, check: 'bare-quantity' });
    }
    return splitAtPlaceholders(words).map((piece) => {
      if (typeof piece === 'string')
        return piece.replace(ENTRY, (_, name: string) => entry(name, given, path));
      // A way into a list that is given is written like the id of a rule.
      const [first = ''] = piece.rule.split('.');
      if (given.names.includes(first)) return entry(piece.rule, given, path);
      const rule = Object.hasOwn(data.rules, piece.rule) ? data.rules[piece.rule] : undefined;
      const shown = rule && valueText(rule.value, piece.part);
      if (shown !== undefined) return { rule: piece.rule, text: shown };
      const guess = rule ? '' : guessOf(piece.rule, Object.keys(data.rules));
      const expected = `a rule with one value, or an end of a range${guess}`;
      complain(path, { found: piece.written, expected, check: 'placeholder' });
      return piece.written;
    });
  }

  function entry(way: string, given: GivenEntries, path: readonly PropertyKey[]): string {
    const text = given.text(way);
    if (text !== undefined) return text;
    const expected = `a given entry with one value${guessOf(way, given.names)}`;
    complain(path, { found: `{${way}}`, expected, check: 'placeholder' });
    return `{${way}}`;
  }

  function readOne(raw: RawQuestion, lesson: string, path: readonly PropertyKey[]): void {
    const given = givenEntries(raw.answer);
    const asks = piecesOf(raw.asks, given, [...path, 'asks']);
    const because =
      raw.because === undefined ? undefined : piecesOf(raw.because, given, [...path, 'because']);
    const found = findAnswer(raw.answer, data);
    if (!found.ok) {
      for (const { at, ...problem } of found.problems) complain([...path, 'answer', ...at], problem);
      return;
    }
    const number = questions.length + 1;
    questions.push({ lesson, number, asks, answer: found.value, ...(because ? { because } : {}) });
  }

  for (const [lesson, list] of Object.entries((yaml.value ?? {}) as Record<string, unknown>)) {
    if (!Array.isArray(list) || list.length === 0) {
      complain([lesson], {
        found: `no questions in "${lesson}"`,
        expected: 'a list of questions',
        check: 'shape',
      });
      continue;
    }
    for (const [place, raw] of list.entries()) {
      const read = questionSchema.safeParse(raw, { error: namingKnownKeys });
      if (read.success) readOne(read.data, lesson, [lesson, place]);
      else problems.push(...explainIssues(read.error.issues, raw, yaml, [lesson, place]));
    }
  }
  if (problems.length > 0) throw new DataError(problems);
  return questions;
}

const guessOf = (name: string, known: readonly string[]): string => {
  const guess = nearest(name, known);
  return guess ? `; did you mean "${guess}"?` : '';
};

/** The project's own questions, answered from a rulebook. */
export function projectQuestions(data: RulebookData): Question[] {
  const path = join(process.cwd(), 'content/en/train/questions.yaml');
  return readQuestions(relative(process.cwd(), path), readFileSync(path, 'utf8'), data);
}
