/** Something that is to be drawn again soon. */
export interface Awaited {
  /** Draws it, at once and with its newest figures. */
  readonly draw: () => void;
  /** Where it begins, in pixels below the top of the window; undefined where it shows nothing. */
  readonly top: () => number | undefined;
}

/** What a queue asks of the page that it draws on. */
export interface Paced {
  readonly now: () => number;
  /** Does some work once what is drawn so far is painted, or soon where nothing is painted. */
  readonly afterPaint: (work: () => void) => void;
  /** Does some work once a key or a scroll has had its turn. */
  readonly soon: (work: () => void) => void;
  /** Is told when something begins to wait, and when nothing waits any more. */
  readonly waits: (waiting: boolean) => void;
  /** How high the window is, in pixels. */
  readonly height: () => number;
}

/** Work goes on for so long before a key or a scroll has its turn, in milliseconds. */
const SLICE = 5;

/**
 * The order in which parts of a page are drawn, each told by where it begins and reaching to where the next one does: what is in the
 * window first, then what is nearest to it. Those that show nothing come last.
 * @example nearestFirst([-900, -100, 300, 900, undefined], 700) // => [1, 2, 0, 3, 4]
 */
export function nearestFirst(tops: readonly (number | undefined)[], height: number): number[] {
  const known = tops.flatMap((top) => (top === undefined ? [] : [top])).sort((a, b) => a - b);
  const away = (top: number | undefined): number => {
    if (top === undefined) return Number.POSITIVE_INFINITY;
    const end = known.find((other) => other > top) ?? Number.POSITIVE_INFINITY;
    return Math.max(0, top - height, -end);
  };
  const order = tops.map((top, place) => ({ place, away: away(top), top: top ?? 0 }));
  return order
    .sort((a, b) => (a.away === b.away ? a.top - b.top || a.place - b.place : a.away < b.away ? -1 : 1))
    .map(({ place }) => place);
}

/**
 * Draws what waits in short slices, so that a key or a scroll has its turn between them. What began to wait first is never put off by
 * what began later; of those that begin together, what can be seen is drawn first.
 */
export class DrawingQueue {
  private readonly page: Paced;
  /** In the order in which they are drawn. */
  private line: Awaited[] = [];
  /** What began to wait since the last slice. */
  private newcomers = new Set<Awaited>();
  private asked = false;

  constructor(page: Paced) {
    this.page = page;
  }

  private get waiting(): boolean {
    return this.line.length + this.newcomers.size > 0;
  }

  /** Has something drawn soon. What waits already keeps its place. */
  add(each: Awaited): void {
    if (this.line.includes(each) || this.newcomers.has(each)) return;
    if (!this.waiting) this.page.waits(true);
    this.newcomers.add(each);
    if (!this.asked) this.ask(this.page.afterPaint);
  }

  /** Lets go of something that is no longer on the page. */
  letGo(each: Awaited): void {
    const waited = this.waiting;
    this.line = this.line.filter((other) => other !== each);
    this.newcomers.delete(each);
    if (waited) this.tell();
  }

  /** Draws all that waits, now: before it is printed. What it draws may hold others that wait in their turn. */
  drawAll(): void {
    while (this.waiting) this.drawFor(Number.POSITIVE_INFINITY);
  }

  /** Newcomers are lined up once what was drawn before them is painted: to ask sooner where they stand would have the page laid out anew. */
  private ask(when: Paced['soon']): void {
    this.asked = true;
    when(() => {
      try {
        this.drawFor(SLICE);
      } finally {
        // A part that can't be drawn does not keep the others from their turn.
        this.asked = false;
        if (this.waiting) this.ask(this.line.length > 0 ? this.page.soon : this.page.afterPaint);
      }
    });
  }

  private drawFor(time: number): void {
    if (!this.waiting) return;
    const begun = this.page.now();
    if (this.line.length === 0) this.lineUp();
    do this.line.shift()?.draw();
    while (this.line.length > 0 && this.page.now() - begun < time);
    this.tell();
  }

  private lineUp(): void {
    const added = [...this.newcomers];
    this.newcomers.clear();
    const order = nearestFirst(
      added.map((each) => each.top()),
      this.page.height(),
    );
    this.line.push(...order.flatMap((place) => added[place] ?? []));
  }

  private tell(): void {
    if (!this.waiting) this.page.waits(false);
  }
}
