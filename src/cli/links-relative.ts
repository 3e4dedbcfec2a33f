import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from '../built/files.ts';
import { relativePage, rootedIn } from '../built/relative.ts';
import { DataError, type Problem } from '../rulebook/problem.ts';
import { InputError, run } from './run.ts';

const HOW = 'npm run --silent links:relative [-- FOLDER], such as dist';

await run(() => {
  const [folder = 'dist', ...rest] = process.argv.slice(2);
  if (rest.length > 0) throw new InputError(`found ${process.argv.slice(2).join(' ')}, expected ${HOW}`);
  if (!existsSync(folder))
    throw new InputError(`found no folder "${folder}", expected the built site: npm run build`);
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
