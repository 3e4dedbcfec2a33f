import { formatNumber } from '../../quantity/format.ts';
import { compare } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { calculation, type Figure } from '../declare/calculation.ts';
import { lengthField, optional } from '../declare/field.ts';
import { type Remark, said } from '../declare/remark.ts';
import { beadFields } from './fields.ts';
import {
  beadFromCartridge,
  beadSection,
  cartridgeHolds,
  type cartridgeSizes,
  sealantFor,
} from './sealant.ts';

const three = { figures: 3 } as const;
const needed = { figures: 3, round: 'up' } as const;

/** What is not the same on every label, and which end of it was taken. */
function usualCartridge(size: (typeof cartridgeSizes)[number], rules: Rulebook): Remark[] {
  const usual = rules.find('patch.sealant.cartridge', { size }, 'holds');
  if (!usual || compare(usual.low, usual.high) === 0) return [];
  return [
    said`Labels of a ${size} one differ, from ${formatNumber(usual.low.amount)} to ${usual.high}; the lesser is taken.`,
  ];
}

function usuallyLost(rules: Rulebook): Remark {
  const { low, high } = rules.range('patch.sealant.lost');
  return said`Of a cartridge ${low} to ${high} is usually lost; the higher end is taken, so that the truck is not short.`;
}

export const sealantCalculation = calculation({
  name: 'sealant',
  title: 'Sealant',
  question: 'How far does a cartridge go, and how many does this bead take?',
  fields: {
    ...beadFields,
    length: optional(
      lengthField(
        'Lb',
        'Length of the bead',
        'Left empty, only the bead from a cartridge is given.',
        '10 ft',
        {
          zero: 'allowed',
          most: '10000 ft',
        },
      ),
    ),
  },
  example: { bead: '1/4 in', bead_shape: 'square', cartridge: 'small', length: '10 ft' },
  work: ({ bead, bead_shape, cartridge, cartridge_holds, lost, length }, rules) => {
    const laid = { size: bead, shape: bead_shape };
    const holds = cartridgeHolds(cartridge, cartridge_holds, rules);
    const section = beadSection(laid);
    const figures: Record<string, Figure> = {
      yield: {
        label: 'Bead from a cartridge, nothing lost',
        value: beadFromCartridge(holds, section),
        format: { ...three, round: 'down' },
      },
      section: { label: 'Cross-section of the bead', value: section, format: three },
      cartridge: { label: 'What the cartridge holds', value: holds },
    };
    if (length) {
      const need = sealantFor(length, laid, holds, lost ?? rules.range('patch.sealant.lost').high);
      figures.volume = { label: 'Sealant in the bead', value: need.volume, format: needed };
      figures.with_lost = { label: 'Sealant with what is lost', value: need.withLost, format: needed };
      figures.cartridges = { label: 'Cartridges', value: need.cartridges };
    }
    return {
      figures,
      cautions: ['caution.patch.weatherproof', 'caution.patch.weather', 'caution.patch.cold'],
      remarks: [
        ...(cartridge_holds ? [] : usualCartridge(cartridge, rules)),
        ...(length && !lost ? [usuallyLost(rules)] : []),
      ],
    };
  },
});
