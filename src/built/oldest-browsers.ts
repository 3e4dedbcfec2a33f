import { readFileSync } from 'node:fs';

/** The oldest version of a browser that the site is written for. */
export interface OldestBrowser {
  /** As browserslist names it. */
  readonly name: string;
  readonly version: string;
}

/**
 * Which browsers must the site run in? As `browserslist` in package.json says, where other tools look too.
 * Phones of 2019, with what their makers last gave them: Chrome 76; Safari of iOS 12.2, past which an iPhone 5s or 6 hardly goes.
 * Firefox renews itself on every such phone; 78 is the first that reads the patterns of letters in any language.
 * @throws Error for a line that is more than a name and a least version.
 */
export function oldestBrowsers(): OldestBrowser[] {
  const { browserslist } = JSON.parse(readFileSync('package.json', 'utf8')) as { browserslist: string[] };
  return browserslist.map((line) => {
    const [, name, version] = /^(\w+) >= ([\d.]+)$/.exec(line) ?? [];
    if (!name || !version)
      throw new Error(`found "${line}" in the list of browsers of package.json, expected "name >= version"`);
    return { name, version };
  });
}

const forTheBuild: Readonly<Record<string, string>> = { ios_saf: 'ios' };

/** The same for the build, which writes scripts and style sheets in words that these browsers know: chrome76, ios12.2. */
export const buildTargets = (): string[] =>
  oldestBrowsers().map(({ name, version }) => `${forTheBuild[name] ?? name}${version}`);
