import type { z } from 'zod';
import { nearest } from './nearest.ts';
import type { Problem } from './problem.ts';
import type { YamlFile } from './yaml-file.ts';

type Issue = z.core.$ZodIssue;

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
};

const valueAt = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((each, key) => (each as Record<PropertyKey, unknown> | undefined)?.[key], value);

/** Says a schema's complaint in the words of this project, at the line it is about. */
export function explainIssue(
  issue: Issue,
  raw: unknown,
  file: YamlFile,
  base: readonly PropertyKey[],
): Problem {
  // A union that failed in every branch: the branch that got furthest is the one that was meant.
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const branches = issue.errors.filter((branch) => branch.length > 0);
    const deepest = branches.sort((a, b) => depth(b) - depth(a) || a.length - b.length)[0]?.[0];
    if (deepest && deepest.path.length > 0) {
      return explainIssue({ ...deepest, path: [...issue.path, ...deepest.path] } as Issue, raw, file, base);
    }
  }
  const path = [...base, ...issue.path];
  const value = valueAt(raw, issue.path);
  const problem = (found: string, expected: string, place = file.placeOf(path)): Problem => ({
    file: file.name,
    ...place,
    found,
    expected,
    check: 'shape',
  });
  const where = issue.path.length > 0 ? `${issue.path.join('.')} ` : '';
  switch (issue.code) {
    case 'unrecognized_keys': {
      const [key = ''] = issue.keys;
      const known = Object.keys((valueAt(raw, issue.path) ?? {}) as object).filter(
        (each) => !issue.keys.includes(each),
      );
      const guess = nearest(key, known);
      return problem(
        `the unknown key "${key}"`,
        guess ? `the schema's keys; did you mean "${guess}"?` : "the schema's keys",
        file.placeOfKey([...path, key]),
      );
    }
    case 'invalid_value':
      return problem(`${where}${shown(value)}`, `one of ${issue.values.map(String).join(', ')}`);
    case 'invalid_type':
      return problem(`${where}${shown(value)}`, `a ${issue.expected}`);
    default:
      return problem(`${where}${shown(value)}`, issue.message.replace(/^Invalid (input|string): ?/, ''));
  }
}

const depth = (issues: readonly Issue[]): number => Math.max(...issues.map(({ path }) => path.length));
