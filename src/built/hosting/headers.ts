import { policyForHeader } from './policy.ts';

/** What no page asks a browser for, and nothing that gets into a page may. */
const unused: readonly string[] = ['camera', 'geolocation', 'microphone', 'payment', 'usb'];

/** What a host sends with every answer, "no such page" among them. @param styleSum of the style that stands in pages */
export const headersFor = (styleSum: string): readonly (readonly [name: string, value: string])[] => [
  ['Content-Security-Policy', policyForHeader(styleSum)],
  ['X-Content-Type-Options', 'nosniff'],
  ['Referrer-Policy', 'no-referrer'],
  ['Permissions-Policy', unused.map((each) => `${each}=()`).join(', ')],
  ['Cross-Origin-Opener-Policy', 'same-origin'],
  ['Cross-Origin-Resource-Policy', 'same-origin'],
];

/** Files whose names hold a sum of what they hold, so that they never change: as a pattern, under whatever path the site stands. */
export const NEVER_CHANGES = String.raw`/_astro/|/pagefind/(fragment|index|filter)/|\.pf_meta$`;

/**
 * The kinds of files that the site has and that the list which comes with nginx, "mime.types", does not know: each kind with its endings. Search's own are
 * read by its program alone; what a page says for a find is words, the rest is packed already.
 */
export const MORE_KINDS: readonly (readonly [kind: string, endings: readonly string[]])[] = [
  ['text/csv', ['csv']],
  ['text/plain', ['conf', 'sh', 'pf_fragment']],
  ['application/manifest+json', ['webmanifest']],
  ['application/yaml', ['yaml']],
  ['application/octet-stream', ['pagefind', 'pf_meta', 'pf_index', 'pf_filter']],
];

/** How long a browser keeps them; and all else, which is asked for anew each time and not sent again while it is the same. */
export const KEPT_FOR_GOOD = 'public, max-age=31536000, immutable';
export const ASKED_ANEW = 'no-cache';
