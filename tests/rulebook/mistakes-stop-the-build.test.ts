import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { rules } from '../job/entries.ts';
import { ASTRO, type Checkout, checkout, DIAMETER, HOLES, WHILE_IT_BUILDS } from './checkout.ts';

const PAGE = 'content/en/do/patching.mdx';
const PATCH = 'rules/patch/layers.yaml';

describe('a mistake stops the build, with file, line and column', () => {
  let copy: Checkout;
  beforeAll(() => {
    copy = checkout();
  });
  afterAll(() => copy.remove());

  /** Where some text stands in a file, as line:column. */
  const placeOf = (file: string, text: string): string => {
    const lines = (copy.read(file).split(text)[0] ?? '').split('\n');
    return `${lines.length}:${(lines.at(-1) ?? '').length + 1}`;
  };

  interface Mistake {
    readonly what: string;
    readonly file: string;
    /** What is written, and what instead; the mark § shows where the mistake is to be told. */
    readonly edits: readonly (readonly [from: string, to: string])[];
    readonly told: string;
  }
  const mistakes: readonly Mistake[] = [
    {
      what: 'an unknown unit',
      file: HOLES,
      edits: [[`${DIAMETER}6, unit: in }`, `${DIAMETER}6, unit: §inn }`]],
      told: 'found the unit "inn"',
    },
    {
      what: 'a missing source',
      file: HOLES,
      edits: [
        [
          '  source:\n    kind: practice\n    remark: It matches the lipped cap that plugs it afterwards.\n',
          '',
        ],
        ['title: Diameter of a hole', '§title: Diameter of a hole'],
      ],
      told: 'found no "source"',
    },
    {
      what: 'a source that is not listed',
      file: 'rules/ceiling/board.yaml',
      edits: [['document: doe-loose-fill', 'document: §doe-lose-fill']],
      told: 'found the document "doe-lose-fill"',
    },
    {
      what: 'a wrong id in a formula',
      file: PATCH,
      edits: [
        [
          '      add:\n        - { rule: access.roof-holes.diameter }',
          '      §add:\n        - { rule: access.roof-holes.diametre }',
        ],
      ],
      told: 'found the rule "access.roof-holes.diametre"',
    },
  ];
  test.each(mistakes)('$what in $file', async ({ file, edits, told }) => {
    const undo = edits.map(([from, to]) => copy.change(file, from, to));
    const place = `${file}:${placeOf(file, '§')}`;
    undo.push(copy.change(file, '§', ''));
    // "npm run build" begins with the first, and goes no farther when it fails.
    for (const script of ['src/cli/rules-generate.ts', 'src/cli/rules-check.ts']) {
      const { code, out, said } = await copy.node(script);
      expect([code, out]).toEqual([1, '']);
      expect(said.split('\n').filter((line) => line.includes(told))).toEqual([
        expect.stringMatching(new RegExp(`^${place} {2}found .+ {2}expected .+ {2}\\([a-z-]+\\)$`)),
      ]);
    }
    for (const each of undo.reverse()) each();
  });

  test(
    'a wrong id in a page',
    async () => {
      const from = '<Rule id="access.roof-holes.diameter" />';
      const undo = copy.change(PAGE, from, from.replace('diameter', 'diametre'));
      expect(await copy.node('src/cli/rules-generate.ts')).toMatchObject({ code: 0, said: '' });
      const { code, out, said } = await copy.node(ASTRO, 'build', '--force');
      const place = placeOf(PAGE, '<Rule id="access.roof-holes.diametre"');
      undo();
      expect(code).not.toBe(0);
      expect(out + said).toContain(
        `${PAGE}:${place}  found the rule "access.roof-holes.diametre"  expected an id of the rulebook; did you mean "access.roof-holes.diameter"?`,
      );
      // Astro shows the place beside the file too.
      expect(out + said).toMatch(new RegExp(`Location:\\s+\\S*${PAGE}:${place}`));
    },
    WHILE_IT_BUILDS,
  );

  test('a wrong id in code is an error of its types, and names the id if it is run all the same', () => {
    // @ts-expect-error: there is no such rule, and the compiler knows
    expect(() => rules.value('access.roof-holes.diametre')).toThrow(
      'found no rule "access.roof-holes.diametre"',
    );
    // @ts-expect-error: a range is not one value
    expect(() => rules.value('access.roof-holes.first')).toThrow('of kind between, expected one value');
  });
});
