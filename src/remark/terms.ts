import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { z } from 'zod';
import { bareQuantitiesIn } from '../rulebook/bare-quantity.ts';
import { DataError, type Problem } from '../rulebook/problem.ts';
import { readYaml } from '../rulebook/yaml-file.ts';
import { explainIssues, namingKnownKeys } from '../rulebook/zod-issue.ts';

const words = z.string().trim().min(1);

const termSchema = z.strictObject({
  /** The word, as it stands in a sentence. */
  term: words,
  /** Other ways the trade says or writes it, its plural among them. */
  also: z.array(words).optional(),
  /** What crews call it, where this site has its own word. No page is linked by it; search looks for the term in its place. */
  called: z.array(words).optional(),
  /** What it means here, in one or two plain sentences without numbers. */
  means: words,
});

/** A term of the trade. */
export interface Term extends z.infer<typeof termSchema> {
  readonly id: string;
}

/**
 * Reads the glossary: an id for each term, and under it the term, its other forms and its meaning.
 * @throws DataError with every mistake at once, with file and line: a wrong shape, a number without a rule, a form that two terms claim.
 */
export function readTerms(file: string, text: string): Term[] {
  const yaml = readYaml(file, text);
  const problems: Problem[] = [...yaml.problems];
  const terms: Term[] = [];
  const claimed = new Map<string, string>();
  for (const [id, raw] of Object.entries((yaml.value ?? {}) as Record<string, unknown>)) {
    const at = (path: readonly string[]) => ({ file, ...yaml.placeOf([id, ...path]) });
    const read = termSchema.safeParse(raw, { error: namingKnownKeys });
    if (!read.success) {
      problems.push(...explainIssues(read.error.issues, raw, yaml, [id]));
      continue;
    }
    for (const { text: found } of bareQuantitiesIn(read.data.means)) {
      problems.push({
        ...at(['means']),
        found: `"${found}"`,
        expected: 'words without a number that has a unit: a value belongs in a rule',
        check: 'bare-quantity',
      });
    }
    for (const form of [read.data.term, ...(read.data.also ?? []), ...(read.data.called ?? [])].map((each) =>
      each.toLowerCase(),
    )) {
      const other = claimed.get(form);
      if (other !== undefined) {
        problems.push({
          ...at([]),
          found: `"${form}" a second time, as of "${other}"`,
          expected: 'each word to be one term’s',
          check: 'duplicate-term',
        });
      }
      claimed.set(form, id);
    }
    terms.push({ id, ...read.data });
  }
  if (problems.length > 0) throw new DataError(problems);
  return terms;
}

/** The project's own glossary. */
export const projectTerms = (): Term[] => {
  const path = join(process.cwd(), 'content/en/terms.yaml');
  return readTerms(relative(process.cwd(), path), readFileSync(path, 'utf8'));
};
