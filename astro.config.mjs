import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { buildTargets } from './src/built/oldest-browsers.ts';
import { shippedPackages } from './src/built/shipped.ts';
import { pagePlugins } from './src/remark/page-plugins.ts';
import { loadProject } from './src/rulebook/project.ts';

const { data } = loadProject();

/**
 * What every page needs, what every calculator needs, and what shows a drawing, in a file each: without this each small module would be
 * asked for by itself, and a phone waits for each. A group takes along what it rests on, so the one that rests on least comes first. What
 * only some need, the drawings themselves and the long forms of a job, stays out.
 */
const groups = [
  {
    name: 'page',
    test: /src.(?:components.links|offline.names|islands.(?:own-address|refused-style|rule-card|soon|copy.(?:mount|memory|notice|recall|saved)))\b/,
  },
  {
    name: 'shared',
    test: /node_modules.preact|src.(?:quantity.|calc.declare.(?!fields-reader)|rulebook.(?:rulebook|table|placeholders)\.ts|islands.(?:form.(?!GroupForms)|results.(?!Sheet|PlainSheet|Later|queue|redraw))|islands.(?:book|use-entries|as-typed|calculator.(?:mount|Calculator))\.tsx?)/,
  },
  { name: 'measured-field', test: /src.calc.holes.(?:marks|measured-field)\b/ },
  { name: 'members', test: /src.calc.holes.members\b/ },
  { name: 'flue-rings', test: /src.calc.before.flue-(?:kinds|rings)\b/ },
  { name: 'holes', test: /src.calc.holes.(?:roof|search|lay-out|words|lacks-trusses)\b/ },
  {
    name: 'sheet',
    test: /src.(?:islands.(?:results.(?:PlainSheet|SheetFrame)|calculator.drawn)|drawings.(?:lines|svg))\b/,
  },
];

/** The script of a page by the name of its page alone: the builder’s own name for it, on every page, is longer by 36 letters. */
const entryFileNames = ({ name }) => `_astro/${name.replace(/\.astro_.*/, '')}.[hash].js`;

/**
 * What a script asks for later it asks for plainly: the links for that stand in the pages, where they are found sooner. Said by a plugin,
 * since the site's builder settles it after it has read this file. What the builder would look for links with is then of no use.
 */
const plainImports = {
  name: 'plain-imports',
  enforce: 'pre',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
  load: (id) =>
    id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load();' : undefined,
};

/**
 * JSX as calls of Preact itself, which every page with a form has: its runtime for JSX would be more code, and its calls name the children of
 * each element. Whatever holds JSX is given the two names that the calls need, which no file uses.
 */
const jsx = { runtime: 'classic', pragma: 'jsxElement', pragmaFrag: 'JsxFragment' };
const jsxNames = {
  name: 'jsx-names',
  enforce: 'pre',
  transform: {
    filter: { id: /\.tsx$/ },
    handler: (code) => `import { h as jsxElement, Fragment as JsxFragment } from 'preact'; ${code}`,
  },
};

export default defineConfig({
  trailingSlash: 'always',
  // Words are searched and read aloud as typed: no curly quotes made from inch marks.
  markdown: {
    syntaxHighlight: false,
    processor: unified({
      remarkPlugins: pagePlugins({ data }),
      smartypants: false,
    }),
  },
  // No file is the integration's to transform, which would send each through Babel: the builder writes JSX itself, as said below.
  integrations: [mdx(), preact({ exclude: ['**/*'] })],
  build: { inlineStylesheets: 'never' },
  // No inline script anywhere, and no style but the one that Layout.astro writes into some pages, whose policies name it by its sum.
  // Scripts and style sheets find each other from where they lie, so that the site works under any path.
  vite: {
    build: { assetsInlineLimit: 0, target: buildTargets() },
    experimental: { renderBuiltUrl: () => ({ relative: true }) },
    environments: {
      client: {
        build: { rolldownOptions: { output: { codeSplitting: { groups }, entryFileNames } } },
        // In development the search for dependencies reads JSX by itself, and would ask for React.
        optimizeDeps: { rolldownOptions: { transform: { jsx: { importSource: 'preact' } } } },
      },
    },
    oxc: { jsx },
    plugins: [shippedPackages(), plainImports, jsxNames],
  },
  devToolbar: { enabled: false },
});
