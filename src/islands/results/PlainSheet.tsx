import type { JSX } from 'preact';
import { type Drawing, svgShape, svgText } from '../../drawings/svg.ts';
import { rulePage } from '../links.ts';
import { isBuilding } from './Fold.tsx';
import { SheetFrame, type SheetProps } from './SheetFrame.tsx';

const written = (drawing: Drawing, name: string) => ({
  __html: svgText(svgShape(drawing, name, rulePage)),
});

/** A drawing on a page that is read. */
export const PlainSheet = ({ name, caption, wide, narrow }: SheetProps): JSX.Element => (
  <SheetFrame caption={caption} wide={wide}>
    <div class="wide" dangerouslySetInnerHTML={written(wide, `${name}-wide`)} />
    <div class="narrow" dangerouslySetInnerHTML={written(narrow, `${name}-narrow`)} />
  </SheetFrame>
);

/**
 * A drawing beside the answer of a calculator, written whole together with it: one or two such stand on a page and are small, and what
 * draws the many of a job a moment later, and only where they changed, weighs more than they do. The page is built with the upright layout
 * alone, which fits every screen; the wide one comes with the script.
 */
export const SheetOfAnswer = ({ name, caption, wide, narrow }: SheetProps): JSX.Element => (
  <SheetFrame caption={caption} wide={wide}>
    <div class="narrow" dangerouslySetInnerHTML={written(narrow, `${name}-narrow`)} />
    {isBuilding ? null : <div class="wide" dangerouslySetInnerHTML={written(wide, `${name}-wide`)} />}
  </SheetFrame>
);
