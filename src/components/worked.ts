import { calculationNamed } from '../calc/calculations.ts';
import { exampleFigure } from '../calc/declare/example-figure.ts';
import { calculationPage } from '../islands/links.ts';
import { watched } from '../islands/rules.ts';
import { format } from '../quantity/format.ts';
import { rulesBehind } from '../quantity/working.ts';
import { setBehind } from './local.ts';

/** A figure that a calculation gives for its own example, as pages show it. @throws Error that names the page, for an unknown calculation. */
export function workedFigure(of: string, figure: string, page: string) {
  const declared = calculationNamed(of);
  if (!declared) throw new Error(`${page}: found no calculation "${of}", expected one of the calculators`);
  const { result, asked } = watched((rules) => exampleFigure(declared, figure, rules));
  const { label, value, format: options } = result;
  return {
    label,
    text: typeof value === 'string' ? value : format(value, options),
    calculator: declared.title,
    href: calculationPage(of),
    set: setBehind(typeof value === 'string' ? asked : rulesBehind(value)),
  };
}
