import { tagsIn } from './tags.ts';

/** What tells the search index how to read a page. */
const OF_THE_INDEX = /^data-(pagefind|record)\b/;

/**
 * A built page without the attributes that only the search index reads: no browser asks for them, and each page of the site bore some.
 * @example withoutIndexMarks('<li id="step-1" data-record="step">Cut.</li>') // => '<li id="step-1">Cut.</li>'
 */
export function withoutIndexMarks(html: string): string {
  const marks = tagsIn(html).flatMap(({ attrs, location }) =>
    attrs.flatMap(({ name }) => (OF_THE_INDEX.test(name) ? (location?.attrs?.[name] ?? []) : [])),
  );
  let left = '';
  let from = 0;
  for (const { startOffset, endOffset } of marks) {
    // With the space before it, by which most are parted from what stands before.
    left += html.slice(from, startOffset).replace(/\s$/, '');
    from = endOffset;
  }
  return left + html.slice(from);
}
