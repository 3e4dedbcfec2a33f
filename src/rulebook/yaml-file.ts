import { isMap, isPair, isScalar, LineCounter, type Node, parseDocument } from 'yaml';
import type { Problem } from './problem.ts';
import { yamlFaults } from './yaml-fault.ts';

/** A YAML file that remembers on which line each of its values stands. */
export interface YamlFile {
  readonly name: string;
  readonly value: unknown;
  readonly problems: readonly Problem[];
  /** The place of the value at a path; of its nearest existing parent where there is none. */
  readonly placeOf: (path: readonly PropertyKey[]) => { readonly line: number; readonly column: number };
  /** The place of the key at a path, where a key and not its value is at fault. */
  readonly placeOfKey: (path: readonly PropertyKey[]) => { readonly line: number; readonly column: number };
}

/** More aliases than this is a bomb, not a rule file. */
const MOST_ALIASES = 20;

/**
 * Reads the text of a YAML file; mistakes of syntax and keys given twice come back as problems, never thrown.
 * @example readYaml('rules/a/b.yaml', 'x: 1').value // => { x: 1 }
 */
export function readYaml(name: string, text: string): YamlFile {
  const lines = new LineCounter();
  let document: ReturnType<typeof parseDocument>;
  try {
    document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  } catch {
    return unreadable(name);
  }
  const place = (offset: number) => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  const placeOf = (path: readonly PropertyKey[]) => {
    for (let depth = path.length; depth >= 0; depth--) {
      const node = document.getIn(path.slice(0, depth), true) as Node | undefined;
      if (node?.range) return place(node.range[0]);
    }
    return { line: 1, column: 1 };
  };
  const placeOfKey = (path: readonly PropertyKey[]) => {
    const parent = document.getIn(path.slice(0, -1), true);
    const last = path.at(-1);
    if (isMap(parent)) {
      const pair = parent.items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === last);
      if (pair && isScalar(pair.key) && pair.key.range) return place(pair.key.range[0]);
    }
    return placeOf(path);
  };
  const problems = yamlFaults(text, document, (offset) => place(offset).line).map(
    ({ at, found, expected, check }): Problem => ({ file: name, ...place(at), found, expected, check }),
  );
  return { name, value: plainValue(document, problems, name), problems, placeOf, placeOfKey };
}

/** A file that the parser can't get to the end of: it would otherwise end the program instead of being told. */
function unreadable(name: string): YamlFile {
  const place = () => ({ line: 1, column: 1 });
  const problem = {
    file: name,
    ...place(),
    found: 'lists in lists without end',
    expected: 'YAML',
    check: 'yaml',
  };
  return { name, value: undefined, problems: [problem], placeOf: place, placeOfKey: place };
}

function plainValue(document: ReturnType<typeof parseDocument>, problems: Problem[], name: string): unknown {
  if (problems.length > 0) return undefined;
  try {
    const value: unknown = document.toJS({ maxAliasCount: MOST_ALIASES });
    // An alias inside of what it names comes out as a value that holds itself: this throws.
    JSON.stringify(value);
    return value;
  } catch {
    problems.push({
      file: name,
      line: 1,
      column: 1,
      found: 'aliases that unfold without end',
      expected: `at most ${MOST_ALIASES} uses of an alias`,
      check: 'yaml',
    });
    return undefined;
  }
}
