import { existsSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { z } from 'zod';
import { bareQuantitiesIn } from '../rulebook/bare-quantity.ts';
import { DataError, type Problem } from '../rulebook/problem.ts';
import { readYaml } from '../rulebook/yaml-file.ts';
import { explainIssues, namingKnownKeys } from '../rulebook/zod-issue.ts';

const words = z.string().trim().min(1);

const photographSchema = z.strictObject({
  /** What is in the picture, as it goes on after "Photograph: ". */
  shows: words,
  /** What there is one of for each, where one picture is not enough: an opening, a room. */
  each: words.optional(),
  /** Before the fill, during it, or after. */
  when: z.enum(['before', 'during', 'after']),
  /** The procedure, by the name of its page in `do`. */
  page: z.string().regex(/^[a-z][a-z0-9-]*$/, 'the name of a page, such as first-visit'),
  /** The way in that alone has it, where its page serves more than one. */
  way: z.enum(['gable end', 'lifted roof edge', 'roof holes']).optional(),
  /** Words that stand in the step it belongs to, and in no other step of that page. */
  step: words,
  /** What somebody looks for in it afterwards. */
  why: words,
  /** Where it comes from that it is wanted. No document has been read that lists them. */
  source: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('practice'), remark: words.optional() }),
    z.strictObject({ kind: z.literal('memory'), remark: words.optional() }),
  ]),
});

/** A photograph that a job is to have, at its step. */
export interface ListedPhotograph extends Omit<z.infer<typeof photographSchema>, 'step'> {
  readonly id: string;
  /** The title of the procedure. */
  readonly title: string;
  /** The number of the step, counted through the page, as its anchor has it. */
  readonly step: number;
  /** The step asks for a photograph itself: its page need not say so again. */
  readonly said: boolean;
}

/** A page of procedures by its name; undefined where there is none. */
export type PageSource = (name: string) => string | undefined;

/** The numbered steps of a procedure, each with all its words. @example stepsIn('1. Look up.\n\n   Good: dry.\n\n2. Go.').length // => 2 */
export function stepsIn(source: string): string[] {
  const steps: string[] = [];
  for (const line of source.split('\n')) {
    const [, first] = /^\d+\.\s+(.*)$/.exec(line) ?? [];
    if (first !== undefined) steps.push(first);
    // What is indented belongs to the step above it.
    else if (/^\s+\S/.test(line) && steps.length > 0) steps.push(`${steps.pop()} ${line.trim()}`);
  }
  return steps;
}

/** Does a step ask for a photograph, or speak of one? */
export const ASKED = /\bphotograph/i;

/**
 * Reads the list of photographs: an id for each, and under it what it shows, when, at which step, and why.
 * @throws DataError with every mistake at once, with file and line: a wrong shape, a page that is none, words that stand in no step of
 * it or in several, a number without a rule.
 */
export function readPhotographs(file: string, text: string, pageNamed: PageSource): ListedPhotograph[] {
  const yaml = readYaml(file, text);
  const problems: Problem[] = [...yaml.problems];
  const found: ListedPhotograph[] = [];
  for (const [id, raw] of Object.entries((yaml.value ?? {}) as Record<string, unknown>)) {
    const complain = (key: string, found: string, expected: string, check: string) =>
      problems.push({ file, ...yaml.placeOf([id, key]), found, expected, check });
    const read = photographSchema.safeParse(raw, { error: namingKnownKeys });
    if (!read.success) {
      problems.push(...explainIssues(read.error.issues, raw, yaml, [id]));
      continue;
    }
    for (const key of ['shows', 'why'] as const)
      for (const { text: bare } of bareQuantitiesIn(read.data[key]))
        complain(key, `"${bare}"`, 'words without a number that has a unit', 'bare-quantity');
    const source = pageNamed(read.data.page);
    if (source === undefined) {
      complain('page', `"${read.data.page}"`, 'the name of a page in content/en/do', 'unknown-page');
      continue;
    }
    const steps = stepsIn(source);
    const at = steps.flatMap((each, place) => (each.includes(read.data.step) ? [place] : []));
    const [place] = at;
    if (place === undefined || at.length > 1) {
      const where = at.length === 0 ? 'no step' : `${at.length} steps`;
      complain(
        'step',
        `words that stand in ${where} of "${read.data.page}"`,
        'words of one step',
        'unknown-step',
      );
      continue;
    }
    found.push({
      ...read.data,
      id,
      title: /^title: (.*)$/m.exec(source)?.[1] ?? read.data.page,
      step: place + 1,
      said: ASKED.test(steps[place] ?? ''),
    });
  }
  if (problems.length > 0) throw new DataError(problems);
  return found;
}

/** The project's own procedures. */
export const projectPage: PageSource = (name) => {
  const path = join(process.cwd(), `content/en/do/${name}.mdx`);
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
};

/** The project's own list. */
export function projectPhotographs(): ListedPhotograph[] {
  const path = join(process.cwd(), 'content/en/photographs.yaml');
  return readPhotographs(relative(process.cwd(), path), readFileSync(path, 'utf8'), projectPage);
}
