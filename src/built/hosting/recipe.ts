import { ASKED_ANEW, headers, KEPT_FOR_GOOD, NEVER_CHANGES } from './headers.ts';

/** What stands for each name in double braces, line by line. */
const fillings: Readonly<Record<string, readonly string[]>> = {
  headers: headers.map(([name, value]) => `add_header ${name} "${value}" always;`),
  'never-changes': [NEVER_CHANGES],
  'kept-for-good': [KEPT_FOR_GOOD],
  'asked-anew': [ASKED_ANEW],
};

/**
 * A recipe of content/hosting with the headers filled in: they are written in one place, and every recipe takes them from there. What is
 * several lines takes the indent of the line it stands on. An unknown name stops the build.
 */
export const filledRecipe = (text: string): string =>
  text
    .split('\n')
    .map((line) => {
      const indent = /^\s*/.exec(line)?.[0] ?? '';
      return line.replace(/\{\{(.*?)\}\}/g, (_, name: string) => {
        const lines = fillings[name];
        if (!lines) throw new Error(`found {{${name}}}, expected one of ${Object.keys(fillings).join(', ')}`);
        return lines.join(`\n${indent}`);
      });
    })
    .join('\n');
