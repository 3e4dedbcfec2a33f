import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path/posix';
import type { DeclaredAt } from '../rulebook/generate.ts';
import { idsIn } from '../rulebook/references.ts';

const LIST = 'src/calc/calculations.ts';
const IMPORT = /^import (?!type\b)[^;]*?from '(\.[^']+)';/gms;
const DRAWINGS = 'src/islands/calculator/drawings';

/** The files that a file imports, types aside, from the root of the project. */
const importsOf = (file: string): string[] =>
  [...readFileSync(file, 'utf8').matchAll(IMPORT)].map(([, path = '']) => join(dirname(file), path));

/** A file and all that it imports, and they in turn; what was generated names every rule and does not count. */
function reachedFrom(file: string, reached = new Set<string>()): Set<string> {
  if (reached.has(file) || file.startsWith('src/generated/')) return reached;
  reached.add(file);
  for (const each of importsOf(file)) reachedFrom(each, reached);
  return reached;
}

/** A calculation's name, where it is declared and drawn, and the rules and cautions that the code of both names. */
export interface Declared {
  readonly name: string;
  readonly at: DeclaredAt;
  readonly drawing: string | undefined;
  readonly names: ReadonlySet<string>;
}

/**
 * Where is each calculation declared, and of which rules and cautions can it ask? Of all whose ids stand in its code, since an id is
 * always written whole.
 */
export async function declaredCalculations(): Promise<Declared[]> {
  const { calculations } = await import('../calc/calculations.ts');
  const found = await Promise.all(
    importsOf(LIST).map(async (file) =>
      Object.entries((await import(/* @vite-ignore */ `../../${file}`)) as object).map(([as, value]) => ({
        file,
        as,
        value,
      })),
    ),
  );
  return calculations.map((declared) => {
    const at = found.flat().find(({ value }) => value === declared);
    if (!at) throw new Error(`found ${declared.name} in no file that ${LIST} imports, expected it in one`);
    const drawing = `${DRAWINGS}/${declared.name}.ts`;
    const drawn = existsSync(drawing) ? drawing : undefined;
    const files = [at.file, ...(drawn ? [drawn] : [])].flatMap((file) => [...reachedFrom(file)]);
    return {
      name: declared.name,
      at: { file: at.file, as: at.as },
      drawing: drawn,
      names: new Set(files.flatMap((file) => idsIn(readFileSync(file, 'utf8')))),
    };
  });
}
