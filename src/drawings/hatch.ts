import { type Shape, shape } from './svg.ts';

/** Hatches told apart by their form, not by a colour: old insulation crossed, new fill in slanted strokes. */
const strokes = {
  'new-fill': { size: 8, d: 'M-2 2L2 -2M0 8L8 0M6 10L10 6' },
  'old-insulation': { size: 8, d: 'M0 0L8 8M8 0L0 8' },
} as const;

export type Hatch = keyof typeof strokes;

/** The pattern's id inside a drawing of this name. */
export const hatchId = (drawing: string, hatch: Hatch): string => `${drawing}-${hatch}`;

/** The definitions of both hatches for a drawing of this name. */
export const hatches = (drawing: string): Shape =>
  shape(
    'defs',
    {},
    ...(Object.keys(strokes) as Hatch[]).map((hatch) =>
      shape(
        'pattern',
        {
          id: hatchId(drawing, hatch),
          width: strokes[hatch].size,
          height: strokes[hatch].size,
          patternUnits: 'userSpaceOnUse',
        },
        shape('path', { d: strokes[hatch].d, stroke: 'currentColor', 'stroke-width': 0.7 }),
      ),
    ),
  );
