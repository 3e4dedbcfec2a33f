import type { HoseMark, HoseMarks } from '../calc/marks/marks.ts';
import { format } from '../quantity/format.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { type CardSize, type CardWords, hosePlan } from './hose-plan.ts';
import { line, type Point, text } from './lines.ts';
import type { Drawing, Shape } from './svg.ts';

const markText = ({ mark }: HoseMark): string => format(mark, { tape: 8, round: 'down' });
/** A push with something to say of it has a sign at its number, told under the list. */
const signed = ({ order, word, stopsAtRing, past }: HoseMark): string =>
  `${order}${word === 'reaches' ? '' : '*'}${stopsAtRing ? '+' : ''}${past ? '›' : ''}`;

const PER_COLUMN = 18;
const COLUMN = 166;
const ROW = 18;
/** From the plan down to a list under it. */
const BELOW = 18;

/**
 * The card of one opening: the plan of its stretch, and the list of the marks, the farthest first. The list stands beside the plan on a
 * wide card, under it on a narrow one.
 */
export function hoseCard(found: HoseMarks, rules: Rulebook, size: CardSize, words: CardWords = {}): Drawing {
  const { marks } = found;
  const columns = size === 'wide' ? Math.max(1, Math.ceil(marks.length / PER_COLUMN)) : 2;
  const beside = size === 'wide' ? columns * COLUMN + 8 : 0;
  const plan = hosePlan(found, rules, size, words, beside);
  const listLeft = size === 'wide' ? plan.width - beside : 0;
  const listTop = size === 'wide' ? 24 : plan.height + BELOW;
  const perColumn = Math.max(1, Math.ceil(marks.length / columns));
  const notes = footnotes(found);
  const listHeight = 14 + perColumn * ROW;
  return {
    ...plan,
    height: Math.max(plan.height, listTop + listHeight + notes.length * 16 + 8),
    shapes: [
      ...plan.shapes,
      ...list(marks, columns, perColumn, [listLeft, listTop]),
      ...notes.map((note, place) =>
        text([listLeft + 12, listTop + listHeight + 12 + place * 16], note, { anchor: 'start', size: 11.5 }),
      ),
    ],
  };
}

/** The list, down its columns: number, clock, where the tape goes. */
function list(marks: readonly HoseMark[], columns: number, perColumn: number, [left, top]: Point): Shape[] {
  const words = (x: number, of: string, anchor: 'start' | 'end') =>
    text([x, top], of, { anchor, size: 11.5 });
  const head = Array.from({ length: columns }, (_, column): Shape[] => {
    const x = left + column * COLUMN;
    return [
      words(x + 31, 'no.', 'end'),
      words(x + 74, 'o’clock', 'end'),
      words(x + 81, 'tape at', 'start'),
      line('thin', [x + 10, top + 5], [x + COLUMN - 8, top + 5]),
    ];
  }).flat();
  const rows = marks.flatMap((each, place): Shape[] => {
    const x = left + Math.floor(place / perColumn) * COLUMN;
    const y = top + 6 + ROW * ((place % perColumn) + 1) - 3;
    return [
      text([x + 34, y], signed(each), { anchor: 'end', size: 12, bold: true }),
      text([x + 74, y], each.clock, { anchor: 'end', size: 12 }),
      text([x + 81, y], markText(each), { anchor: 'start', size: 12 }),
    ];
  });
  return [...head, ...rows];
}

const footnotes = ({ marks }: HoseMarks): string[] => [
  ...(marks.some(({ word }) => word !== 'reaches') ? ['* the hose may not get there'] : []),
  ...(marks.some(({ stopsAtRing }) => stopsAtRing) ? ['+ stops before an open ring'] : []),
  ...(marks.some(({ past }) => past) ? ['› goes past the stretch'] : []),
];
