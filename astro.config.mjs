import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { pagePlugins } from './src/remark/page-plugins.ts';
import { loadProject } from './src/rulebook/project.ts';

const base = '/';
const { data } = loadProject();

export default defineConfig({
  base,
  trailingSlash: 'always',
  // Words are searched and read aloud as typed: no curly quotes made from inch marks.
  markdown: {
    syntaxHighlight: false,
    processor: unified({
      remarkPlugins: pagePlugins({ data, base }),
      smartypants: false,
    }),
  },
  integrations: [mdx(), preact()],
  build: { inlineStylesheets: 'never' },
  // No inline script or style anywhere, so that a host may forbid both.
  vite: { build: { assetsInlineLimit: 0 } },
  devToolbar: { enabled: false },
});
