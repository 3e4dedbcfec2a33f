import { trappedAirLoad } from '../../calc/machine/pressure/declaration.ts';
import { blowingRate } from '../../calc/machine/rate/declaration.ts';
import { testBoxCheck } from '../../calc/machine/test-box/declaration.ts';
import { inUnit, named, over, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { WorkedJob } from '../planned.ts';
import { marksPart } from './marks.ts';
import { type AnyPart, part, unlessEmpty, workPart } from './part.ts';

const testBoxPart = part({
  calculation: testBoxCheck,
  asked: {
    length: 'machine.box_length',
    width: 'machine.box_width',
    height: 'machine.box_height',
    fills: 'machine.fills',
    target: 'fill.density',
    allowed_spread: 'machine.allowed_spread',
  },
  runs: ({ job: { machine, fill } }) => [
    {
      values: {
        length: machine.box_length,
        width: machine.box_width,
        height: machine.box_height,
        fills: unlessEmpty(machine.fills),
        target: fill.density,
        allowed_spread: machine.allowed_spread,
      },
    },
  ],
});

/** The opening that takes the most, and how many feet of hose all its pushes are together; undefined where a mark is not known yet. */
function largest(plan: WorkedJob, rules: Rulebook) {
  const openings = plan.rows.flatMap(({ holes }) => holes);
  const place = openings.reduce(
    (most, { volume }, at) => (volume.amount > (openings[most]?.volume.amount ?? 0) ? at : most),
    0,
  );
  const volume = openings[place]?.volume;
  const marks = workPart(marksPart, plan, rules)[place];
  const hose = marks?.state === 'answered' ? marks.answer.figures.all?.value : undefined;
  return { volume, hose: typeof hose === 'object' ? (hose as Quantity<'length'>) : undefined };
}

/**
 * What the hose fills across its way: the volume of an opening over all its pushes. They go out from one hole like the ribs of a fan, so
 * none of them has a bay to itself.
 */
function strip({ volume, hose }: ReturnType<typeof largest>): Quantity<'area'> | undefined {
  if (!volume || !hose || hose.amount <= 0) return undefined;
  return named(inUnit(over(volume, hose), 'ft2'), 'A', 'Volume of the opening over the length of its pushes');
}

const ratePart = part({
  calculation: blowingRate,
  asked: {
    rate: 'machine.rate',
    weight: 'machine.run_weight',
    time: 'machine.run_time',
    density: 'fill.density',
    area: 'machine.strip',
    bag_weight: 'fill.bag_weight',
  },
  runs: (plan, rules) => {
    const { machine, fill } = plan.job;
    if (!machine.rate && !machine.run_weight && !machine.run_time)
      return 'Enter the rate of the machine, or the weight and the time of a run.';
    const opening = largest(plan, rules);
    return [
      {
        title: `${blowingRate.title}, at the opening that takes the most`,
        values: {
          rate: machine.rate,
          weight: machine.run_weight,
          time: machine.run_time,
          density: fill.density,
          area: machine.strip ?? strip(opening),
          volume: opening.volume,
          bags: undefined,
          all_bags: plan.bags,
          bag_weight: fill.bag_weight,
        },
      },
    ];
  },
});

const pressurePart = part({
  calculation: trappedAirLoad,
  asked: { board: 'ceiling.board', framing: 'ceiling.framing', pressure: 'machine.pressure' },
  runs: ({ job: { ceiling, machine }, load }) => [
    {
      values: {
        board: ceiling.board,
        framing: ceiling.framing,
        pressure: machine.pressure,
        insulation: load.total,
      },
    },
  ],
});

/** Is the machine set right, how fast is the hose drawn back, and what does its air do to the ceiling? */
export const machineParts: readonly AnyPart[] = [testBoxPart, ratePart, pressurePart];
