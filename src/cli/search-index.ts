import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { gunzipSync } from 'node:zlib';
import { close, createIndex } from 'pagefind';
import { filesIn } from '../built/files.ts';
import { withoutIndexMarks } from '../built/index-marks.ts';
import { withLongNames } from '../built/long-names.ts';
import { recordsIn } from '../built/records.ts';
import { type IndexEntry, SEARCH_PAGE, withSearchLinks } from '../built/search-links.ts';
import { inSmallParts, type SearchPart } from '../built/search-parts.ts';
import { wordsApart } from '../built/words-apart.ts';
import { projectTerms } from '../remark/terms.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent search:index',
  does: 'Writes the index of the search into the built site.',
  given: A_FOLDER,
};

/**
 * What nobody looks for by its words: the arithmetic of an example, the way back, heads of tables, what a button does. Pages say of more,
 * such as lists of checks, that search leaves it out.
 */
const LEFT_OUT = ['.working', '.check table', '.over', 'thead', 'button'];

/** Where the index has what each page says, a file for each. */
const FRAGMENTS = 'pagefind/fragment';

/** Its steps are found in the procedure that it is made from. */
const CARDS = 'cards/';

await run(COMMAND, async (given) => {
  const folder = builtFolder(COMMAND, given);
  const { index, errors } = await createIndex({ excludeSelectors: LEFT_OUT });
  if (!index) throw new Error(errors.join('\n'));
  const terms = projectTerms();
  // Not waited for one by one: the indexer is a process of its own, and works while the next page is read.
  const added: Promise<{ readonly errors: string[] }>[] = [];
  for (const file of filesIn(folder).filter((name) => name.endsWith('.html') && !name.startsWith(CARDS))) {
    // It is handed what was added so far.
    await setImmediate();
    const html = readFileSync(join(folder, file), 'utf8');
    // Pages that are not to be found may hold parts that are.
    if (html.includes(' data-pagefind-body'))
      added.push(index.addHTMLFile({ sourcePath: file, content: withLongNames(wordsApart(html), terms) }));
    for (const record of recordsIn(`/${file.replace(/index\.html$/, '')}`, html)) {
      const { url, kind, title, page, content } = record;
      added.push(
        index.addCustomRecord({
          url,
          content,
          language: 'en',
          // A step is named by its whole first sentence. Weighed as a title, it would stand before the page whose title has the word.
          meta: { [kind === 'term' ? 'title' : 'first']: title, kind, page },
          filters: { kind: [kind] },
        }),
      );
    }
    writeFileSync(join(folder, file), withoutIndexMarks(html));
  }
  const told = (await Promise.all(added)).flatMap(({ errors }) => errors);
  told.push(...(await index.writeFiles({ outputPath: join(folder, 'pagefind') })).errors);
  await close();
  // Search reads what a page says for a find packed or plain. Plain, a thousand of them side by side pack better in the parcels of the
  // copy than each by itself, and a host packs each on its way.
  for (const name of readdirSync(join(folder, FRAGMENTS))) {
    const at = join(folder, FRAGMENTS, name);
    writeFileSync(at, gunzipSync(readFileSync(at)));
  }
  if (told.length > 0) throw new Error(told.join('\n'));
  const parts = makePartsSmall(join(folder, 'pagefind'));
  const page = join(folder, SEARCH_PAGE);
  const entry = readFileSync(join(folder, 'pagefind/pagefind-entry.json'), 'utf8');
  const filters = readdirSync(join(folder, 'pagefind/filter'));
  writeFileSync(page, withSearchLinks(readFileSync(page, 'utf8'), entry, filters, parts));
  return 0;
});

/** Writes the parts of an index anew, its list and its entry, and gives the parts by their first words. */
function makePartsSmall(at: string): readonly SearchPart[] {
  const entryAt = join(at, 'pagefind-entry.json');
  const entry = readFileSync(entryAt, 'utf8');
  const { hash } = (JSON.parse(entry) as IndexEntry).languages.en ?? {};
  const metaAt = (name: string) => join(at, `pagefind.${name}.pf_meta`);
  const partAt = (name: string) => join(at, 'index', `${name}.pf_index`);
  if (hash === undefined)
    throw new Error('found no English in the entry of the index, expected a hash of it');
  const names = readdirSync(join(at, 'index')).map((file) => file.replace(/\.pf_index$/, ''));
  const { meta, name, parts, firstWords } = inSmallParts({
    meta: readFileSync(metaAt(hash)),
    parts: new Map(names.map((each) => [each, readFileSync(partAt(each))])),
  });
  for (const each of names) rmSync(partAt(each));
  for (const [each, file] of parts) writeFileSync(partAt(each), file);
  rmSync(metaAt(hash));
  writeFileSync(metaAt(name), meta);
  writeFileSync(entryAt, entry.replaceAll(hash, name));
  return firstWords;
}
