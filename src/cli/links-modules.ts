import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from '../built/files.ts';
import { type Imported, importsOf } from '../built/imports.ts';
import { withModuleLinks } from '../built/module-links.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent links:modules',
  does: 'Links in each page of the built site every script that the page needs.',
  given: A_FOLDER,
};

await run(COMMAND, (given) => {
  const folder = builtFolder(COMMAND, given);
  // A script that a thousand pages share is read once.
  const known = new Map<string, readonly Imported[]>();
  const importsIn = (file: string): readonly Imported[] => {
    const found = known.get(file) ?? importsOf(readFileSync(join(folder, file), 'utf8'));
    known.set(file, found);
    return found;
  };
  for (const page of filesIn(folder).filter((file) => file.endsWith('.html'))) {
    const at = join(folder, page);
    const html = readFileSync(at, 'utf8');
    const linked = withModuleLinks(page, html, importsIn);
    if (linked !== html) writeFileSync(at, linked);
  }
  return 0;
});
