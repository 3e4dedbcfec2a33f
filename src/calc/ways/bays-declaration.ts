import type { CautionId } from '../../generated/rule-types.ts';
import { compare, type Quantity, quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { cavitySection, refuseFilled } from '../cavity/section.ts';
import { calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import type { Values } from '../declare/field.ts';
import { said } from '../declare/remark.ts';
import { lacksTrusses } from '../holes/lacks-trusses.ts';
import { spacingOf, trussesTold, trussPlaces } from '../holes/members.ts';
import { edgeBayFields } from './bay-fields.ts';
import { type Bay, type Bays, edgeBays, misfit } from './bays.ts';
import { ringsAbout } from './flue-ring.ts';
import { reachWord } from './reach.ts';
import { ofRoom } from './strip.ts';

const tape = { tape: 8 } as const;
/** A push is told to the eighth below: to the nearest it would run on into the ring that it stops at. */
const pushTape = { tape: 8, round: 'down' } as const;
const three = { figures: 3 } as const;

/** How far apart the trusses stand, which the chords in a bay are averaged over. */
function knownSpacing(values: Values<typeof edgeBayFields>): Quantity<'length'> {
  const spacing = spacingOf(values);
  if (spacing) return spacing;
  throw new EntriesClash({
    field: 'truss_spacing',
    label: 'Truss spacing',
    found: values.trusses_measured?.length ? 'one truss, and no spacing' : 'nothing',
    expected: 'a spacing, or two trusses or more that you measured',
  });
}

/**
 * The bays that the entries of the calculation ask for; a drawing asks the same.
 * @throws EntriesClash for a cavity that the old insulation or the framing fills, too: it takes no bags.
 */
export function baysFrom(values: Values<typeof edgeBayFields>, rules: Rulebook): Bays {
  const section = cavitySection(values);
  const found = edgeBays(
    {
      length: values.length,
      trussSpacing: knownSpacing(values),
      trusses: trussPlaces(values, values.length),
      trussesTold: trussesTold(values),
      section,
      edges: values.edges,
      tube: values.tube,
      reach: values.reach,
      oldDepth: values.old_depth,
      rings: ringsAbout(values.flues, values, rules),
      density: values.density,
      bagWeight: values.bag_weight,
    },
    rules,
  );
  refuseFilled(section, values.old_depth, knownSpacing(values), rules);
  return found;
}

export const bays = calculation({
  name: 'edge-bays',
  title: 'Bays under the lifted edge',
  question:
    'Bay by bay between the trusses: how long must the tube be, and how many bags does each bay take?',
  fields: edgeBayFields,
  example: {
    length: '66 ft',
    truss_spacing: '24 in',
    first_truss: '0 in',
    edges: 'one edge',
    shape: 'bowed',
    width: '13 ft 10 in',
    eave: '4 1/2 in',
    ridge: '15 in',
    old_depth: '2 in',
    density: '1.5 lb/ft³',
    bag_weight: '30 lb/bag',
  },
  work: (values, rules) => {
    const found = baysFrom(values, rules);
    const typical = found.bays.reduce(moreWhole);
    const figures: Record<string, Figure> = {
      bags_a_bay: { label: 'Bags for a whole bay', value: typical.bags, format: three },
      bays: {
        label: 'Bays',
        value: quantity(found.bays.length, '1', {
          from: 'method',
          method: 'clear widths between the trusses and to the ends of the roof',
          operands: [values.length, ...trussesTold(values)],
        }),
      },
      tube: { label: 'Tube, at the least', value: found.longest, format: { ...tape, round: 'up' } },
      reached: { label: 'With the reach it has, it', value: wordOf(found) },
      clear: { label: 'Clear width of a whole bay', value: typical.clear, format: ofRoom },
      bay_volume: { label: 'Volume of a whole bay', value: typical.volume },
      volume: { label: 'Volume of all bays', value: found.volume },
      left_volume: { label: 'Volume left over', value: found.leftVolume },
      bags: { label: 'Bags for all bays, what is left over included', value: found.bags, format: three },
    };
    for (const side of found.sides) {
      figures[`room_${side.edge}`] = {
        label: `Free depth at the ${side.called} ${side.called === 'lifted' ? 'edge' : 'eave'}`,
        value: side.room,
        format: ofRoom,
      };
    }
    const narrow = found.bays.filter(({ wideEnough }) => !wideEnough).length;
    const cautions: CautionId[] = ['caution.layout.framing', 'caution.edge.sharp', 'caution.hose.blind'];
    if (found.bays.some((each) => each.stopsAtRing)) cautions.unshift('caution.hose.flue-ahead');
    else if ((values.flues ?? []).length > 0) cautions.unshift('caution.flue.keep-clear');
    cautions.push(
      'caution.hose.from-ladder',
      'caution.roof.falls',
      'caution.roof.electric',
      'caution.ceiling.trapped-air',
      'caution.before.wear',
    );
    return {
      figures,
      tables: { bays: table(found) },
      cautions,
      remarks: [
        ...(lacksTrusses(values, values.length, rules)
          ? [
              said`Over more than twice ${rules.range('framing.truss.spacing').high}, the widest usual spacing, no truss is entered: what counts as one bay there may be several. Find every truss and enter it.`,
            ]
          : []),
        ...found.sides.flatMap((side) => misfit(side, found.tube)),
        ...(narrow > 0
          ? [
              `The tube does not go into ${narrow} ${narrow === 1 ? 'bay, which is' : 'bays, which are'} narrower.`,
            ]
          : []),
        ...(narrow > 0 || found.sides.some(({ tubeFits }) => !tubeFits)
          ? ['What a tube that does not go in would have filled is counted as left over.']
          : []),
      ],
    };
  },
});

/**
 * The largest bay stands for a whole one: the first and last may be cut short by the end of the roof. Of two as large it is the one
 * between two trusses, not the one that a truss narrows on one side alone.
 */
function moreWhole(a: Bay, b: Bay): Bay {
  const larger = compare(b.volume, a.volume);
  return larger > 0 || (larger === 0 && compare(b.clear, a.clear) < 0) ? b : a;
}

/** Does the tube get there on the worse side? */
const wordOf = ({ bays: all, sides, reach }: Bays): string =>
  sides.some(({ tubeFits }) => !tubeFits) || all.every(({ wideEnough }) => !wideEnough)
    ? 'does not fit'
    : ((['beyond reach', 'may not reach', 'reaches'] as const).find((word) =>
        sides.some(({ tube }) => reachWord(tube, reach) === word),
      ) ?? 'reaches');

function table({ bays: all, sides }: Bays) {
  const bySide = (name: string, label: (called: string) => string) =>
    Object.fromEntries(sides.map(({ edge, called }) => [`${name}_${edge}`, label(called)]));
  return {
    title: 'Bay by bay, from the starting end',
    columns: {
      bay: 'Bay',
      from: 'From',
      to: 'To',
      clear: 'Clear width',
      ...bySide('pushed', (called) => `Tube in from the ${called} edge`),
      ...bySide('bags', (called) => `Bags for the ${called} edge`),
      ...bySide('within', (called) => `Of them within reach, to be blown through the ${called} edge`),
      left_volume: 'Volume left over',
    },
    rows: all.map((each) => ({
      bay: String(each.number),
      from: each.from,
      to: each.to,
      clear: each.clear,
      ...Object.fromEntries(
        sides.flatMap(({ edge, tubeFits }, place) => [
          [
            `pushed_${edge}`,
            (tubeFits && each.wideEnough ? each.pushed[place] : undefined) ?? 'does not fit',
          ],
          [`bags_${edge}`, each.bagsBySide[place] ?? ''],
          [`within_${edge}`, each.withinBySide[place] ?? ''],
        ]),
      ),
      left_volume: each.leftVolume,
    })),
    format: {
      from: tape,
      to: tape,
      clear: ofRoom,
      ...Object.fromEntries(
        sides.flatMap(({ edge }) => [
          [`pushed_${edge}`, pushTape],
          [`bags_${edge}`, three],
          [`within_${edge}`, three],
        ]),
      ),
      left_volume: three,
    },
  };
}
