import { choiceField, lengthField, optional, quantityField } from '../declare/field.ts';
import { beadShapes, cartridgeSizes } from './sealant.ts';

/** The hole that is patched; every calculation of patches asks it so. */
export const holeField = optional(
  lengthField('dh', 'Diameter of the hole', 'Left empty, the hole of the rulebook.', '6 in', {
    most: '4 ft',
  }),
);

/** The bead and what it comes from; the kit and the sealant calculation both ask it so. */
export const beadFields = {
  bead: lengthField(
    'b',
    'Size of the bead',
    'Side of a square bead, or diameter of a round one, as you lay it or as its label says.',
    '1/4 in',
    { most: '2 in' },
  ),
  bead_shape: choiceField('Shape of the bead', 'A round bead takes less than a square one.', beadShapes),
  cartridge: choiceField('Cartridge', 'The usual small one, or the large one.', cartridgeSizes),
  cartridge_holds: optional(
    quantityField({
      dimension: 'volume of a piece',
      beside: 'fl oz/cartridge',
      symbol: 'Vc',
      label: 'What the cartridge holds',
      hint: 'From its label; in place of the usual size.',
      example: '10.1 fl oz/cartridge',
      zero: 'refused',
      most: '100 fl oz/cartridge',
    }),
  ),
  lost: optional(
    quantityField({
      dimension: 'number',
      beside: 'percent',
      symbol: 'ls',
      label: 'Sealant lost',
      hint: 'In the cartridge and to tooling. Left empty, the higher end of the rulebook.',
      example: '15 %',
      zero: 'allowed',
      most: '90 %',
    }),
  ),
} as const;
