import { type Remark, said } from '../../calc/declare/remark.ts';
import { tooFewToTell } from '../../calc/fill/bags.ts';
import { clock, readingTowards, towards } from '../../calc/marks/directions.ts';
import type { HoseMark, HoseMarks } from '../../calc/marks/marks.ts';
import { seenFrom } from '../../calc/marks/opening.ts';
import type { Pushes } from '../../calc/marks/pushes.ts';
import { keptOff, type Ring, runsInto } from '../../calc/ways/flue-ring.ts';
import { format } from '../../quantity/format.ts';
import { inches, inUnit, named, type Quantity, times } from '../../quantity/quantity.ts';

/** An opening of a row with the pushes that were found for it. */
export interface Pushed {
  readonly bags: Quantity<'pieces'>;
  /** None where its own entries clash. */
  readonly found: Pushes | undefined;
}

/** An opening of a row by its name, with what finds its marks. */
export interface Marked {
  readonly name: string;
  /** None where its own entries clash. */
  readonly marks: () => HoseMarks | undefined;
}

/** What lies behind a flue as seen from one opening of a row. */
export interface Shadow {
  /** The place in the row of the opening whose stream does not come there, and which of its flues is in the way. */
  readonly from: number;
  readonly flue: number;
  readonly ring: Ring;
  /** The opening that blows it; none where what lies behind the flue lies up or down the slope, where no opening lies there, or where another flue keeps that one from it too. */
  readonly blownFrom: number | undefined;
  /** The share of the first one's stretch. */
  readonly share: Quantity<'number'>;
  /** Bags of its fill that belong there. */
  readonly held: Quantity<'pieces'>;
}

const two = { figures: 2 } as const;

/**
 * What lies behind flues along a row of openings, in the order they stand along the roof. What a ring hides is counted apart from what no push
 * would come to anyway, so it is told whether or not the stream comes to the rest.
 * @example shadowsOf([]) // => []
 */
export function shadowsOf(row: readonly Pushed[]): readonly Shadow[] {
  return row.flatMap(({ bags, found }, from) => {
    if (!found) return [];
    const rings = found.opening.rings ?? [];
    return rings.flatMap((ring, flue): Shadow[] => {
      const percent = found.behind[flue];
      if (!percent) return [];
      const share = inUnit(percent, '1');
      const held = named(times(bags, share), 'nb', 'Bags that belong behind the ring');
      if (tooFewToTell(held)) return [];
      const beyond = from + sideBehind(found.opening, ring);
      const other = row[beyond]?.found;
      const all = [...rings, ...(other?.opening.rings ?? [])];
      // An opening whose own entries clash is told of those; what it blows does not change.
      const gets = beyond !== from && row[beyond] && (!other || getsBehind(other, ring, all));
      return [{ from, flue, ring, blownFrom: gets ? beyond : undefined, share, held }];
    });
  });
}

/** How many times as far along the roof as across it does a flue stand, where what lies behind it lies towards the next opening? */
const ALONG = 2;

/**
 * Towards which side along the roof does what lies behind a flue lie, as seen from an opening: 1 away from the starting end, −1 towards
 * it, 0 up or down the slope, where the next opening's push comes to the side of the ring and not behind it? The limit is our own: of 1,500 random
 * stretches with a ring, counted in squares of 2 in, the stream of that push came to nine tenths of what lay behind a ring straight along
 * the roof, to half where it stood twice as far along as across, and to a twentieth straight up or down the slope.
 */
function sideBehind({ along, across }: Pushes['opening'], ring: Ring): number {
  const [x, y] = [inches(ring.along) - inches(along), inches(ring.at) - inches(across)];
  return Math.abs(x) < ALONG * Math.abs(y) ? 0 : Math.sign(x);
}

/** Does a push from an opening towards a flue get to its ring, with none of the others in its way? */
function getsBehind({ opening, hose }: Pushes, ring: Ring, all: readonly Ring[]): boolean {
  const { x, y } = seenFrom(opening, ring);
  const ends = Math.hypot(x, y) - keptOff(ring, hose);
  const ray = towards(readingTowards(x, y));
  const clear = all.every((other) => {
    const at = seenFrom(opening, other);
    // The flue itself, which is among those of the other opening too where it lies between them.
    if (at.x === x && at.y === y) return true;
    const into = runsInto(at.x * ray.x + at.y * ray.y, at.x * ray.y - at.y * ray.x, keptOff(other, hose));
    return !into || into.from >= ends;
  });
  return clear && ends > inches(hose);
}

/**
 * What is said at each opening of a row about what lies behind a flue: at the one whose stream does not come there, how much of its fill to
 * hold back and which opening blows it; at that one, which of its pushes goes there. Its marks are those with that push.
 * @example behindFlues([], []) // => []
 */
export function behindFlues(
  row: readonly Marked[],
  shadows: readonly Shadow[],
): readonly (readonly Remark[])[] {
  const remarks: Remark[][] = row.map(() => []);
  for (const { from, ring, blownFrom, held } of shadows) {
    const [here, other] = [row[from], row[blownFrom ?? -1]];
    if (!here) continue;
    if (!other) {
      remarks[from]?.push(
        'No opening of the plan gets behind the ring. What it keeps the stream from stays thin, unless you reach it another way.',
      );
      continue;
    }
    remarks[from]?.push(
      said`About ${format(held, two)} of this opening’s fill belong behind the ring. Hold them back: ${other.name.toLowerCase()} blows them.`,
    );
    const marks = other.marks();
    const push = marks && pushTowards(marks, ring);
    if (push)
      remarks[blownFrom ?? -1]?.push(
        said`Push ${push.order} goes on past the end of this stretch, towards the ring of ${here.name.toLowerCase()}: at ${push.clock}, tape at ${format(push.mark, { tape: 8, round: 'down' })}. Blow there about ${format(held, two)}, which ${here.name.toLowerCase()} holds back.`,
      );
  }
  return remarks;
}

/** The push of an opening that goes past its stretch towards a ring. */
function pushTowards({ opening, marks }: HoseMarks, ring: Ring): HoseMark | undefined {
  const { x, y } = seenFrom(opening, ring);
  const way = clock(readingTowards(x, y));
  return marks.find((each) => each.past && each.clock === way);
}
