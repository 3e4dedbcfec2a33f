/** Elements that a browser sets apart from what comes next, and the index does not. */
const SET_APART = /<\/(?:caption|dt|figcaption|summary|th)>/g;

/**
 * A page as the search index is to read it: what stands as head and cell, or as a term and what is said of it, is not one word.
 * @example wordsApart('<dt>Applies to</dt><dd>Homes</dd>') // => '<dt>Applies to</dt> <dd>Homes</dd>'
 */
export const wordsApart = (html: string): string => html.replace(SET_APART, '$& ');
