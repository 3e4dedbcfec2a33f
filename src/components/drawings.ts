import exampleText from '../../public/example-job.json?raw';
import { cavitySection } from '../calc/cavity/section.ts';
import type { Calculation } from '../calc/declare/calculation.ts';
import type { Fields, Values } from '../calc/declare/field.ts';
import { readFields } from '../calc/declare/read-fields.ts';
import { hoseMarkings, marksFrom } from '../calc/marks/declaration.ts';
import { type PatchLayers, patchLayers } from '../calc/patch/layers.ts';
import { bays, baysFrom } from '../calc/ways/bays-declaration.ts';
import { ringsAbout } from '../calc/ways/flue-ring.ts';
import { lanes, lanesFrom } from '../calc/ways/lanes-declaration.ts';
import { cavityDrawing } from '../drawings/cavity.ts';
import { edgeLiftingDrawing } from '../drawings/edge-lifting.ts';
import { flueDamDrawing } from '../drawings/flue-dam.ts';
import { gableOpeningDrawing } from '../drawings/gable-opening.ts';
import { hosePathDrawing } from '../drawings/hose-path.ts';
import type { PageSize } from '../drawings/page-sheet.ts';
import { patchLayersDrawing } from '../drawings/patch-layers.ts';
import { resistanceDrawing } from '../drawings/resistance-across.ts';
import { roofPlan } from '../drawings/roof-plan.ts';
import { screwOrderDrawing } from '../drawings/screw-order.ts';
import { sectionDrawing } from '../drawings/section.ts';
import { sectionSheet } from '../drawings/section-sheet.ts';
import type { Drawing } from '../drawings/svg.ts';
import { trussKindsDrawing } from '../drawings/truss-kinds.ts';
import { rules } from '../islands/rules.ts';
import { readJobFile } from '../job/job-file.ts';
import type { WorkedJob } from '../job/planned.ts';
import { workJob } from '../job/work.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { nearest } from '../rulebook/nearest.ts';

/** A drawing that pages may show, in its two layouts. */
export interface PageDrawing {
  readonly caption: string;
  readonly wide: Drawing;
  readonly narrow: Drawing;
  /** Of two views, the one that a field card shows; it has no room for both. */
  readonly onCard?: 'first' | 'second';
}

function example(): WorkedJob {
  const job = readJobFile(exampleText);
  const plan = job.ok ? workJob(job.value, rules) : job;
  if (!plan.ok) throw new Error(`the example job does not work: ${JSON.stringify(plan.problems)}`);
  return plan.value;
}

/** The example job, worked once for every page that draws it. */
export const examplePlan = example();

function oldDepth({ job }: WorkedJob): Quantity<'length'> {
  if (!job.old.depth) throw new Error('the example job has no old insulation, expected some to draw');
  return job.old.depth;
}

/** The example of a calculator, as its fields are read. */
function exampleOf<F extends Fields>({ name, fields, example }: Calculation<F>): Values<F> {
  const read = readFields(fields, example);
  if (!read.ok) throw new Error(`the example of ${name} can't be read: ${JSON.stringify(read.problems)}`);
  return read.value;
}

