import { existsSync, readFileSync } from 'node:fs';
import { rulesShown } from '../drawings/svg.ts';
import { idsIn } from '../rulebook/references.ts';
import { pageDrawings } from './drawings.ts';

/** A drawing that pages may show, and the rules whose values it tells or is drawn by. */
export interface RulesOfDrawing {
  readonly name: string;
  readonly title: string;
  readonly rules: ReadonlySet<string>;
}

/** The code of a drawing: the module of its name, and those beside it that it imports. */
function codeOf(name: string, seen = new Set<string>()): string {
  const file = `src/drawings/${name}.ts`;
  if (seen.has(name) || !existsSync(file)) return '';
  seen.add(name);
  const text = readFileSync(file, 'utf8');
  const beside = [...text.matchAll(/from '\.\/([a-z-]+)\.ts'/g)].map(([, each = '']) => codeOf(each, seen));
  return [text, ...beside].join('\n');
}

/** The drawings that pages may show, each with the rules whose values stand in it, and those that its code asks for to draw by. */
export const rulesOfDrawings: readonly RulesOfDrawing[] = Object.entries(pageDrawings).map(([name, make]) => {
  const { wide, narrow } = make();
  return {
    name,
    title: wide.title,
    rules: new Set([...rulesShown(wide), ...rulesShown(narrow), ...idsIn(codeOf(name))]),
  };
});
