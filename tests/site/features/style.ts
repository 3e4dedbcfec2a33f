import { type CssNode, parse, walk } from 'css-tree';
import { known, missing } from './support.ts';

/** Every type of value that the data tells apart, by its name, wherever it stands: "color-mix()" stands below colours. */
const typesNamed = (name: string, at: object = known('css', 'types') ?? {}): ReturnType<typeof known>[] =>
  Object.entries(at).flatMap(([key, inside]) =>
    key.startsWith('__') ? [] : [...(key === name ? [inside] : []), ...typesNamed(name, inside)],
  );

/** The browsers that do not know a selector. */
function strangersTo(selector: CssNode): readonly string[] {
  const lacking: string[] = [];
  walk(selector, (node) => {
    if (node.type === 'PseudoClassSelector' || node.type === 'PseudoElementSelector')
      lacking.push(...missing(known('css', 'selectors', node.name)));
  });
  return [...new Set(lacking)];
}

/** What of a style sheet do the oldest browsers not know? Each feature once, with the browsers that lack it. */
export function newInStyle(css: string): Map<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  const note = (name: string, lacking: readonly string[]): void => {
    if (lacking.length > 0) found.set(name, lacking);
  };
  const look = (node: CssNode): void => {
    if (node.type === 'Declaration' && !node.property.startsWith('--') && !node.property.startsWith('-')) {
      const of = known('css', 'properties', node.property);
      note(node.property, missing(of));
      walk(node.value, (value) => {
        if (value.type === 'Identifier')
          note(
            `${node.property}: ${value.name}`,
            missing(known('css', 'properties', node.property, value.name)),
          );
        if (value.type === 'Function') {
          const types = typesNamed(value.name).map((each) => missing(each));
          if (types.length > 0 && types.every((each) => each.length > 0))
            note(`${value.name}()`, types[0] ?? []);
        }
      });
    }
    if (node.type === 'PseudoClassSelector' || node.type === 'PseudoElementSelector')
      note(`:${node.name}`, missing(known('css', 'selectors', node.name)));
    if (node.type === 'NestingSelector') note('nesting', missing(known('css', 'selectors', 'nesting')));
    if (node.type === 'Atrule') note(`@${node.name}`, missing(known('css', 'at-rules', node.name)));
    if (node.type === 'Feature')
      note(`@media ${node.name}`, missing(known('css', 'at-rules', 'media', node.name)));
    if (node.type === 'FeatureRange')
      note('@media range', missing(known('css', 'at-rules', 'media', 'range_syntax')));
    // A browser passes over a whole list for one selector in it that it does not know.
    if (node.type === 'Rule' && node.prelude.type === 'SelectorList') {
      const each = node.prelude.children.toArray().map(strangersTo);
      if (each.some((lacking) => lacking.length === 0))
        note('a selector not known in a list of those that are', [...new Set(each.flat())]);
    }
    if (node.type === 'Rule') {
      const declared = node.block.children.toArray().filter((each) => each.type === 'Declaration');
      const value = (name: string): string =>
        declared
          .flatMap((each) =>
            each.property === name && each.value.type === 'Value' ? each.value.children.toArray() : [],
          )
          .map((each) => (each.type === 'Identifier' ? each.name : ''))
          .join();
      const gap = declared.some(({ property }) => ['gap', 'row-gap', 'column-gap'].includes(property));
      if (gap && value('display').endsWith('flex'))
        note(
          'gap between the items of a flex box',
          missing(known('css', 'properties', 'gap', 'flex_context')),
        );
    }
  };
  walk(parse(css, { parseCustomProperty: false }), look);
  return found;
}
