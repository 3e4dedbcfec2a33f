import type { JSX } from 'preact';
import { type Drawing, svgShape, svgText } from '../../drawings/svg.ts';
import { rulePage } from '../links.ts';
import { SheetFrame, type SheetProps } from './SheetFrame.tsx';

const written = (drawing: Drawing, name: string) => ({
  __html: svgText(svgShape(drawing, name, rulePage)),
});

/**
 * A drawing that is written whole together with its answer: one or two such stand on a page and are small, and what draws the many of a job a
 * moment later, and only where they changed, weighs more than they do.
 */
export const PlainSheet = ({ name, caption, wide, narrow }: SheetProps): JSX.Element => (
  <SheetFrame caption={caption} wide={wide}>
    <div class="wide" dangerouslySetInnerHTML={written(wide, `${name}-wide`)} />
    <div class="narrow" dangerouslySetInnerHTML={written(narrow, `${name}-narrow`)} />
  </SheetFrame>
);
