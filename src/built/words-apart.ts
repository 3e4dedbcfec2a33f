/** Elements that a browser sets apart from what comes next, and the index does not. */
const SET_APART = /<\/(?:caption|dt|figcaption|summary|th)>/g;

/** What a page says of itself below its heading, and how the index is asked to hold it by itself. */
const LEAD = '<p class="lead"';
const BY_ITSELF = 'data-pagefind-meta="lead"';

/**
 * A page as the search index is to read it: what stands as head and cell, or as a term and what is said of it, is not one word. Its lead is
 * told by itself, to be weighed more than what stands further down.
 * @example wordsApart('<dt>Applies to</dt><dd>Homes</dd>') // => '<dt>Applies to</dt> <dd>Homes</dd>'
 */
export const wordsApart = (html: string): string =>
  html.replace(SET_APART, '$& ').replaceAll(LEAD, `${LEAD} ${BY_ITSELF}`);
