import { trappedAirLoad } from '../../calc/machine/pressure/declaration.ts';
import { blowingRate } from '../../calc/machine/rate/declaration.ts';
import { testBoxCheck } from '../../calc/machine/test-box/declaration.ts';
import { inUnit, named, over, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { ofDensityBlown } from '../density-blown.ts';
import { toBlow } from '../fill-log.ts';
import { openingsOf } from '../openings.ts';
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

/** An opening with what the rate needs of it. */
interface Blown {
  readonly what: string;
  readonly volume: Quantity<'volume'>;
  /** All its pushes together; undefined where they are not known, or nothing is pushed in. */
  readonly pushed: Quantity<'length'> | undefined;
}

/** Every opening of the way taken, with the hose that is pushed in, of a hole as its marks tell, and the volume that the log asks the bags of it for. */
function blown(plan: WorkedJob, rules: Rulebook): readonly Blown[] {
  const found = openingsOf(plan, rules);
  if (!found.known) return [];
  const marks = found.openings.some(({ what }) => what === 'Hole') ? workPart(marksPart, plan, rules) : [];
  return found.openings.map((opening, place) => {
    const outcome = marks[place];
    const all = outcome?.state === 'answered' ? outcome.answer.figures.all?.value : opening.pushed;
    const pushed = typeof all === 'object' && all.amount > 0 ? (all as Quantity<'length'>) : undefined;
    return { what: opening.name, volume: toBlow(opening), pushed };
  });
}

/** The opening that takes the most. */
const largest = (openings: readonly Blown[]): Blown | undefined =>
  openings.reduce<Blown | undefined>(
    (most, each) => (most && most.volume.amount >= each.volume.amount ? most : each),
    undefined,
  );

/**
 * What the hose fills across its way: the volume of an opening over all its pushes. From a hole they go out like the ribs of a fan, so
 * none of them has a bay to itself.
 */
const strip = ({ volume, pushed }: Blown): Quantity<'area'> | undefined =>
  pushed &&
  named(inUnit(over(volume, pushed), 'ft2'), 'A', 'Volume of the opening over the length of its pushes');

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
    const openings = blown(plan, rules);
    const opening = largest(openings);
    return [
      {
        title: `${blowingRate.title}, at the opening that takes the most`,
        values: {
          rate: machine.rate,
          weight: machine.run_weight,
          time: machine.run_time,
          density: fill.density,
          area: machine.strip ?? (opening && strip(opening)),
          volume: opening?.volume,
          bags: undefined,
          all_bags: plan.bags,
          bag_weight: fill.bag_weight,
          // A cross-section that is entered holds for all of them.
          openings: machine.strip ? openings.map((each) => ({ ...each, pushed: undefined })) : openings,
        },
      },
    ];
  },
});

const pressurePart = part({
  calculation: trappedAirLoad,
  // It tells how much pressure passes.
  whileHeld: 'caution.machine.pressed',
  asked: {
    board: 'ceiling.board',
    framing: 'ceiling.framing',
    engineer_load: 'ceiling.engineer_load',
    engineer: 'ceiling.engineer',
    pressure: 'machine.pressure',
  },
  runs: ({ job, job: { ceiling, machine }, load }, rules) => [
    {
      remarks: ofDensityBlown(job, rules),
      values: {
        ...ceiling,
        pressure: machine.pressure,
        insulation: load.total,
      },
    },
  ],
});

/** Is the machine set right, how fast is the hose drawn back, and what does its air do to the ceiling? */
export const machineParts: readonly AnyPart[] = [testBoxPart, ratePart, pressurePart];
