import { existsSync } from 'node:fs';
import { brokenLinks } from '../built/links.ts';
import { DataError } from '../rulebook/problem.ts';
import { InputError, run } from './run.ts';

const HOW = 'npm run --silent links:check [-- FOLDER], such as dist';

await run(() => {
  const [folder = 'dist', ...rest] = process.argv.slice(2);
  if (rest.length > 0) throw new InputError(`found ${process.argv.slice(2).join(' ')}, expected ${HOW}`);
  if (!existsSync(folder))
    throw new InputError(`found no folder "${folder}", expected the built site: npm run build`);
  const problems = brokenLinks(folder.replace(/\/+$/, ''));
  if (problems.length > 0) throw new DataError(problems);
  return 0;
});
