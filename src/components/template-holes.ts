import { patchLayers } from '../calc/patch/layers.ts';
import { patchTemplate } from '../drawings/patch-template.ts';
import { amountIn, quantity } from '../quantity/quantity.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import { rulebook } from './rulebook.ts';

const rules = openRulebook(rulebook);
const usual = amountIn(rules.value('access.roof-holes.diameter'), 'in');

/** From a nozzle's width up, in whole inches. */
const inches = Array.from({ length: 8 }, (_, place) => place + 3);

/** The holes beside the rulebook's own that have a marking template: those whose half fits on a sheet of paper. */
export const templateHoles = inches
  .filter((width) => Math.abs(width - usual) > 1e-9)
  .map((width) => ({ way: `${width}-in`, hole: quantity(width, 'in') }))
  .filter(({ hole }) => patchTemplate(patchLayers(hole, rules)) !== undefined);
