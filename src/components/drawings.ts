import exampleText from '../../public/example-job.json?raw';
import { cavityDrawing } from '../drawings/cavity.ts';
import { resistanceDrawing } from '../drawings/resistance-across.ts';
import { roofPlan } from '../drawings/roof-plan.ts';
import { sectionDrawing } from '../drawings/section.ts';
import { sectionSheet } from '../drawings/section-sheet.ts';
import type { Drawing } from '../drawings/svg.ts';
import { rules } from '../islands/rules.ts';
import { readJobFile } from '../job/job-file.ts';
import type { WorkedJob } from '../job/planned.ts';
import { workJob } from '../job/work.ts';

/** A drawing that pages may show, in its two layouts. */
export interface PageDrawing {
  readonly caption: string;
  readonly wide: Drawing;
  readonly narrow: Drawing;
}

function example(): WorkedJob {
  const job = readJobFile(exampleText);
  const plan = job.ok ? workJob(job.value, rules) : job;
  if (!plan.ok) throw new Error(`the example job does not work: ${JSON.stringify(plan.problems)}`);
  return plan.value;
}

/** The example job, worked once for every page that draws it. */
export const examplePlan = example();

/** The drawings that pages may show, by name; each is made when it is asked for. */
export const pageDrawings: Readonly<Record<string, () => PageDrawing>> = {
  'roof-plan': () => ({
    caption:
      'The example home. Dashed: trusses. Thin: seams. Dash-dot: the ridge, and the ends of each stretch. Squares: the metal patch and the membrane over it.',
    wide: roofPlan(examplePlan, rules, 'across the sheet'),
    narrow: roofPlan(examplePlan, rules, 'down the sheet'),
  }),
  section: () => ({
    caption: 'The example home, to scale.',
    wide: sectionDrawing(examplePlan, sectionSheet(examplePlan, 'wide'), 'section-wide'),
    narrow: sectionDrawing(examplePlan, sectionSheet(examplePlan, 'narrow'), 'section-narrow'),
  }),
  cavity: () => ({
    caption:
      'The example home, to scale. Crossed: old insulation. Dashed: what it hides. The wall, the edge of the roof and the number of webs only illustrate.',
    wide: cavityDrawing(examplePlan, rules, 'wide', 'cavity-wide'),
    narrow: cavityDrawing(examplePlan, rules, 'narrow', 'cavity-narrow'),
  }),
  'resistance-across': () => {
    const [wide, narrow] = [
      resistanceDrawing(examplePlan, rules, sectionSheet(examplePlan, 'wide')),
      resistanceDrawing(examplePlan, rules, sectionSheet(examplePlan, 'narrow')),
    ];
    if (!wide || !narrow) throw new Error('the example job has no R per inch, expected one to draw');
    return {
      caption:
        'The example home, old and new insulation together. Thick: as estimated. Thin: the ends of what is uncertain.',
      wide,
      narrow,
    };
  },
};
