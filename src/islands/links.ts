/**
 * Every address of the site is made here. What is built begins at the root, and is made relative to its page once all pages stand
 * (src/built/relative.ts), so that one build serves under any path; a script in the browser begins where its page says that the site does.
 */
const root = typeof document === 'undefined' ? '/' : (document.documentElement.dataset.root ?? '/');

/** The address of a page. @example page('plan') // => '/plan/' */
export const page = (path: string): string => (path === '' ? root : `${root}${path}/`);

/** The address of a file. */
export const file = (path: string): string => `${root}${path}`;

/**
 * The page of a rule.
 * @example rulePage('access.hose.reach').endsWith('/rules/access.hose.reach/') // => true
 */
export const rulePage = (id: string): string => page(`rules/${id}`);

/** The page of a document that values are drawn from. */
export const sourcePage = (id: string): string => page(`sources/${id}`);

/** Where a caution stands with its source: the page of its topic, at its own place. */
export const cautionPage = (id: string): string => {
  const [, topic = '', ...name] = id.split('.');
  return `${page(`cautions/${topic}`)}#${name.join('.')}`;
};

/** The page of a calculation. */
export const calculationPage = (name: string): string => page(`calculators/${name}`);

/** The example of a calculation, worked out, with its common cases. */
export const examplePage = (name: string): string => page(`calculators/${name}/example`);
