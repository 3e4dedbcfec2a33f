import { loadProject } from '../rulebook/project.ts';
import { run } from './run.ts';

await run(
  { name: 'npm run --silent rules:check', does: 'Says what is wrong in the rule files, or that nothing is.' },
  () => {
    const { base, data, local, files } = loadProject('refused');
    const count = Object.keys(base.rules).length;
    console.log(
      `rulebook ${base.version}: ${count} rules, ${files.cautions.length} cautions, ${files.documents.length} documents, ${files.checks.length} checks, no mistakes`,
    );
    if (local)
      console.log(`rulebook ${data.version}: ${local.changes.length} values set locally, no mistakes`);
    return 0;
  },
);
