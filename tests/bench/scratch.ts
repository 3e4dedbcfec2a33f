import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { PlainPage } from './plain-pages.ts';

/** A site builder in a folder of its own. */
export interface Builder {
  readonly name: string;
  /** Its packages with their versions. */
  readonly packages: Readonly<Record<string, string>>;
  /** Everything it needs besides the pages. */
  readonly files: Readonly<Record<string, string>>;
  /** Where a page goes, and what stands above its words. */
  readonly page: (page: PlainPage) => readonly [file: string, head: string];
}

const layout = `---
import './site.css';
const { title } = Astro.props.frontmatter;
---
<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <title>{title}</title>
  </head>
  <body><main><h1>{title}</h1><slot /></main></body>
</html>
`;
const style =
  'body{font:1rem/1.5 system-ui,sans-serif;margin:0 auto;max-width:44rem;padding:1rem}h1,h2,h3{line-height:1.2}a{color:#05c}table{border-collapse:collapse}td,th{border:1px solid #999;padding:.3rem}';

const title = (page: PlainPage): string => `title: ${JSON.stringify(page.title)}`;

const astro = { astro: '7.3.5', '@astrojs/markdown-remark': '7.3.1' };

/** The least that builds the same pages: no search, no theme. */
export const bareAstro: Builder = {
  name: 'bare Astro with MDX',
  packages: { ...astro, '@astrojs/mdx': '8.0.2' },
  files: {
    'astro.config.mjs':
      "import { unified } from '@astrojs/markdown-remark';\nimport mdx from '@astrojs/mdx';\nexport default { markdown: { syntaxHighlight: false, processor: unified({ smartypants: false }) }, build: { inlineStylesheets: 'never' }, integrations: [mdx()] };\n",
    'src/layouts/Plain.astro': layout,
    'src/layouts/site.css': style,
  },
  page: (page) => [`src/pages/${page.slug}.mdx`, `layout: ../layouts/Plain.astro\n${title(page)}`],
};

/** What documentation is often built with: theme, menu, search. */
export const starlight: Builder = {
  name: 'Starlight',
  packages: { ...astro, '@astrojs/starlight': '0.42.4' },
  files: {
    'astro.config.mjs':
      "import { unified } from '@astrojs/markdown-remark';\nimport starlight from '@astrojs/starlight';\nexport default { markdown: { processor: unified() }, integrations: [starlight({ title: 'Pages' })] };\n",
    'src/content.config.ts':
      "import { defineCollection } from 'astro:content';\nimport { docsLoader } from '@astrojs/starlight/loaders';\nimport { docsSchema } from '@astrojs/starlight/schema';\nexport const collections = { docs: defineCollection({ loader: docsLoader(), schema: docsSchema() }) };\n",
  },
  page: (page) => [`src/content/docs/${page.slug}.mdx`, title(page)],
};

export interface Scratch {
  /** Builds these pages and no others; how long that takes, in milliseconds. */
  readonly build: (pages: readonly PlainPage[]) => number;
  /** The folder that was built. */
  readonly built: string;
}

/** Installs a site builder in a folder below that of the system, hands it over, and takes it away again. */
export async function withBuilder<T>(builder: Builder, use: (scratch: Scratch) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const write = (name: string, text: string): void => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  };
  const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' };
  const ran = (command: string, args: readonly string[]) =>
    execFileSync(command, args, { cwd: folder, env, stdio: 'pipe' });
  try {
    for (const [name, text] of Object.entries(builder.files)) write(name, text);
    write('package.json', JSON.stringify({ private: true, type: 'module', dependencies: builder.packages }));
    ran('npm', ['install', '--no-audit', '--no-fund', '--include=prod', '--loglevel=error']);
    return await use({
      built: join(folder, 'dist'),
      build: (pages) => {
        const written = pages.map((page) => {
          const [name, head] = builder.page(page);
          write(name, `---\n${head}\n---\n\n${page.body}\n`);
          return name;
        });
        const start = performance.now();
        ran(process.execPath, ['node_modules/astro/bin/astro.mjs', 'build', '--force']);
        const time = performance.now() - start;
        for (const name of written) rmSync(join(folder, name));
        return time;
      },
    });
  } finally {
    rmSync(folder, { recursive: true, maxRetries: 3 });
  }
}
