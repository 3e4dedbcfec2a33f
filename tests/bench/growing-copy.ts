import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { checkout } from '../rulebook/checkout.ts';
import type { PlainPage } from './plain-pages.ts';

const ASTRO = resolve('node_modules/astro/bin/astro.mjs');

/** Builds the copy with these pages added, up to its search index. */
export type BuildWith = (
  pages: readonly PlainPage[],
) => Promise<{ readonly time: number; readonly built: string }>;

/** A copy of the project to which pages are added, handed over and taken away again. */
export async function growingCopy<T>(use: (build: BuildWith) => Promise<T>): Promise<T> {
  const copy = checkout();
  const ran = async (script: string, ...args: string[]): Promise<void> => {
    const { code, said } = await copy.node(script, ...args);
    if (code !== 0) throw new Error(`found ${script} ending with ${code}, expected 0\n${said}`);
  };
  try {
    return await use(async (pages) => {
      const folder = join(copy.folder, 'content/en/know');
      const names = pages.map(({ slug }) => join(folder, `${slug}.mdx`));
      mkdirSync(folder, { recursive: true });
      for (const [place, { title, body }] of pages.entries())
        writeFileSync(
          names[place] ?? '',
          `---\ntitle: ${JSON.stringify(title)}\nsummary: Words alone.\norder: ${1000 + place}\n---\n\n${body}\n`,
        );
      const start = performance.now();
      await ran('src/cli/rules-generate.ts');
      await ran(ASTRO, 'build', '--force');
      await ran('src/cli/links-relative.ts');
      await ran('src/cli/search-index.ts');
      const time = performance.now() - start;
      for (const name of names) rmSync(name);
      return { time, built: join(copy.folder, 'dist') };
    });
  } finally {
    copy.remove();
  }
}
