import type { JSX } from 'preact';
import { rulePage } from '../../components/links.ts';
import { type Drawing, toSvg } from '../../drawings/svg.ts';

/** A sheet wider than this is broader than a column of text. */
const BROAD = 720;

/**
 * A drawing in two layouts: one for wide screens and paper, one for a phone held upright. The style sheet shows the one that fits, and
 * at "Larger" the same one at twice its size, in a frame that scrolls; without script as with it.
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
      <div class="wide" dangerouslySetInnerHTML={{ __html: toSvg(wide, `${name}-wide`, rulePage) }} />
      <div class="narrow" dangerouslySetInnerHTML={{ __html: toSvg(narrow, `${name}-narrow`, rulePage) }} />
    </section>
    <figcaption>
      {wide.title}. {caption}
    </figcaption>
  </figure>
);
