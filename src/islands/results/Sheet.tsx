import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { type Drawing, svgShape, svgText } from '../../drawings/svg.ts';
import { rulePage } from '../links.ts';
import { Later } from './Later.tsx';
import { redraw } from './redraw.ts';
import { SheetFrame, type SheetProps } from './SheetFrame.tsx';

/** One layout of a drawing: read from its text once, and from then on changed where it is another. */
function Layout({
  size,
  name,
  drawing,
}: {
  readonly size: 'wide' | 'narrow';
  readonly name: string;
  readonly drawing: Drawing;
}): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const shape = svgShape(drawing, `${name}-${size}`, rulePage);
  const shown = useRef(shape);
  // The same object each time, so that the text is never read again.
  const first = useRef<{ readonly __html: string } | undefined>(undefined);
  first.current ??= { __html: svgText(shape) };
  useLayoutEffect(() => {
    const svg = box.current?.firstElementChild;
    if (svg && shown.current !== shape) redraw(svg, shown.current, shape);
    shown.current = shape;
  });
  return <div ref={box} class={size} dangerouslySetInnerHTML={first.current} />;
}

/**
 * A drawing of a job, among many: drawn again a moment after the answer, and only where it changed. The layout that is not shown comes last;
 * the upright one is worked out by itself, and drawn in its turn, since a large roof at once holds up a key.
 */
export const Sheet = ({
  name,
  caption,
  wide,
  narrow,
}: Omit<SheetProps, 'narrow'> & { readonly narrow: () => Drawing }): JSX.Element => (
  <SheetFrame caption={caption} wide={wide}>
    <Later of={wide}>{() => <Layout size="wide" name={name} drawing={wide} />}</Later>
    <Later of={narrow}>
      {() => {
        const drawing = narrow();
        return <Later of={drawing}>{() => <Layout size="narrow" name={name} drawing={drawing} />}</Later>;
      }}
    </Later>
  </SheetFrame>
);
