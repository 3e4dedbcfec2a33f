import type { Tape } from './allowed-positions.ts';
import { common, either, NOWHERE, type Stretches, withinReach } from './intervals.ts';

/**
 * Where one hole may lie, sorted by how many patches before it lie over a seam: `clear[2]` holds the marks off the seams that
 * follow two such patches, `over[2]` the marks on a seam that follow two and make three.
 */
export interface Stand {
  readonly clear: readonly Stretches[];
  readonly over: readonly Stretches[];
}

/** One gap, in marks: no shorter and no longer. */
export interface Gap {
  readonly least: number;
  readonly most: number;
}

/**
 * Marks of this hole after which so many patches lie over a seam, its own counted.
 * @example leaving({ clear: [[1, 2], [5, 6]], over: [[8, 9]] }, 1) // => [5, 6, 8, 9]
 */
export const leaving = ({ clear, over }: Stand, patches: number): Stretches =>
  either(clear[patches] ?? NOWHERE, over[patches - 1] ?? NOWHERE);

/**
 * Marks of this hole before which so many patches lie over a seam, its own not counted.
 * @example entering({ clear: [[1, 2], [5, 6]], over: [[8, 9]] }, 0) // => [1, 2, 8, 9]
 */
export const entering = ({ clear, over }: Stand, patches: number): Stretches =>
  either(clear[patches] ?? NOWHERE, over[patches] ?? NOWHERE);

const standsSomewhere = ({ clear, over }: Stand): boolean =>
  clear.some((marks) => marks.length > 0) || over.some((marks) => marks.length > 0);

function onward(from: Stand, into: Stand, { least, most }: Gap): Stand {
  const left = into.clear.map((_, patches) => leaving(from, patches));
  const reach = (marks: Stretches, patches: number) =>
    withinReach(left[patches] ?? NOWHERE, least, most, marks);
  return { clear: into.clear.map(reach), over: into.over.map(reach) };
}

/** The marks of a hole from which some mark of the next one is reached. */
function withNext(from: Stand, next: Stand, { least, most }: Gap): Stand {
  const back = (marks: Stretches, patches: number) =>
    withinReach(entering(next, patches), -most, -least, marks);
  return {
    clear: from.clear.map(back),
    over: from.over.map((marks, patches) => back(marks, patches + 1)),
  };
}

/**
 * Where can each hole lie, reached from the first hole alone? Undefined as soon as one hole can lie nowhere.
 * By hand: 0 to 2, and 8 or 9 more, are 8 to 11.
 * @example reachedFromFirst([{ clear: [[0, 2]], over: [] }, { clear: [[8, 12]], over: [] }], { least: 8, most: 9 })[1] // => { clear: [[8, 11]], over: [] }
 */
export function reachedFromFirst(stands: readonly Stand[], gap: Gap): Stand[] | undefined {
  const reached: Stand[] = [];
  for (const stand of stands) {
    const before = reached[reached.length - 1];
    const here = before ? onward(before, stand, gap) : stand;
    if (!standsSomewhere(here)) return undefined;
    reached.push(here);
  }
  return reached;
}

/**
 * Where can each hole lie in a layout that runs from the first hole to the last with these gaps? Undefined where none does.
 * By hand: 10 lies 8 or 9 past the marks 1 and 2, and no other.
 * @example passable([{ clear: [[0, 2]], over: [] }, { clear: [[10, 10]], over: [] }], { least: 8, most: 9 })[0] // => { clear: [[1, 2]], over: [] }
 */
export function passable(stands: readonly Stand[], gap: Gap): Stand[] | undefined {
  const reached = reachedFromFirst(stands, gap);
  if (!reached) return undefined;
  for (let hole = reached.length - 2; hole >= 0; hole--) {
    reached[hole] = withNext(reached[hole] as Stand, reached[hole + 1] as Stand, gap);
  }
  return reached;
}

/**
 * With so many holes, how few patches lie over a seam, and where can each hole lie in such a layout?
 * The number is the least, so a mark that follows two patches in one such layout can't follow one or three in another: each mark
 * stands under one count only, and the later searches cost no more for the counting.
 * @throws RangeError where no layout has so many holes.
 * @example fewestOverSeams(onTheTape(bareRoof(66), new Set(ruleNames)), 5).length // => 5
 */
export function fewestOverSeams(tape: Tape, holes: number): Stand[] {
  const gap = { least: tape.leastGap, most: tape.mostGap };
  for (let patches = 0; patches <= holes; patches++) {
    const found = passable(standsWith(tape, holes, patches), gap);
    if (found) return found;
  }
  throw new RangeError(`holes: found ${holes}, expected a number of holes that holds every rule`);
}

/** Every stand the rules for single holes leave, with at most so many patches over seams. */
function standsWith(tape: Tape, holes: number, patches: number): Stand[] {
  return Array.from({ length: holes }, (_, hole) => {
    const keep = (marks: Stretches) => {
      const fromFirst = hole === 0 ? common(tape.first, marks) : marks;
      return hole === holes - 1 ? common(tape.last, fromFirst) : fromFirst;
    };
    const clear = keep(tape.clear);
    const over = keep(tape.overSeam);
    // Nothing lies before the first hole, so no patch over a seam does.
    const after = (count: number) => hole > 0 || count === 0;
    return {
      clear: Array.from({ length: patches + 1 }, (_, count) => (after(count) ? clear : NOWHERE)),
      over: Array.from({ length: patches }, (_, count) => (after(count) ? over : NOWHERE)),
    };
  });
}
