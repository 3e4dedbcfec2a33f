import { nearest } from '../rulebook/nearest.ts';
import { projectQuestions, type Question } from '../train/questions.ts';
import { rulebook } from './rulebook.ts';

/** The questions of every lesson, answered once for all pages of a build. */
export const questions: readonly Question[] = projectQuestions(rulebook);

/** The questions of a lesson. @throws Error at a lesson that has none, naming the page that asks. */
export function questionsOf(lesson: string, page: string): readonly Question[] {
  const found = questions.filter((each) => each.lesson === lesson);
  if (found.length > 0) return found;
  const lessons = [...new Set(questions.map((each) => each.lesson))];
  const guess = nearest(lesson, lessons);
  throw new Error(
    `${page}: found the lesson "${lesson}", expected one of ${lessons.join(', ')}${guess ? `; did you mean "${guess}"?` : ''}`,
  );
}
