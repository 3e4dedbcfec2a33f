import { Component, type ComponentChildren, options } from 'preact';
import { afterPaint } from '../after-paint.ts';
import { soon } from '../soon.ts';
import { type Awaited, DrawingQueue } from './queue.ts';

/** Draws at once what would be drawn in a moment. */
function atOnce(change: () => void): void {
  const before = options.debounceRendering;
  options.debounceRendering = (draw) => draw();
  try {
    change();
  } finally {
    if (before) options.debounceRendering = before;
    else delete options.debounceRendering;
  }
}

/** Figures that are of before for longer than this are seen to be, in milliseconds. */
const BLINK = 300;

let late: ReturnType<typeof setTimeout> | undefined;

/** Says of each answer whether figures in it are of before: at once to what reads it aloud, to who sees it if it lasts. */
function waits(waiting: boolean): void {
  // Browsers remember these, and would look for others through the whole page at every key.
  const answers = document.getElementsByClassName('answers');
  clearTimeout(late);
  if (waiting) {
    for (const each of answers) each.setAttribute('aria-busy', 'true');
    late = setTimeout(() => {
      for (const each of answers) each.classList.add('of-before');
    }, BLINK);
    return;
  }
  for (const each of answers) {
    each.removeAttribute('aria-busy');
    each.classList.remove('of-before');
  }
}

let ofThisPage: DrawingQueue | undefined;

/** The queue of this page; only where a browser runs it. What is printed is of now. */
function queue(): DrawingQueue {
  if (ofThisPage) return ofThisPage;
  const made = new DrawingQueue({
    now: () => performance.now(),
    afterPaint,
    soon,
    waits,
    height: () => innerHeight,
  });
  const drawAll = (): void => made.drawAll();
  addEventListener('beforeprint', drawAll);
  // Browsers of before 2019 tell of a print by this alone, and know only the older name.
  matchMedia('print').addListener(({ matches }) => {
    if (matches) drawAll();
  });
  ofThisPage = made;
  return made;
}

interface LaterProps {
  /** What it shows: where this is another, it is drawn again. */
  readonly of: unknown;
  readonly children: () => ComponentChildren;
}

/**
 * A part of an answer that is drawn again a moment after the answer itself, so that the answer stands there as soon as a key is struck.
 * The first picture holds all parts.
 */
export class Later extends Component<LaterProps> {
  private readonly awaited: Awaited = {
    draw: () => atOnce(() => this.forceUpdate()),
    top: () => {
      const first = this.base;
      return first instanceof Element && first.getClientRects().length > 0
        ? first.getBoundingClientRect().top
        : undefined;
    },
  };

  override shouldComponentUpdate(next: Readonly<LaterProps>): boolean {
    if (next.of !== this.props.of) queue().add(this.awaited);
    return false;
  }

  override componentWillUnmount(): void {
    ofThisPage?.letGo(this.awaited);
  }

  override render(): ComponentChildren {
    return this.props.children();
  }
}
