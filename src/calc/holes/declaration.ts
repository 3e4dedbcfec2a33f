import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { amountIn, byMethod, quantity } from '../../quantity/quantity.ts';
import { calculation, type Figure } from '../declare/calculation.ts';
import { lengthField } from '../declare/field.ts';
import { alongFields } from './fields.ts';
import { flueCautions } from './flue-cautions.ts';
import { layOut } from './lay-out.ts';
import { placesUnknown } from './places-unknown.ts';
import { layoutProblem, layoutRestsOn } from './roof.ts';
import { clashSentence, departureSentences } from './words.ts';

const tape = { tape: 8 } as const;

export const layout = calculation({
  name: 'hole-layout',
  title: 'Hole layout',
  question: 'Where along the roof does each hole go, and at what spacing?',
  fields: {
    length: lengthField('L', 'Length of the roof', 'Along the ridge, from end to end.', '66 ft'),
    ...alongFields,
  },
  example: {
    length: '66 ft',
    truss_spacing: '24 in',
    first_truss: '0 in',
    seam_spacing: '4 ft',
    first_seam: '0 in',
  },
  common: {
    length: ['44 ft', '50 ft', '56 ft', '60 ft', '66 ft', '70 ft', '76 ft'],
    truss_spacing: ['16 in', '19.2 in', '24 in'],
  },
  work: ({ length, ...along }, rules) => {
    const found = layOut(layoutProblem(length, along, 'back', rules));
    const cautions: CautionId[] = [...flueCautions(along.obstacles ?? []), 'caution.layout.framing'];
    cautions.push(...placesUnknown(along, length, false, rules));
    if (found.outcome === 'no-room') {
      return {
        figures: { outcome: { label: 'Layout', value: 'no room' } },
        cautions: [...cautions, 'caution.layout.departs'],
        remarks: [clashSentence(found.clash)],
      };
    }
    const { positions, overSeam, moved, evenPlaces } = found.layout;
    const method = 'search of every place on the tape';
    const operands = layoutRestsOn(length, along, rules);
    const holes = quantity(positions.length, 'hole', { from: 'method', method, operands });
    const figures: Record<string, Figure> = {
      holes: { label: 'Holes', value: holes },
      outcome: {
        label: 'Layout',
        value: found.outcome === 'meets-every-rule' ? 'meets every rule' : 'least departure',
      },
    };
    for (const [place, amount] of positions.entries()) {
      const value = byMethod(method, operands, amount, 'in');
      figures[`hole_${place + 1}`] = {
        label: `Hole ${place + 1}, from the starting end`,
        value,
        format: tape,
      };
    }
    const usual = amountIn(rules.value('access.roof-holes.usual-move'), 'in');
    const far = moved.flatMap((by, place) =>
      Math.abs(by) > usual
        ? [
            `Hole ${place + 1} lies ${format(quantity(Math.abs(by), 'in'), tape)} from its even place at ${format(quantity(evenPlaces[place] ?? 0, 'in'), tape)}.`,
          ]
        : [],
    );
    if (far.length > 0) cautions.push('caution.layout.moved-far');
    if (overSeam.some(Boolean)) cautions.push('caution.layout.over-seam');
    if (found.outcome === 'meets-every-rule') return { figures, cautions, remarks: far };
    return {
      figures,
      cautions: [...cautions, 'caution.layout.departs'],
      remarks: [clashSentence(found.clash), ...departureSentences(found.departures), ...far],
    };
  },
});
