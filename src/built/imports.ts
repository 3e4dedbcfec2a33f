import { type AnyNode, parse } from 'acorn';

/** What a script asks for besides itself. */
export interface Imported {
  /** As it is written: "./shared.js". */
  readonly from: string;
  /** Asked for only while the script runs. */
  readonly later: boolean;
}

const isNode = (value: unknown): value is AnyNode =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

/** The text that stands in a script as it is; undefined where it is put together as it runs. */
function textOf(node: AnyNode | null | undefined): string | undefined {
  if (node?.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node?.type === 'TemplateLiteral' && node.expressions.length === 0)
    return node.quasis[0]?.value.cooked ?? undefined;
  return undefined;
}

/**
 * What a script of the built site imports, in its order. An import whose address is put together as the script runs can't be
 * told from its text and is left out: the index of the search is one.
 */
export function importsOf(code: string): Imported[] {
  const found: Imported[] = [];
  const look = (node: AnyNode): void => {
    const note = (source: AnyNode | null | undefined, later: boolean): void => {
      const from = textOf(source);
      if (from !== undefined) found.push({ from, later });
    };
    if (
      node.type === 'ImportDeclaration' ||
      node.type === 'ExportNamedDeclaration' ||
      node.type === 'ExportAllDeclaration'
    )
      note(node.source, false);
    if (node.type === 'ImportExpression') note(node.source, true);
    for (const part of Object.values(node) as unknown[])
      for (const each of Array.isArray(part) ? part : [part]) if (isNode(each)) look(each);
  };
  look(parse(code, { ecmaVersion: 'latest', sourceType: 'module' }));
  return found;
}
