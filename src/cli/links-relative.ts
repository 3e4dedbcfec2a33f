import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from '../built/files.ts';
import { relativePage, rootedIn } from '../built/relative.ts';
import { DataError, type Problem } from '../rulebook/problem.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent links:relative',
  does: 'Makes every address of the built site relative to its page.',
  given: A_FOLDER,
};

await run(COMMAND, (given) => {
  const folder = builtFolder(COMMAND, given);
  const names = readdirSync(folder);
  const problems = filesIn(folder).flatMap((file): readonly Problem[] => {
    const [read, at] = [() => readFileSync(join(folder, file), 'utf8'), join(folder, file)];
    if (/\.(js|css|svg|webmanifest)$/.test(file)) return rootedIn(at, read(), names);
    if (!file.endsWith('.html')) return [];
    const before = read();
    const { html, problems } = relativePage(file, before);
    if (html !== before) writeFileSync(at, html);
    return problems.map((each) => ({ ...each, file: at }));
  });
  if (problems.length > 0) throw new DataError(problems);
  return 0;
});
