import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answer } from '../../src/calc/declare/calculation.ts';
import { layout } from '../../src/calc/holes/declaration.ts';
import { format } from '../../src/quantity/format.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { cornersOf, holesIn, isThick, shapesOf } from '../drawings/measure.ts';
import { readXml } from '../drawings/xml.ts';
import { exampleEntries, rules } from '../job/entries.ts';
import { ASTRO, type Checkout, checkout, DIAMETER, type Ended, HOLES, WHILE_IT_BUILDS } from './checkout.ts';

const VERSION = 'rules/rulebook.yaml';

/** The words of a page, without its marks. */
const wordsIn = (html: string): string =>
  html
    .replace(/<(script|style|svg)\b.*?<\/\1>/gs, '')
    .replace(/<[^>]*>/g, '')
    .replace(/\s+/g, ' ');

/** A roof of 14 ft with one truss under its middle: one hole, as near to the middle as the truss lets it. */
const roof = { length: '14 ft', trusses_measured: [{ at: '84 in' }] };
const inWords = ['length=14 ft', 'trusses_measured=[{"at":"84 in"}]'];

/**
 * By hand. One hole serves 14 ft best from the middle, at 84 in, where the truss is. Half of the hole and half of the member, 1.5 in
 * wide, stay clear of each other: more than 3 + 0.75 in from middle to middle for a hole of 6 in, more than 4 + 0.75 in for one of
 * 8 in; on the eighths of the tape 3 7/8 and 4 7/8 in. Of the two places it takes the one nearer the starting end: 80 1/8 and 79 1/8 in.
 * The metal overlaps the hole by 2 in all round, the membrane the metal: 10 and 14 in a side, then 12 and 16 in.
 */
const before = { hole: '6 in', place: '6 ft 8 1/8 in' };
const after = { hole: 8, place: '6 ft 7 1/8 in', metal: 12, membrane: 16 };

test('before the change a hole is 6 in wide, and lies at 6 ft 8 1/8 in', () => {
  expect(format(rules.value('access.roof-holes.diameter'))).toBe(before.hole);
  const read = answer(layout, roof, rules);
  const place = read.ok ? read.value.figures.hole_1 : undefined;
  expect(place && typeof place.value !== 'string' && format(place.value, place.format)).toBe(before.place);
});

describe('one number changed in a rule file, and the site built', () => {
  let copy: Checkout;
  let built: Ended;
  beforeAll(async () => {
    copy = checkout();
    // What is published never changes: a number that moves asks for a new version.
    copy.change(VERSION, `"${rules.version}"`, '"2099.1"');
    copy.change(HOLES, `${DIAMETER}6,`, `${DIAMETER}8,`);
    const generated = await copy.node('src/cli/rules-generate.ts');
    expect(generated).toMatchObject({ code: 0, said: '' });
    built = await copy.node(ASTRO, 'build', '--force');
  }, WHILE_IT_BUILDS);
  afterAll(() => copy.remove());

  test('the site stands', () => {
    expect(built.code, built.out + built.said).toBe(0);
  });

  test.each([
    ['do/patching', 'Check the hole: 8 in across.'],
    ['do/patching', 'Take a square of sheet metal from the kit, 12 in a side.'],
    ['do/patching', 'Take a square of self-adhered membrane, 16 in a side.'],
    ['rules/access.roof-holes.diameter', 'Diameter of a hole 8 in'],
    ['rules/patch.layers.metal-side', 'Side of the metal patch 12 in'],
    ['rules/patch.layers.membrane-side', 'Side of the membrane patch 16 in'],
  ])('the page %s says: %s', (page, words) => {
    const text = wordsIn(copy.read(`dist/${page}/index.html`).replace(/<\/(h1|p|dt|dd|li|span)>/g, ' '));
    expect(text.replace(/ ([.,])/g, '$1')).toContain(words);
  });

  test('the calculator, with the rules that go to the browser, moves the hole', () => {
    const module = copy.read('src/generated/calculation-rules.ts');
    const sent = JSON.parse(module.slice(module.indexOf(' = {') + 3).replace(/;\s*$/, ''));
    const read = answer(layout, roof, openRulebook(sent));
    const place = read.ok ? read.value.figures.hole_1 : undefined;
    expect(place && typeof place.value !== 'string' && format(place.value, place.format)).toBe(after.place);
  });

  test('the scripts of the site hold it', () => {
    const scripts = copy.files('dist/_astro').filter((name) => name.endsWith('.js'));
    const text = scripts.map((name) => copy.read(`dist/_astro/${name}`)).join('\n');
    const held = /Diameter of a hole[`"'],symbol:[`"']dh[`"'],value:\{kind:[`"']exact[`"'],number:(\d+),/g;
    // Once for the job, and once for each calculator that asks for it.
    expect([...new Set([...text.matchAll(held)].map(([, number]) => number))]).toEqual(['8']);
  });

  test.each(['roof-wide', 'roof-narrow'])(
    'the drawing %s shows holes 8 in across under patches of 12 and 16 in',
    (name) => {
      const html = copy.read('dist/plan/index.html');
      const written = html.match(/<svg\b.*?<\/svg>/gs)?.find((svg) => svg.includes(`${name}-title`)) ?? '';
      const root = readXml(written);
      const outline = shapesOf(root).find((each) => each.name === 'path' && isThick(each));
      const [start = [0, 0], end = [0, 0]] = outline ? cornersOf(outline) : [];
      // The roof of the example job is 66 ft long.
      const perInch = Math.hypot(end[0] - start[0], end[1] - start[1]) / 792;
      const holes = holesIn(root);
      expect(holes).toHaveLength(5);
      for (const { radius, squares } of holes) {
        expect((2 * radius) / perInch).toBeCloseTo(after.hole, 1);
        expect(squares.map((side) => Math.round((side / perInch) * 10) / 10)).toEqual([
          after.membrane,
          after.metal,
        ]);
      }
    },
  );

  test('the command line moves the hole, in the calculation and in the job', async () => {
    const calculated = await copy.node('src/cli/calc.ts', 'hole-layout', ...inWords);
    expect(JSON.parse(calculated.out).figures.hole_1.text).toBe(after.place);
    copy.change(
      'public/example-job.json',
      readFileSync('public/example-job.json', 'utf8'),
      JSON.stringify({
        format: 'heel-to-ridge job',
        version: 1,
        ...exampleEntries,
        home: { built: 1979, sections: 'single', length: roof.length },
        roof: { cover: 'metal', trusses_measured: roof.trusses_measured },
        survey: { ...(exampleEntries.survey as Record<string, string>), flues: 'none' },
      }),
    );
    const worked = await copy.node('src/cli/job.ts', 'public/example-job.json');
    expect(JSON.parse(worked.out).rows[0].holes[0].along.text).toBe(after.place);
    const sheet = await copy.node('src/cli/job.ts', 'public/example-job.json', '--text');
    expect(sheet.out).toContain(` 1  at ${after.place} `);
  });
});
