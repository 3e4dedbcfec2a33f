import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { generatedFiles } from '../rulebook/generated-files.ts';
import { loadProject } from '../rulebook/project.ts';
import { run } from './run.ts';

await run(() => {
  const { data, references } = loadProject();
  mkdirSync('src/generated', { recursive: true });
  for (const [file, text] of generatedFiles(data, references)) {
    if (currentText(file) !== text) writeFileSync(file, text);
  }
  return 0;
});

function currentText(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}
