import { type AnyNode, parse } from 'acorn';
import { known, missing } from './support.ts';

type Names = Readonly<Record<string, object>>;
const interfaces = (): Names[] => [
  known('api') as unknown as Names,
  known('javascript', 'builtins') as unknown as Names,
];

/** For every name of a member, what has one so named: where all of these are too new, the name is. */
const members = new Map<string, ReturnType<typeof known>[]>();
for (const all of interfaces())
  for (const [of, inside] of Object.entries(all))
    for (const [name, feature] of Object.entries(inside))
      if (!name.startsWith('__') && name !== of) members.set(name, [...(members.get(name) ?? []), feature]);

/**
 * What most calls are made to. A method that one of these lacks is told, though something rarer has one so named: that a cache has
 * `matchAll` says nothing for words.
 */
const usual = ['String', 'Array', 'Object', 'Promise', 'RegExp', 'Blob', 'File', 'Element', 'Document'].map(
  (of) => known('javascript', 'builtins', of) ?? known('api', of),
);
const usuallyMissing = (name: string): readonly string[] =>
  usual.map((of) => missing(of?.[name])).find((lack) => lack.length > 0) ?? [];

const isNode = (value: unknown): value is AnyNode =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

/** What of a script do the oldest browsers not know: of its syntax, of what it calls? Each once, with the browsers that lack it. */
export function newInScript(code: string): Map<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  const note = (name: string, lacking: readonly string[]): void => {
    if (lacking.length > 0) found.set(name, lacking);
  };
  const syntax = (name: string, ...way: string[]): void => {
    const feature = known('javascript', ...way);
    if (!feature) throw new Error(`found nothing about ${way.join('.')}, expected it in the data`);
    note(name, missing(feature));
  };
  const look = (node: AnyNode): void => {
    if (node.type === 'ChainExpression') syntax('?.', 'operators', 'optional_chaining');
    if (node.type === 'LogicalExpression' && node.operator === '??')
      syntax('??', 'operators', 'nullish_coalescing');
    if (node.type === 'AssignmentExpression' && ['??=', '||=', '&&='].includes(node.operator))
      syntax(node.operator, 'operators', 'nullish_coalescing_assignment');
    if (node.type === 'PropertyDefinition') syntax('class fields', 'classes', 'public_class_fields');
    if (node.type === 'PrivateIdentifier') syntax('private members', 'classes', 'private_class_fields');
    if (node.type === 'StaticBlock') syntax('static blocks', 'classes', 'static', 'initialization_blocks');
    if (node.type === 'Literal' && 'bigint' in node && node.bigint)
      note('BigInt', missing(known('javascript', 'builtins', 'BigInt')));
    if (node.type === 'Literal' && 'regex' in node && node.regex) {
      if (/\(\?<[=!]/.test(node.regex.pattern))
        syntax('lookbehind', 'regular_expressions', 'lookbehind_assertion');
      if (/\\p\{/.test(node.regex.pattern))
        syntax('\\p{}', 'regular_expressions', 'unicode_character_class_escape');
      if (/\(\?<\w/.test(node.regex.pattern))
        syntax('named groups', 'regular_expressions', 'named_capturing_group');
    }
    // Members are told by their names alone, so only those that are called are looked at, or every field of our own would be taken for one.
    const called = node.type === 'CallExpression' ? node.callee : undefined;
    if (called?.type === 'MemberExpression' && !called.computed && called.property.type === 'Identifier') {
      const { name } = called.property;
      const of = called.object.type === 'Identifier' ? called.object.name : '';
      const own = known('javascript', 'builtins', of, name) ?? known('api', of, `${name}_static`);
      const all = own ? [own] : (members.get(name) ?? []);
      const lack = all.map((each) => missing(each));
      const everywhere = lack.every((each) => each.length > 0) ? (lack[0] ?? []) : [];
      const lacking = everywhere.length > 0 || own ? everywhere : usuallyMissing(name);
      note(own ? `${of}.${name}` : `.${name}`, lacking);
    }
    if (node.type === 'Identifier' && node.name.length > 3) {
      const feature =
        known('javascript', 'builtins', node.name) ??
        (known('api', node.name)?.__compat ? known('api', node.name) : undefined);
      note(node.name, missing(feature));
    }
  };
  const walk = (node: AnyNode): void => {
    look(node);
    for (const [key, value] of Object.entries(node)) {
      // The name of a member or a key names no global.
      if (
        (key === 'property' && 'computed' in node && !node.computed) ||
        (key === 'key' && 'computed' in node && !node.computed)
      ) {
        if (isNode(value) && value.type === 'PrivateIdentifier') look(value);
        continue;
      }
      for (const each of [value].flat()) if (isNode(each)) walk(each);
    }
  };
  walk(parse(code, { ecmaVersion: 'latest', sourceType: 'module' }));
  return found;
}
