import { ASKED_ANEW, headersFor, KEPT_FOR_GOOD, MORE_KINDS, NEVER_CHANGES } from './headers.ts';

/** What stands for each name in double braces, line by line. */
const fillings = (styleSum: string): Readonly<Record<string, readonly string[]>> => ({
  headers: headersFor(styleSum).map(([name, value]) => `add_header ${name} "${value}" always;`),
  'more-kinds': MORE_KINDS.map(([kind, endings]) => `${kind.padEnd(25)} ${endings.join(' ')};`),
  'never-changes': [NEVER_CHANGES],
  'kept-for-good': [KEPT_FOR_GOOD],
  'asked-anew': [ASKED_ANEW],
});

/**
 * A recipe of content/hosting with the headers filled in: they are written in one place, and every recipe takes them from there. What is
 * several lines takes the indent of the line it stands on. An unknown name stops the build.
 * @param styleSum of the style that stands in pages, which the headers allow
 */
export function filledRecipe(text: string, styleSum: string): string {
  const known = fillings(styleSum);
  return text
    .split('\n')
    .map((line) => {
      const indent = /^\s*/.exec(line)?.[0] ?? '';
      return line.replace(/\{\{(.*?)\}\}/g, (_, name: string) => {
        const lines = known[name];
        if (!lines) throw new Error(`found {{${name}}}, expected one of ${Object.keys(known).join(', ')}`);
        return lines.join(`\n${indent}`);
      });
    })
    .join('\n');
}
