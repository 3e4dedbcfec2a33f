import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { byMethod, named, quantity, total } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { calculation, type Figure } from '../declare/calculation.ts';
import { choiceField, ifAny, lengthField, optional, type Values } from '../declare/field.ts';
import { type Remark, said } from '../declare/remark.ts';
import { trussesMeasured } from '../holes/measured-field.ts';
import { knowsTrusses, trussPlaces } from '../holes/members.ts';
import { fluesField, ringsAbout } from '../ways/flue-ring.ts';
import { inCavityFields } from '../ways/in-cavity-fields.ts';
import { MOST } from './fewest.ts';
import { type HoseMarks, hoseMarks } from './marks.ts';
import { hands, type Opening } from './opening.ts';

const mark = { tape: 8, round: 'down' } as const;
const tape = { tape: 8 } as const;

const place = (symbol: string, label: string, hint: string, example: string) =>
  lengthField(symbol, label, hint, example, { zero: 'allowed' });

export const hoseMarkFields = {
  along: place('x', 'Place of the opening', 'Along the roof, from the starting end.', '21 ft 6 in'),
  from: place(
    'xa',
    'Stretch from',
    'Where the stretch filled through it begins, from the starting end.',
    '14 ft 6 in',
  ),
  to: lengthField('xb', 'Stretch to', 'Where it ends, from the starting end.', '28 ft 6 in'),
  width: lengthField(
    'W',
    'Width across the cavity',
    'Inside, from eave to eave, or from eave to marriage line.',
    '13 ft 10 in',
    {
      most: '40 ft',
    },
  ),
  across: lengthField(
    'y0',
    'Opening, from the eave',
    'Across, from the eave on the opening’s own side.',
    '5 ft 7 in',
    {
      zero: 'allowed',
      most: '40 ft',
    },
  ),
  stream_reach: lengthField(
    'f',
    'Reach of the stream',
    'How far the fill flies from the end of the hose, ahead and to each side. Try it with the machine, hose and fill at hand.',
    '2 ft',
    { most: '40 ft' },
  ),
  stand_off: ifAny(
    lengthField('so', 'Stand-off', 'How far the hose stops short of the edge of the stretch.', '6 in', {
      zero: 'allowed',
      most: '10 ft',
    }),
  ),
  starting_end: optional(
    choiceField(
      'The starting end lies on the',
      'As you face the ridge. Left empty, on the right hand.',
      hands,
    ),
  ),
  reach: inCavityFields.reach,
  truss_spacing: optional(
    lengthField('s', 'Truss spacing', 'Centre to centre; to count what each push crosses.', '24 in', {
      most: '8 ft',
    }),
  ),
  first_truss: optional(
    lengthField('x1', 'First truss', 'From the end of the roof to the middle of the first one.', '0 in', {
      zero: 'allowed',
      most: '20 ft',
    }),
  ),
  trusses_measured: trussesMeasured,
  flues: optional(fluesField('the eave on the opening’s own side')),
} as const;

/** The opening that the entries of the calculation tell of. */
export const openingFrom = (values: Values<typeof hoseMarkFields>, rules: Rulebook): Opening => ({
  along: values.along,
  from: values.from,
  to: values.to,
  width: values.width,
  across: values.across,
  streamReach: values.stream_reach,
  standOff: values.stand_off,
  startingEnd: values.starting_end,
  reach: values.reach,
  rings: ringsAbout(values.flues, { width: values.width }, rules),
  trusses: knowsTrusses(values) ? trussPlaces(values, values.to, Number.POSITIVE_INFINITY) : undefined,
});

/** The marks that the entries ask for; its drawing asks the same. */
export const marksFrom = (values: Values<typeof hoseMarkFields>, rules: Rulebook): HoseMarks =>
  hoseMarks(openingFrom(values, rules), rules);

