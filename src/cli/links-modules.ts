import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from '../built/files.ts';
import { withModuleLinks } from '../built/module-links.ts';
import { importsWithin } from '../built/page-scripts.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent links:modules',
  does: 'Links in each page of the built site every script that the page needs.',
  given: A_FOLDER,
};

await run(COMMAND, (given) => {
  const folder = builtFolder(COMMAND, given);
  const importsIn = importsWithin(folder);
  for (const page of filesIn(folder).filter((file) => file.endsWith('.html'))) {
    const at = join(folder, page);
    const html = readFileSync(at, 'utf8');
    const linked = withModuleLinks(page, html, importsIn);
    if (linked !== html) writeFileSync(at, linked);
  }
  return 0;
});
