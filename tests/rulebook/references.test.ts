import { expect, test } from 'vitest';
import { idsIn } from '../../src/rulebook/references.ts';

test.each<[what: string, text: string, ids: string[]]>([
  ['a line of code', "rules.value('access.hose.reach');", ['access.hose.reach']],
  ['each of two, in their order', "f('a.b.c', `d.e.f`)", ['a.b.c', 'd.e.f']],
  ['a word with one point is no id', "import './field.ts'; f('a.b')", []],
  [
    'an example in a docstring asks for nothing',
    "/**\n * @example f('a.b.c') // => 1\n */\nf('d.e.f')",
    ['d.e.f'],
  ],
  [
    'nor does one in a docstring of one line, indented',
    "  /** @example f('a.b.c') // => 1 */\n  f('d.e.f')",
    ['d.e.f'],
  ],
  ['nor a line that is a remark', "  // f('a.b.c')\nf('d.e.f')", ['d.e.f']],
  ['a remark behind code hides none of the code', "f('a.b.c'); // why", ['a.b.c']],
  ['signs of a remark within quoted text hide nothing', "f('/*', 'a.b.c', '*/')", ['a.b.c']],
  ['a list in a page is no remark', '* <Value rule="a.b.c" />', ['a.b.c']],
])('the ids named by %s', (_, text, ids) => expect(idsIn(text)).toEqual(ids));
