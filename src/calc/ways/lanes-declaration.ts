import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { cavitySection, refuseFilled } from '../cavity/section.ts';
import { calculation, type Figure } from '../declare/calculation.ts';
import type { Values } from '../declare/field.ts';
import { type Remark, said } from '../declare/remark.ts';
import { ringsAbout } from './flue-ring.ts';
import { gableLaneFields } from './lane-fields.ts';
import { gableLanes, type Lanes } from './lanes.ts';
import { ofRoom } from './strip.ts';

const tape = { tape: 8 } as const;
/** What no hose comes to is never told as less than it is. */
const leftTape = { tape: 8, round: 'up' } as const;
/** A push is told to the eighth below: to the nearest it would run on into the ring that it stops at. */
const pushTape = { tape: 8, round: 'down' } as const;

/**
 * The lanes that the entries of the calculation ask for; a drawing asks the same.
 * @throws EntriesClash for a cavity that the old insulation or the framing fills, too: it takes no bags, and has no lanes.
 */
export function lanesFrom(values: Values<typeof gableLaneFields>, rules: Rulebook): Lanes {
  const section = cavitySection(values);
  const found = gableLanes(
    {
      length: values.length,
      section,
      ends: values.ends,
      spread: values.spread,
      reach: values.reach,
      oldDepth: values.old_depth,
      trussSpacing: values.truss_spacing,
      rings: ringsAbout(values.flues, values, rules),
      density: values.density,
      bagWeight: values.bag_weight,
    },
    rules,
  );
  refuseFilled(section, values.old_depth, values.truss_spacing, rules);
  return found;
}

export const lanes = calculation({
  name: 'gable-lanes',
  title: 'Lanes from the gable end',
  question: 'How far does a push from the gable end have to go, in how many lanes, and what is left over?',
  fields: gableLaneFields,
  example: {
    length: '66 ft',
    ends: 'both ends',
    shape: 'bowed',
    width: '13 ft 10 in',
    eave: '3 in',
    ridge: '15 in',
    spread: '2 ft',
    old_depth: '2 in',
    truss_spacing: '24 in',
    density: '1.5 lb/ft³',
    bag_weight: '30 lb/bag',
    flues: [{ along: '21 ft 6 in', at: '5 ft', across: '6 in' }],
  },
  work: (values, rules) => {
    const found = lanesFrom(values, rules);
    const figures: Record<string, Figure> = {
      left: { label: 'Left over in a lane, at the most', value: found.left, format: leftTape },
      left_at_best: {
        label: 'Left over where the hose goes as far as any',
        value: found.leftAtBest,
        format: leftTape,
      },
      lanes: {
        label: 'Lanes',
        value: quantity(found.lanes.length, '1', {
          from: 'method',
          method: 'width over twice the spread, rounded up',
          operands: [values.width, values.spread],
        }),
      },
      lane_width: { label: 'Width of a lane', value: found.laneWidth, format: tape },
      push: { label: found.push.label ?? 'Push', value: found.push, format: pushTape },
      reach_low: { label: 'The hose reaches, at the least', value: found.reach.low },
      reach_high: { label: 'The hose reaches, at the most', value: found.reach.high },
      volume: { label: 'Volume of all lanes', value: found.volume },
      left_volume: { label: 'Volume left over', value: found.leftVolume },
      bags: {
        label: 'Bags for all lanes, what is left over included',
        value: found.bags,
        format: { figures: 3 },
      },
    };
    const cautions: CautionId[] = ['caution.layout.framing', 'caution.hose.blind'];
    if (found.lanes.some((each) => each.stopsAtRing)) cautions.unshift('caution.hose.flue-ahead');
    else if ((values.flues ?? []).length > 0) cautions.unshift('caution.flue.keep-clear');
    cautions.push(
      'caution.hose.from-ladder',
      'caution.roof.falls',
      'caution.ceiling.trapped-air',
      'caution.before.wear',
    );
    return {
      figures,
      tables: {
        lanes: {
          title:
            'Lane by lane, from the eave on the back side; in a section of a double-section home, from its own eave',
          columns: {
            lane: 'Lane',
            middle: 'The hose runs at',
            room: 'Free depth there',
            area: 'Area of the strip',
            hose_start: 'Hose to push in from the starting end',
            hose_far_end: 'Hose to push in from the far end',
            from_start: 'Covered from the starting end',
            from_far_end: 'Covered from the far end',
            left: 'Left over',
            left_volume: 'Volume left over',
            bags: 'Bags for the whole lane',
            within: 'Of them within reach, to be blown',
          },
          rows: found.lanes.map((each) => ({
            lane: String(each.number),
            middle: each.middle,
            room: each.room,
            area: each.area,
            hose_start: each.feedable ? each.hoseFromStart : 'the hose does not fit',
            hose_far_end: each.feedable ? each.hoseFromFarEnd : 'the hose does not fit',
            from_start: each.feedable ? each.fromStart : 'the hose does not fit',
            from_far_end: each.feedable ? each.fromFarEnd : 'the hose does not fit',
            left: each.left,
            left_volume: each.leftVolume,
            bags: each.bags,
            within: each.within,
          })),
          format: {
            middle: tape,
            room: ofRoom,
            area: { figures: 3 },
            hose_start: pushTape,
            hose_far_end: pushTape,
            from_start: pushTape,
            from_far_end: pushTape,
            left: leftTape,
            left_volume: { figures: 3 },
            bags: { figures: 3 },
            within: { figures: 3 },
          },
        },
      },
      cautions,
      remarks: remarksOn(found, values.truss_spacing !== undefined),
    };
  },
});

function remarksOn(found: Lanes, trusses: boolean): Remark[] {
  const shut = found.lanes.filter(({ feedable }) => !feedable);
  const names = shut.map((each) => `lane ${each.number} has ${format(each.room, ofRoom)}`).join(', ');
  return [
    ...(shut.length > 0
      ? [
          said`The hose is ${found.hose} wide and does not fit along the middle of every lane: ${names}. Such a lane is not fed from the gable; the whole of it is counted as left over.`,
        ]
      : []),
    trusses
      ? 'The hose passes every truss on its way: feel for the gaps between the webs, which may lie elsewhere in each truss and stop it short.'
      : 'No truss spacing is given, so no chord is taken off: trusses would leave the hose less room, and their webs can stop it.',
    ...(found.left.amount > 0
      ? [
          'What is left over has to be reached another way: through a roof hole above it where the roof is known to carry the crew, else from below or from the other end.',
        ]
      : []),
    ...(found.lanes.some(({ stopsAtRing }) => stopsAtRing)
      ? ['A lane that meets the ring about a flue counts the part at the ring as left over too.']
      : []),
  ];
}
