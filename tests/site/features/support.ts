import data from '@mdn/browser-compat-data' with { type: 'json' };
import type { CompatStatement, Identifier, SimpleSupportStatement } from '@mdn/browser-compat-data/types';
import { oldestBrowsers } from '../../../src/built/oldest-browsers.ts';

/** Browsers as the data names them. Firefox on the desk: on phones it has no 69 to 78, and what these brought is told at 79. */
const names: Readonly<Record<string, string>> = {
  chrome: 'chrome_android',
  firefox: 'firefox',
  safari: 'safari',
  ios_saf: 'safari_ios',
};
const oldest = oldestBrowsers().map(({ name, version }) => ({ name: names[name] ?? name, version }));

const parts = (version: string): number[] => version.replace('≤', '').split('.').map(Number);
/** Is a version as old as another, or older? */
function upTo(one: string, other: string): boolean {
  const [a, b] = [parts(one), parts(other)];
  for (let place = 0; place < Math.max(a.length, b.length); place += 1) {
    const [x = 0, y = 0] = [a[place], b[place]];
    if (x !== y) return x < y;
  }
  return true;
}

const plain = (each: SimpleSupportStatement): boolean =>
  !each.flags && !each.partial_implementation && !each.prefix && !each.alternative_name;

/** Which of the oldest browsers lack a feature? Those that have it under another name, in part or behind a flag lack it. */
export function lacking({ support }: CompatStatement): string[] {
  return oldest
    .filter(({ name, version }) => {
      const told = (
        support as Record<string, SimpleSupportStatement | SimpleSupportStatement[] | 'mirror' | undefined>
      )[name];
      const statements = told === undefined || told === 'mirror' ? [] : [told].flat();
      if (statements.length === 0) return false;
      return !statements.some(
        (each) =>
          plain(each) &&
          (each.version_added === 'preview' || !each.version_added
            ? false
            : upTo(each.version_added, version)) &&
          (!each.version_removed || !upTo(String(each.version_removed), version)),
      );
    })
    .map(({ name, version }) => `${name} ${version}`);
}

/** A part of the data by its way; undefined where it knows none. */
export function known(...way: string[]): Identifier | undefined {
  let at: unknown = data;
  for (const name of way) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, name)) return undefined;
    at = (at as Record<string, unknown>)[name];
  }
  return at as Identifier;
}

/** What of a feature is lacking where? Nothing where the data does not know it. */
export const missing = (feature: Identifier | undefined): string[] =>
  feature?.__compat ? lacking(feature.__compat) : [];