export const hoseMarkings = calculation({
  name: 'hose-marks',
  title: 'Hose marks',
  question:
    'Which ways round the clock is the hose pushed from this opening, and where does the tape go for each?',
  fields: hoseMarkFields,
  example: {
    along: '21 ft 6 in',
    from: '14 ft 6 in',
    to: '28 ft 6 in',
    width: '13 ft 10 in',
    across: '5 ft 7 in',
    stream_reach: '2 ft',
    stand_off: '6 in',
    truss_spacing: '24 in',
    first_truss: '0 in',
    flues: [{ along: '25 ft', at: '9 ft', across: '6 in' }],
  },
  work: (values, rules) => {
    const found = marksFrom(values, rules);
    const { marks, reach } = found;
    const pushes = (count: number, of: string) =>
      quantity(count, 'push', { from: 'method', method: of, operands: found.told });
    const nothing = byMethod('no push is needed', found.told, 0, 'ft');
    const counted = (word: (typeof marks)[number]['word']): number =>
      marks.filter((each) => each.word === word).length;
    const figures: Record<string, Figure> = {
      pushes: {
        label: 'Pushes, round the clock',
        value: pushes(marks.length, 'the fewest that bring the stream to all of the stretch'),
      },
      longest: { label: 'The longest, first of all', value: marks[0]?.mark ?? nothing, format: mark },
      shortest: {
        label: 'The shortest, last of all',
        value: marks[marks.length - 1]?.mark ?? nothing,
        format: mark,
      },
      all: {
        label: 'Hose pushed in, all together',
        value:
          marks.length > 0
            ? named(total(marks.map((each) => each.mark)), 'm', 'Hose pushed in, all together')
            : nothing,
        format: tape,
      },
      reach_low: { label: 'The hose reaches, at the least', value: reach.low },
      reach_high: { label: 'The hose reaches, at the most', value: reach.high },
      may_not_reach: {
        label: 'Pushes that may not reach',
        value: pushes(counted('may not reach'), 'between the two ends of the reach'),
      },
      beyond_reach: {
        label: 'Pushes beyond reach',
        value: pushes(counted('beyond reach'), 'longer than the reach'),
      },
      stopped: {
        label: 'Pushes that stop before a flue',
        value: pushes(marks.filter((each) => each.stopsAtRing).length, 'those before a ring'),
      },
      missed: { label: 'Edge of the stretch out of the stream’s reach', value: found.missed, format: tape },
      unreached: { label: 'The stretch out of it', value: found.unreached, format: { figures: 2 } },
    };
    const cautions: CautionId[] = ['caution.layout.framing', 'caution.hose.blind'];
    if (marks.some((each) => each.stopsAtRing)) cautions.unshift('caution.hose.flue-ahead');
    else if (found.rings.length > 0) cautions.unshift('caution.flue.keep-clear');
    cautions.push('caution.ceiling.trapped-air', 'caution.before.wear');
    return { figures, tables: { marks: table(found) }, cautions, remarks: remarksOn(found) };
  },
});

function table({ marks, opening }: HoseMarks) {
  return {
    title: 'The pushes, the farthest first',
    columns: {
      order: 'Push',
      clock: 'O’clock',
      angle: 'Turned from up the slope',
      distance: 'To the edge, or to the ring',
      mark: 'Tape at',
      reach: 'The hose',
      ...(opening.trusses ? { trusses: 'Trusses crossed' } : {}),
      stops: 'Stops before',
    },
    rows: marks.map((each) => ({
      order: String(each.order),
      clock: each.clock,
      angle: each.angle,
      distance: each.distance,
      mark: each.mark,
      reach: each.word,
      ...(opening.trusses ? { trusses: String(each.trussesCrossed ?? 0) } : {}),
      stops: each.past ? 'a ring past the stretch' : each.stopsAtRing ? 'a ring kept open' : 'the edge',
    })),
    format: { distance: tape, mark },
  };
}

/** What the table does not say, in sentences. */
export function remarksOn(found: HoseMarks): Remark[] {
  const { marks, covers, behind: hidden, opening, reach, unpushed, hose } = found;
  const beyond = marks.filter(({ word }) => word !== 'reaches').length;
  return [
    ...(covers
      ? []
      : [
          said`Even ${MOST} directions leave a part of the stretch farther than ${opening.streamReach} from every push. Make the stretch shorter, or the stream reach farther.`,
        ]),
    // Told apart from what no push would come to anyway, so it holds whether or not the stream comes to the rest.
    ...(hidden.some(({ amount }) => amount > 0)
      ? [
          `Behind the ring ${format(total(hidden), { figures: 2 })} of the stretch stay out of the stream’s reach. Hold back that much of the fill: it goes in from another opening, if one gets there, with the shield in place.`,
        ]
      : []),
    ...(unpushed.length > 0
      ? [
          said`Nothing is pushed in at ${unpushed.join(', ')}: the ring is nearer than the hose is wide, ${hose}. Blow that side from the opening itself.`,
        ]
      : []),
    ...(beyond > 0
      ? [
          said`${beyond} of the pushes may not get there: the hose reaches ${reach.low}${reach.low === reach.high ? '' : said` to ${reach.high}`}. What it doesn’t reach is left over, so shorten the stretch or use a stiffer tube.`,
        ]
      : []),
    ...(opening.trusses && marks.some(({ trussesCrossed = 0 }) => trussesCrossed > 0)
      ? [
          'A push that crosses trusses has to find its way between their webs: turn the hose, and never force it.',
        ]
      : []),
    'Tape the hose before it is fed, and take a photograph before and after. Draw it back slowly while it blows, one direction after another round the clock, until the stretch is full.',
  ];
}
