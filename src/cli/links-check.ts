import { brokenLinks } from '../built/links.ts';
import { DataError } from '../rulebook/problem.ts';
import { builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const HOW = 'npm run --silent links:check [-- FOLDER], such as dist';

await run(() => {
  const problems = brokenLinks(builtFolder(process.argv.slice(2), HOW));
  if (problems.length > 0) throw new DataError(problems);
  return 0;
});
