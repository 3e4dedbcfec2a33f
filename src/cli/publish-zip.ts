import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { dateTold } from '../built/build-date.ts';
import { filesIn } from '../built/files.ts';
import { zipName, zipOf } from '../built/zip.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { InputError, run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent publish:zip',
  does: 'Packs the built site into one zip, named after the edition of its rulebook.',
  given: A_FOLDER,
};

/** When the site was built: what SOURCE_DATE_EPOCH says; else the date of its front page. */
function builtOn(folder: string): Date {
  try {
    return dateTold(process.env.SOURCE_DATE_EPOCH) ?? statSync(join(folder, 'index.html')).mtime;
  } catch (error) {
    throw new InputError(error instanceof Error ? error.message : String(error));
  }
}

await run(COMMAND, (given) => {
  const folder = builtFolder(COMMAND, given);
  const { version } = JSON.parse(readFileSync(join(folder, 'data/rulebook.json'), 'utf8'));
  const files = new Map(filesIn(folder).map((file) => [file, readFileSync(join(folder, file))]));
  const bytes = zipOf(files, builtOn(folder));
  const name = zipName(version);
  writeFileSync(name, bytes);
  console.log(
    `${name}: ${files.size} files, ${(bytes.length / 1e6).toFixed(1)} MB. Unpack it where the site is to stand.`,
  );
  return 0;
});
