import { describe, expect, test } from 'vitest';
import { patchLayers } from '../../src/calc/patch/layers.ts';
import { rulesOfDrawings } from '../../src/components/drawing-uses.ts';
import { pageDrawings } from '../../src/components/drawings.ts';
import { patchLayersDrawing } from '../../src/drawings/patch-layers.ts';
import { type Drawing, rulesShown, type Shape } from '../../src/drawings/svg.ts';
import { quantity } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const textsOf = (shapes: readonly (Shape | string)[]): Shape[] =>
  shapes.flatMap((each) =>
    typeof each === 'string' ? [] : each.tag === 'text' ? [each] : textsOf(each.children),
  );
/** The words of a drawing that lead to a rule, and where. */
const led = ({ shapes }: Drawing): string[] =>
  textsOf(shapes)
    .filter(({ attributes }) => 'data-rule' in attributes)
    .map(({ attributes, children }) => `${children.join('')}: ${attributes['data-rule']}`)
    .sort();

const METAL = 'patch.layers.metal-side';
const MEMBRANE = 'patch.layers.membrane-side';
const OVERLAP = '2 in: patch.layers.overlap';

describe('a number in a drawing that is a rule’s own leads to it', () => {
  test.each<[name: string, expected: string[]]>([
    [
      'patch-layers',
      [
        `10 in: ${METAL}`,
        `14 in: ${MEMBRANE}`,
        OVERLAP,
        OVERLAP,
        `3 the metal, 10 in square, on a bead: ${METAL}`,
        `5 the membrane, 14 in square: ${MEMBRANE}`,
        '6 in: access.roof-holes.diameter',
        'hole 6 in: access.roof-holes.diameter',
      ],
    ],
    [
      'screw-order',
      [
        `10 in: ${METAL}`,
        '1 in: patch.screws.spacing',
        'dashed: the bead, 3/8 in from the edge,: patch.screws.inset',
      ],
    ],
    ['gable-opening', ['25 ft: access.hose.reach', '25 ft: access.hose.reach']],
  ])('%s', (name, expected) => {
    const { wide, narrow } = (pageDrawings[name] as () => { wide: Drawing; narrow: Drawing })();
    expect(led(wide)).toEqual([...expected].sort());
    expect(led(narrow)).toEqual([...expected].sort());
  });

  test('of a hole that was typed the overlap alone is one', () => {
    const rules = openRulebook(theProject().data);
    const drawing = patchLayersDrawing(patchLayers(quantity(8, 'in'), rules), 'wide', 'a');
    expect(led(drawing)).toEqual([OVERLAP, OVERLAP]);
    expect(rulesShown(drawing)).toEqual(['patch.layers.overlap']);
  });

  test('each drawing is known with the rules that it shows, and those that it is drawn by', () => {
    const shown = new Map(rulesOfDrawings.map(({ name, rules }) => [name, [...rules].sort()]));
    expect(shown.get('gable-opening')).toEqual(['access.hose.reach', 'framing.truss.chord-depth']);
    // Asked for by the section of the hose, a module beside its own.
    expect(shown.get('hose-path')).toContain('framing.truss.chord-depth');
    expect(shown.get('patch-layers')).toContain('patch.layers.overlap');
    expect(shown.get('flue-dam')).toContain('clearance.flue.to-combustibles');
  });
});
