import { exhaustDuctCalculation, freshAirCalculation } from '../../calc/air/declaration.ts';
import { floorOf } from './home.ts';
import { moisturePart } from './moisture.ts';
import { type AnyPart, part } from './part.ts';

const freshAirPart = part({
  calculation: freshAirCalculation,
  whileHeld: true,
  asked: { floor: 'air.floor', bedrooms: 'air.bedrooms', rooms: 'air.rooms', existing: 'air.existing' },
  runs: ({ job }) => [
    {
      values: {
        floor: job.air.floor ?? floorOf(job),
        bedrooms: job.air.bedrooms,
        rooms: job.air.rooms ?? [],
        existing: job.air.existing,
      },
    },
  ],
});

const ductPart = part({
  calculation: exhaustDuctCalculation,
  whileHeld: true,
  asked: { flow: 'air.ducts', size: 'air.ducts', kind: 'air.ducts', elbows: 'air.ducts' },
  runs: ({ job: { air } }) => {
    const ducts = air.ducts ?? [];
    if (ducts.length === 0) return 'No duct of a fan is entered.';
    return ducts.map((values, place) => ({
      title: `${exhaustDuctCalculation.title} ${place + 1}`,
      values,
    }));
  },
});

/** How much fresh air the home needs, how its fans are ducted, and what vapour does in the roof. */
export const airParts: readonly AnyPart[] = [freshAirPart, ductPart, moisturePart];
