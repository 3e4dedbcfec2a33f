import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { filesIn } from '../built/files.ts';
import { joined, MOST_PARTS, type OwnScript, ownScriptOf } from '../built/joined-scripts.ts';
import { importsWithin, reachedFrom, scriptsOf } from '../built/page-scripts.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent scripts:join',
  does: 'Makes few scripts of the many parts that pages of a job and some calculators have in the built site, and takes away the parts that are no longer asked for.',
  given: A_FOLDER,
};

/** A calculator’s page. Who opens one seldom opens another: each is joined by itself, where it is in many parts. */
const CALCULATOR = /^calculators\/[^/]+\/index\.html$/;

/** A page of a job. They use nearly all the same, and who opens one opens the next: what they share is in two files. */
const OF_A_JOB = /^(plan|recheck)\/(.+\/)?index\.html$/;

await run(COMMAND, async (given) => {
  const folder = builtFolder(COMMAND, given);
  const importsIn = importsWithin(folder);
  const read = (page: string): string => readFileSync(join(folder, page), 'utf8');
  const pages = filesIn(folder).filter((file) => file.endsWith('.html'));
  const owns = pages.flatMap((page): { page: string; own: OwnScript }[] => {
    const own = ownScriptOf(page, read(page), importsIn);
    return own && own.parts.size > MOST_PARTS ? [{ page, own }] : [];
  });
  const together = owns.filter(({ page }) => OF_A_JOB.test(page));
  const alone = owns.filter(({ page }) => CALCULATOR.test(page)).map((each) => [each]);
  for (const group of together.length > 0 ? [together, ...alone] : alone) {
    const { inPlaceOf, made } = await joined(
      folder,
      group.map(({ own }) => own),
    );
    for (const { place, code } of made) writeFileSync(join(folder, place), code);
    for (const { page, own } of group) {
      const from = posix.dirname(page);
      const place = inPlaceOf.get(own.script);
      if (place === undefined) throw new Error(`found no script in place of ${own.script}, expected one`);
      const [before, after] = [posix.relative(from, own.script), posix.relative(from, place)];
      const html = read(page);
      if (!html.includes(before))
        throw new Error(`${page}: found no address "${before}", expected that of its script`);
      writeFileSync(join(folder, page), html.replace(before, after));
    }
  }
  const named = pages.flatMap((page) => scriptsOf(page, read(page)));
  const reached = reachedFrom(named, importsIn, { later: true });
  for (const file of filesIn(folder))
    if (/^_astro\/.+\.js$/.test(file) && !reached.has(file)) rmSync(join(folder, file));
  return 0;
});
