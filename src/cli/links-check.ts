import { brokenLinks } from '../built/links.ts';
import { writtenIn } from '../built/written-in.ts';
import { DataError } from '../rulebook/problem.ts';
import { loadProject } from '../rulebook/project.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent links:check',
  does: 'Stops at every link of the built site that leads nowhere.',
  given: A_FOLDER,
};

await run(COMMAND, (given) => {
  const problems = brokenLinks(builtFolder(COMMAND, given));
  if (problems.length > 0) {
    const own = loadProject().local?.pages ?? [];
    throw new DataError(problems.map((problem) => writtenIn(problem, own)));
  }
  return 0;
});
