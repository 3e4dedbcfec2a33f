/** Search is compiled for the browser, which this allows; it allows no text to be run as script. */
export const searchRuns = "'wasm-unsafe-eval'";

/**
 * What a page may load and run: its own site, and no script that stands in the page. Of styles one may stand in it, that of the site, by its
 * sum. A picture may also be one that the page holds itself (blob:), as a photograph that the phone keeps is: no other host can give it such a thing.
 */
const policy = (styleSum?: string): readonly (readonly [directive: string, allowed: string])[] => [
  ['default-src', "'none'"],
  ['script-src', `'self' ${searchRuns}`],
  ['style-src', styleSum === undefined ? "'self'" : `'self' '${styleSum}'`],
  ['img-src', "'self' blob:"],
  ['connect-src', "'self'"],
  ['worker-src', "'self'"],
  ['manifest-src', "'self'"],
  ['object-src', "'none'"],
  ['base-uri', "'none'"],
  ['form-action', "'self'"],
  ['frame-ancestors', "'none'"],
];

/** Browsers heed these in a header only. */
const headerOnly: readonly string[] = ['frame-ancestors'];

const written = (directives: ReturnType<typeof policy>): string =>
  directives.map((each) => each.join(' ')).join('; ');

/** The policy as a header, whole. @param styleSum of the style that stands in pages: "sha256-" and its sum in base 64 */
export const policyForHeader = (styleSum: string): string => written(policy(styleSum));

/** The policy as a page holds it, so that it holds on a host that sends no headers too. @param styleSum of the style that stands in this page */
export const policyForPage = (styleSum?: string): string =>
  written(policy(styleSum).filter(([name]) => !headerOnly.includes(name)));
