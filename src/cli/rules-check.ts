import { loadProject } from '../rulebook/project.ts';
import { run } from './run.ts';

await run(() => {
  const { data, files } = loadProject('refused');
  const count = Object.keys(data.rules).length;
  console.log(
    `rulebook ${data.version}: ${count} rules, ${files.cautions.length} cautions, ${files.documents.length} documents, ${files.checks.length} checks, no mistakes`,
  );
  return 0;
});
