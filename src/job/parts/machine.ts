import { trappedAirLoad } from '../../calc/machine/pressure/declaration.ts';
import { blowingRate } from '../../calc/machine/rate/declaration.ts';
import { testBoxCheck } from '../../calc/machine/test-box/declaration.ts';
import { inUnit, named, over, type Quantity, times } from '../../quantity/quantity.ts';
import type { WorkedJob } from '../planned.ts';
import { type AnyPart, part, unlessEmpty } from './part.ts';

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

/** Across the hose, along which it is drawn back: a bay between two trusses, as deep as the new fill is in the mean. */
function strip({ job, free, section }: WorkedJob): Quantity<'area'> | undefined {
  const { truss_spacing } = job.roof;
  if (job.machine.strip) return job.machine.strip;
  if (!truss_spacing) return undefined;
  const meanFree = named(over(free.free, section.width), 'dm', 'Mean depth free for new fill');
  return named(inUnit(times(truss_spacing, meanFree), 'ft2'), 'A', 'Bay between two trusses, mean depth');
}

/** What the middle of the plan takes: the opening that takes the most. */
const largest = ({ rows }: WorkedJob): Quantity<'volume'> | undefined =>
  rows
    .flatMap(({ holes }) => holes.map(({ volume }) => volume))
    .reduce<Quantity<'volume'> | undefined>(
      (most, each) => (most && most.amount >= each.amount ? most : each),
      undefined,
    );

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
  runs: (plan) => {
    const { machine, fill } = plan.job;
    if (!machine.rate && !machine.run_weight && !machine.run_time)
      return 'Enter the rate of the machine, or the weight and the time of a run.';
    return [
      {
        values: {
          rate: machine.rate,
          weight: machine.run_weight,
          time: machine.run_time,
          density: fill.density,
          area: strip(plan),
          volume: largest(plan),
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
