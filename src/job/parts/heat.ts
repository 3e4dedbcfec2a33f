import { EntriesClash } from '../../calc/declare/calculation.ts';
import { heat, roofHeatFrom } from '../../calc/heat/declaration.ts';
import type { RoofHeat } from '../../calc/heat/roof-heat.ts';
import { spacingOf } from '../../calc/holes/members.ts';
import { savings } from '../../calc/savings/declaration.ts';
import { format } from '../../quantity/format.ts';
import { compare } from '../../quantity/quantity.ts';
import type { JobValues } from '../job-fields.ts';
import { floorOf } from './home.ts';
import { type AnyPart, part } from './part.ts';

/** What the heat calculation is given: the plan, and what the job adds. */
export const heatValues = (job: JobValues) => ({
  ...job.heat,
  ...job.cavity,
  board: job.ceiling.board,
  material: job.fill.material,
  density: job.fill.density,
  label_r_per_inch: job.fill.label_r_per_inch,
  old_depth: job.old.depth,
  framing_share: job.heat.framing_share ?? 'the federal share of the ceiling',
  truss_spacing: spacingOf(job.roof),
});

const roofHeatPart = part({
  calculation: heat,
  asked: {
    shape: 'cavity.shape',
    width: 'cavity.width',
    eave: 'cavity.eave',
    ridge: 'cavity.ridge',
    points: 'cavity.points',
    board: 'ceiling.board',
    board_thickness: 'heat.board_thickness',
    material: 'fill.material',
    density: 'fill.density',
    label_r_per_inch: 'fill.label_r_per_inch',
    old_depth: 'old.depth',
    old_r_per_inch: 'heat.old_r_per_inch',
    old_condition: 'heat.old_condition',
    pressed_depth: 'heat.pressed_depth',
    framing_share: 'heat.framing_share',
    truss_spacing: 'roof.truss_spacing',
    nominal_depth: 'heat.nominal_depth',
    energy_zone: 'heat.energy_zone',
  },
  runs: ({ job }) => [{ values: heatValues(job) }],
});

/** The way in the job to a field of the heat calculation: what keeps the heat from being worked out keeps others too. */
export const wayToHeat = (field: string): string | undefined =>
  (roofHeatPart.asked as Readonly<Record<string, string>>)[field];

/** @throws EntriesClash if less heat goes through the roof before than after: only the pressing takes R away, and a job has no entry for U itself. */
function refuseLossByPressing({ before, after }: RoofHeat): void {
  if (compare(after.transmittance, before.transmittance) <= 0) return;
  throw new EntriesClash({
    field: 'pressed_depth',
    label: heat.fields.pressed_depth.label,
    found: `U ${format(after.transmittance)} after the fill, more than ${format(before.transmittance)} before`,
    expected:
      'a fill that gives more R than the pressing takes: look at this depth, and at the R per inch of the fill and of the old insulation',
  });
}

const savingsPart = part({
  calculation: savings,
  asked: {
    area: 'home.length',
    degree_days: 'saving.degree_days',
    fuel: 'saving.fuel',
    efficiency: 'saving.efficiency',
    price_of_heat: 'saving.price_of_heat',
    price_per_volume: 'saving.price_per_volume',
    heat_content: 'saving.heat_content',
    cost: 'saving.cost',
    life: 'saving.life',
    discount_rate: 'saving.discount_rate',
    escalation: 'saving.escalation',
  },
  askedIn: wayToHeat,
  runs: (plan, rules) => {
    const { result } = roofHeatFrom(heatValues(plan.job), rules);
    refuseLossByPressing(result);
    return [
      {
        remarks: ['Heating alone is counted: what the fill saves in cooling is left out.'],
        values: {
          ...plan.job.saving,
          area: floorOf(plan.job),
          u_before: result.before.transmittance,
          u_after: result.after.transmittance,
          r_before: undefined,
          r_after: undefined,
        },
      },
    ];
  },
});

/** What R the taper yields, and what it saves. */
export const heatParts: readonly AnyPart[] = [roofHeatPart, savingsPart];
