import { roofHeatFrom } from '../../calc/heat/declaration.ts';
import { moisture } from '../../calc/moisture/declaration.ts';
import type { PermeanceMaterial } from '../../calc/moisture/fields.ts';
import { type Quantity, quantity } from '../../quantity/quantity.ts';
import type { JobValues } from '../job-fields.ts';
import { heatValues, wayToHeat } from './heat.ts';
import { part } from './part.ts';

/** How vapour passes the board of this ceiling; undefined where the rulebook has no permeance for it. */
const boardAs = ({ ceiling }: JobValues): PermeanceMaterial | undefined =>
  ceiling.board.startsWith('gypsum')
    ? 'gypsum board primed and painted'
    : ceiling.board === 'wood-fibre panel'
      ? 'wood-fibre board'
      : undefined;

/** The moisture screen through the deepest place of the roof, where the outside of the fill is coldest. */
export const moisturePart = part({
  calculation: moisture,
  asked: {
    indoors: 'moisture.indoors',
    indoor_humidity: 'moisture.indoor_humidity',
    outdoors: 'moisture.outdoors',
    outdoor_humidity: 'moisture.outdoor_humidity',
    period: 'moisture.period',
    layers: 'roof.cover',
  },
  askedIn: wayToHeat,
  needs: ['moisture.finish'],
  runs: ({ job }, rules) => {
    if (job.roof.cover !== 'metal')
      return 'The rulebook has no permeance for this roof cover: enter the layers in the calculator, with the maker’s own.';
    const { uniform, old, fill } = roofHeatFrom(heatValues(job), rules).result;
    const layer = (
      what: string,
      resistance: Quantity<'thermal resistance'>,
      material?: PermeanceMaterial,
    ) => ({
      what,
      resistance,
      material,
      permeance: undefined,
    });
    const { finish, ...air } = job.moisture;
    return [
      {
        values: {
          ...air,
          layers: [
            layer('indoor air film', uniform.indoor),
            layer('ceiling board', uniform.board, boardAs(job)),
            ...(finish ? [layer(finish, quantity(0, 'h ft2 F/Btu'), finish)] : []),
            ...(old ? [layer('old insulation', old.after.resistance)] : []),
            layer('new fill', fill.resistance),
            layer('metal roof', quantity(0, 'h ft2 F/Btu'), 'metal roof'),
            layer('outdoor air film', uniform.outdoor),
          ],
        },
      },
    ];
  },
});
