import type { ComponentChildren, JSX } from 'preact';
import type { Drawing } from '../../drawings/svg.ts';

/** A sheet wider than this is broader than a column of text. */
const BROAD = 720;

/** A drawing in both layouts, with the name that makes its patterns its own on the page, and the words under it. */
export interface SheetProps {
  readonly name: string;
  readonly caption: string;
  readonly wide: Drawing;
  readonly narrow: Drawing;
}

/**
 * The frame of a drawing in two layouts: one for wide screens and paper, one for a phone held upright. The style sheet shows the one that
 * fits, and at "Larger" the same one at twice its size, in a frame that scrolls; without script as with it.
 */
export const SheetFrame = ({
  caption,
  wide,
  children,
}: Pick<SheetProps, 'caption' | 'wide'> & { readonly children: ComponentChildren }): JSX.Element => (
  <figure class={wide.width > BROAD ? 'drawing broad' : 'drawing'}>
    <details class="larger">
      <summary>Larger</summary>
    </details>
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and not every browser lets the keyboard in by itself */}
    <section class="frame" tabIndex={0} aria-label={wide.title}>
      {children}
    </section>
    <figcaption>
      {wide.title}. {caption}
    </figcaption>
  </figure>
);
