import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { type Drawing, svgShape, svgText } from '../../drawings/svg.ts';
import { rulePage } from '../links.ts';
import { Later } from './Later.tsx';
import { redraw } from './redraw.ts';

/** A sheet wider than this is broader than a column of text. */
const BROAD = 720;

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
 * A drawing in two layouts: one for wide screens and paper, one for a phone held upright. The style sheet shows the one that fits, and
 * at "Larger" the same one at twice its size, in a frame that scrolls; without script as with it. The one that is not shown is drawn
 * anew last.
 */
export const Sheet = ({
  name,
  caption,
  wide,
  narrow,
}: {
  readonly name: string;
  readonly caption: string;
  readonly wide: Drawing;
  readonly narrow: Drawing;
}): JSX.Element => (
  <figure class={wide.width > BROAD ? 'drawing broad' : 'drawing'}>
    <details class="larger">
      <summary>Larger</summary>
    </details>
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and not every browser lets the keyboard in by itself */}
    <section class="frame" tabIndex={0} aria-label={wide.title}>
      <Later of={wide}>{() => <Layout size="wide" name={name} drawing={wide} />}</Later>
      <Later of={narrow}>{() => <Layout size="narrow" name={name} drawing={narrow} />}</Later>
    </section>
    <figcaption>
      {wide.title}. {caption}
    </figcaption>
  </figure>
);
