import { QUARTER } from './opening.ts';

/** One of several openings that are counted together, in bags. */
export interface CountedTogether {
  readonly bags: number;
  readonly planned: number;
  /** Does it still take some? */
  readonly open: boolean;
}

/**
 * What has gone into each of several openings once more went in, or was counted too many, by a count of all of them. Quarter by quarter it
 * goes to the open one that is farthest behind its share by the plan, or from the one farthest ahead; what was counted at a closed one stays,
 * and none falls below nothing. A count of which nothing can be taken, or that none is open for, changes nothing.
 * By hand: 1 bag over two alike is half a bag in each; the closed one keeps its bag.
 * @example countedOn([{ bags: 1, planned: 0.7, open: false }, { bags: 0, planned: 0.7, open: true }, { bags: 0, planned: 0.7, open: true }], 1) // => [1, 0.5, 0.5]
 */
export function countedOn(openings: readonly CountedTogether[], more: number): number[] {
  const bags = openings.map((each) => each.bags);
  const step = Math.sign(more) * QUARTER;
  for (let quarters = Math.round(Math.abs(more) / QUARTER); quarters > 0; quarters--) {
    const place = nextOf(openings, bags, step);
    if (place === undefined) break;
    bags[place] = (bags[place] ?? 0) + step;
  }
  return bags;
}

/** Which opening is farthest from its share of what is in the open ones, one step on, in the direction of that step? */
function nextOf(
  openings: readonly CountedTogether[],
  bags: readonly number[],
  step: number,
): number | undefined {
  const open = openings.flatMap(({ open, planned }, place) =>
    open ? [{ place, planned, bags: bags[place] ?? 0 }] : [],
  );
  const sum = (all: readonly number[]) => all.reduce((running, each) => running + each, 0);
  const [inAll, planned] = [sum(open.map((each) => each.bags)), sum(open.map((each) => each.planned))];
  const behind = (each: (typeof open)[number]) => ((inAll + step) * each.planned) / planned - each.bags;
  const [next] = open
    .filter((each) => each.bags + step >= 0)
    .sort((a, b) => Math.sign(step) * (behind(b) - behind(a)) || a.place - b.place);
  return next?.place;
}
