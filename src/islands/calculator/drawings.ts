import type { Rulebook } from '../../rulebook/rulebook.ts';
import { drawing as cavitySection } from './drawings/cavity-section.ts';
import { drawing as hoseMarks } from './drawings/hose-marks.ts';
import { drawing as moisture } from './drawings/moisture.ts';
import { drawing as patchLayers } from './drawings/patch-layers.ts';
import type { Drawn, DrawnAnswer } from './drawn.ts';

/** Every calculation that is drawn. One more is a file in drawings/, named as the calculation is, and a line here. */
export const drawings: readonly Drawn[] = [cavitySection, hoseMarks, moisture, patchLayers];

/** Which drawings stand beside a calculation's answer? None for most; the values must be such that it could be worked out. */
export const drawingsFor = (name: string, values: unknown, rules: Rulebook): readonly DrawnAnswer[] =>
  drawings.find((each) => each.name === name)?.draw(values, rules) ?? [];
