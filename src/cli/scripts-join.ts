import { createHash } from 'node:crypto';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { filesIn } from '../built/files.ts';
import { joined, MOST_PARTS, ownScriptOf } from '../built/joined-scripts.ts';
import { importsWithin, reachedFrom, scriptsOf } from '../built/page-scripts.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent scripts:join',
  does: 'Makes one script of the many parts of a calculator in the built site, and takes away the parts that are no longer asked for.',
  given: A_FOLDER,
};

/** A calculator’s page. The sheets of a job share nearly all that they run, and who opens one opens the next. */
const CALCULATOR = /^calculators\/.+\/index\.html$/;

await run(COMMAND, async (given) => {
  const folder = builtFolder(COMMAND, given);
  const importsIn = importsWithin(folder);
  const pages = filesIn(folder).filter((file) => file.endsWith('.html'));
  for (const page of pages.filter((file) => CALCULATOR.test(file))) {
    const at = join(folder, page);
    const html = readFileSync(at, 'utf8');
    const own = ownScriptOf(page, html, importsIn);
    if (!own || own.parts <= MOST_PARTS) continue;
    const code = await joined(folder, own);
    const [name = ''] = posix.basename(own.script).split('.');
    const sum = createHash('sha256').update(code).digest('base64url').slice(0, 8);
    const whole = `${posix.dirname(own.script)}/${name}.${sum}.js`;
    writeFileSync(join(folder, whole), code);
    const from = posix.dirname(page);
    writeFileSync(at, html.replace(posix.relative(from, own.script), posix.relative(from, whole)));
  }
  const named = pages.flatMap((page) => scriptsOf(page, readFileSync(join(folder, page), 'utf8')));
  const reached = reachedFrom(named, importsIn, { later: true });
  for (const file of filesIn(folder))
    if (/^_astro\/.+\.js$/.test(file) && !reached.has(file)) rmSync(join(folder, file));
  return 0;
});
