/** Every address of the site is made here, from the path it stands under. */
const base = import.meta.env.BASE_URL.replace(/\/?$/, '/');

/** The address of a page. @example page('plan') // => '/plan/' */
export const page = (path: string): string => (path === '' ? base : `${base}${path}/`);

/** The address of a file. */
export const file = (path: string): string => `${base}${path}`;

/** The page of a rule. */
export const rulePage = (id: string): string => page(`rules/${id}`);

/** The page of a document that values are drawn from. */
export const sourcePage = (id: string): string => page(`sources/${id}`);

/** The page of a calculation. */
export const calculationPage = (name: string): string => page(`calculators/${name}`);