/** The patch over the rulebook's own hole, whose sizes are rules too: its drawings lead to them. */
const ownPatch = (): PatchLayers => ({
  ...patchLayers(undefined, rules),
  metal: rules.value('patch.layers.metal-side'),
  membrane: rules.value('patch.layers.membrane-side'),
});

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
  'truss-kinds': () => ({
    caption:
      'The width and the depths of the example home, all to one scale. How many webs there are only illustrates.',
    wide: trussKindsDrawing(examplePlan, rules, 'wide'),
    narrow: trussKindsDrawing(examplePlan, rules, 'narrow'),
  }),
  'hose-path': () => {
    const found = marksFrom(exampleOf(hoseMarkings), rules);
    const draw = (size: PageSize) =>
      hosePathDrawing(
        found,
        { section: examplePlan.section, oldDepth: oldDepth(examplePlan) },
        rules,
        size,
        `hose-path-${size}`,
      );
    return {
      caption:
        'One opening of the example home, each view to its own scale; lengths are level. Crossed: old insulation. Slanted: new fill. From above, the numbers are the order of the pushes, the farthest first; dashed are the trusses, dash-dot is the ridge; a push stops before the ring kept open about a flue. How steeply the hose goes in only illustrates.',
      wide: draw('wide'),
      narrow: draw('narrow'),
      onCard: 'second',
    };
  },
  'edge-lifting': () => {
    const values = exampleOf(bays);
    const found = baysFrom(values, rules);
    const draw = (size: PageSize) =>
      edgeLiftingDrawing(
        found,
        { section: cavitySection(values), oldDepth: values.old_depth ?? oldDepth(examplePlan) },
        rules,
        size,
        `edge-lifting-${size}`,
      );
    return {
      caption:
        'One bay, seen between its trusses, to scale. Crossed: old insulation. How far the edge is lifted, the wall, the block and the trim only illustrate.',
      wide: draw('wide'),
      narrow: draw('narrow'),
    };
  },
  'gable-opening': () => {
    const values = exampleOf(lanes);
    const found = lanesFrom(values, rules);
    const cavity = {
      section: cavitySection(values),
      oldDepth: values.old_depth ?? oldDepth(examplePlan),
      length: values.length,
      rings: ringsAbout(values.flues, values, rules),
    };
    const draw = (size: PageSize) => gableOpeningDrawing(found, cavity, rules, size, `gable-opening-${size}`);
    return {
      caption:
        'The example home, each view to its own scale. “At” is where the hose runs, from the eave. Dashed: the ceiling and the chords of the truss behind the siding. Squares: where the wall is opened; how large each is cut only illustrates. Circle in them: the hose. From above, slanted: what the pushes surely cover; blank: what may be left over; crossed: the ring kept open about a flue.',
      wide: draw('wide'),
      narrow: draw('narrow'),
      onCard: 'first',
    };
  },
  'flue-dam': () => ({
    caption:
      'The flue of the example home, to scale. Crossed: old insulation. Slanted: new fill. The distances are the least; the listing of the appliance or vent governs, and so does local code. How the ceiling and the roof are closed about the flue, the foot of the shield, and how far the fill reaches only illustrate.',
    wide: flueDamDrawing(examplePlan, rules, 'wide', 'flue-dam-wide'),
    narrow: flueDamDrawing(examplePlan, rules, 'narrow', 'flue-dam-narrow'),
    onCard: 'first',
  }),
  'patch-layers': () => {
    const layers = ownPatch();
    return {
      caption: 'Dashed: what lies under the membrane. The lip of the cap is as wide as its maker has it.',
      wide: patchLayersDrawing(layers, 'wide', 'patch-layers-wide'),
      narrow: patchLayersDrawing(layers, 'narrow', 'patch-layers-narrow'),
      onCard: 'second',
    };
  },
  'screw-order': () => {
    const layers = ownPatch();
    return {
      caption:
        'To scale. Drive the four large ones first. Then each run from the middles to its corner, its two sides in turn, so that the metal does not wrinkle.',
      wide: screwOrderDrawing(layers, 'wide'),
      narrow: screwOrderDrawing(layers, 'narrow'),
    };
  },
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

/** A drawing by its name. @throws Error on the page that asks, with the names there are, if there is none of this one. */
export function pageDrawing(name: string, page: string): PageDrawing {
  const make = Object.hasOwn(pageDrawings, name) ? pageDrawings[name] : undefined;
  if (make) return make();
  const names = Object.keys(pageDrawings);
  const guess = nearest(name, names);
  throw new Error(
    `${page}: found the drawing "${name}", expected one of ${names.join(', ')}${guess ? `; did you mean "${guess}"?` : ''}`,
  );
}
