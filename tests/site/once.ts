/**
 * Marks a test of what no browser does otherwise than another: sums, words told, pages without script. Chromium runs it; Firefox, which takes
 * longest, only where EVERY_TEST is set.
 */
export const ONCE = { tag: '@once' } as const;
