import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from '../built/files.ts';
import { zipName, zipOf } from '../built/zip.ts';
import { builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const HOW = 'npm run --silent publish:zip [-- FOLDER], such as dist';

await run(() => {
  const folder = builtFolder(process.argv.slice(2), HOW);
  const { version } = JSON.parse(readFileSync(join(folder, 'data/rulebook.json'), 'utf8'));
  const files = new Map(filesIn(folder).map((file) => [file, readFileSync(join(folder, file))]));
  const bytes = zipOf(files);
  const name = zipName(version);
  writeFileSync(name, bytes);
  console.log(
    `${name}: ${files.size} files, ${(bytes.length / 1e6).toFixed(1)} MB. Unpack it where the site is to stand.`,
  );
  return 0;
});
