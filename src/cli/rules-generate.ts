import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { localPageProblems } from '../remark/local-page.ts';
import { projectPhotographs } from '../remark/photographs.ts';
import { siteAddresses } from '../remark/site-addresses.ts';
import { calculatorModule, calculatorScript, photographsModule } from '../rulebook/generate.ts';
import { generatedFiles } from '../rulebook/generated-files.ts';
import { DataError } from '../rulebook/problem.ts';
import { loadProject } from '../rulebook/project.ts';
import { run } from './run.ts';

const CALCULATORS = 'src/generated/calculators';
const LOCAL_PAGES = 'src/generated/local-pages';

await run(
  {
    name: 'npm run --silent generate',
    does: 'Writes the types, modules and pages that are made from the rulebook.',
  },
  async () => {
    const { data, local, references } = loadProject();
    const pages = local?.pages ?? [];
    const addresses = siteAddresses(data, local);
    const problems = pages.flatMap((each) => localPageProblems(each, data, addresses));
    if (problems.length > 0) throw new DataError(problems);
    mkdirSync('src/generated', { recursive: true });
    const photographs: [string, string] = [
      'src/generated/photographs.ts',
      photographsModule(projectPhotographs()),
    ];
    for (const [file, text] of [...generatedFiles(data, references), photographs]) writeChanged(file, text);
    // Only now, since the calculations take words from what was just written.
    mkdirSync(CALCULATORS, { recursive: true });
    const { declaredCalculations } = await import('./declared-calculations.ts');
    const declared = await declaredCalculations();
    const written = declared.flatMap(({ name, at, drawing, names }): [file: string, text: string][] => [
      [`${name}.ts`, calculatorModule(data, at, drawing, (id) => names.has(id))],
      [`${name}.astro`, calculatorScript(name)],
    ]);
    for (const [file, text] of written) writeChanged(`${CALCULATORS}/${file}`, text);
    for (const file of readdirSync(CALCULATORS))
      if (!written.some(([name]) => name === file)) rmSync(`${CALCULATORS}/${file}`);
    // Pages of an agency's own are copied to where the site looks for them; those of an earlier build go.
    rmSync(LOCAL_PAGES, { recursive: true, force: true });
    for (const { agency, slug, text } of pages) {
      mkdirSync(`${LOCAL_PAGES}/${agency}`, { recursive: true });
      writeFileSync(`${LOCAL_PAGES}/${agency}/${slug}.mdx`, text);
    }
    return 0;
  },
);

function writeChanged(file: string, text: string): void {
  if (currentText(file) !== text) writeFileSync(file, text);
}

function currentText(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}
