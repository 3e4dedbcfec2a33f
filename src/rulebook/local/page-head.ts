import { z } from 'zod';
import type { Problem } from '../problem.ts';
import { explainIssues, namingKnownKeys } from '../zod-issue.ts';
import { readLocalYaml } from './local-yaml.ts';
import { plainlySeen } from './schema.ts';

const headSchema = z.strictObject({
  /** The heading of the page. */
  title: z.string().trim().min(1),
  /** What it tells, in a sentence. */
  summary: z.string().trim().min(1),
});

export type PageHead = z.infer<typeof headSchema>;

const HEAD = /^---\r?\n([\s\S]*?)\r?\n---[ \t]*(\r?\n|$)/;

/** The head of an agency's page, its title and summary, and the text below it with as many lines before it; or what is wrong with it. */
export function readPageHead(
  file: string,
  text: string,
): { readonly head?: PageHead; readonly body: string; readonly problems: readonly Problem[] } {
  const at = { file, line: 1, column: 1 };
  const match = HEAD.exec(text);
  if (!match)
    return {
      body: text,
      problems: [
        {
          ...at,
          found: 'no head',
          expected: 'title and summary between two lines of ---',
          check: 'local-page',
        },
      ],
    };
  const blank = match[0].replace(/[^\n]/g, '');
  const body = blank + text.slice(match[0].length);
  // A line more, so that the lines of the head are counted as in the file.
  const yaml = readLocalYaml(file, `\n${match[1] ?? ''}`);
  const hidden = plainlySeen(text)
    ? []
    : [
        {
          ...at,
          found: 'signs that can not be seen',
          expected: 'plain letters, without control signs',
          check: 'local-words',
        },
      ];
  if (yaml.problems.length > 0) return { body, problems: [...yaml.problems, ...hidden] };
  const parsed = headSchema.safeParse(yaml.value, { error: namingKnownKeys });
  return parsed.success
    ? { head: parsed.data, body, problems: hidden }
    : { body, problems: [...explainIssues(parsed.error.issues, yaml.value, yaml, []), ...hidden] };
}
