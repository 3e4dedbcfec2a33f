import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from '../built/files.ts';
import { gzipOf } from '../built/gzip.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent publish:gz',
  does: 'Puts a packed copy beside each file of the built site, for a server that sends them as they are.',
  given: A_FOLDER,
};

await run(COMMAND, (given) => {
  const folder = builtFolder(COMMAND, given);
  const made = filesIn(folder).flatMap((file) => {
    const bytes = gzipOf(file, readFileSync(join(folder, file)));
    if (bytes) writeFileSync(join(folder, `${file}.gz`), bytes);
    return bytes ? [bytes.length] : [];
  });
  const total = made.reduce((sum, each) => sum + each, 0);
  console.log(
    `${made.length} files of ${folder} stand beside themselves as .gz, ${(total / 1e6).toFixed(1)} MB in all`,
  );
  return 0;
});
