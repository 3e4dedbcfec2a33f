import type { Rulebook } from '../../rulebook/rulebook.ts';
import { drawingsFor } from '../calculator/drawings.ts';
import type { DrawnAnswer } from '../calculator/drawn.ts';
import { drawing as bays } from './bays-drawing.ts';
import { drawing as lanes } from './lanes-drawing.ts';

/** What is drawn of a part on the sheets of a job alone: beside all else on it, a calculator's page would grow heavier than it may be. */
const onSheets = [lanes, bays];

/** Which drawings stand beside the answer of a part of a job? Those of its calculator, and its own. */
export const drawingsOfPart = (name: string, values: unknown, rules: Rulebook): readonly DrawnAnswer[] => [
  ...drawingsFor(name, values, rules),
  ...onSheets.flatMap((each) => (each.name === name ? each.draw(values, rules) : [])),
];
