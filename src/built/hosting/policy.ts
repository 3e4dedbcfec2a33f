/**
 * What a page may load and run: its own site, and nothing written into the page itself. A picture may also be one that the page holds
 * itself (blob:), as a photograph that the phone keeps is: no other host can give it such a thing. Search is compiled for the browser, which
 * 'wasm-unsafe-eval' allows; it allows no text to be run as script.
 */
const policy: readonly (readonly [directive: string, allowed: string])[] = [
  ['default-src', "'none'"],
  ['script-src', "'self' 'wasm-unsafe-eval'"],
  ['style-src', "'self'"],
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

const written = (directives: typeof policy): string => directives.map((each) => each.join(' ')).join('; ');

/** The policy as a header, whole. */
export const policyForHeader: string = written(policy);

/** The policy as each page holds it, so that it holds on a host that sends no headers too. */
export const policyForPage: string = written(policy.filter(([name]) => !headerOnly.includes(name)));
