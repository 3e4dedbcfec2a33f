import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { inUnit, type Quantity } from '../../quantity/quantity.ts';
import { type AnswerTable, calculation, type Figure } from '../declare/calculation.ts';
import { countField, lengthField, optional, quantityField } from '../declare/field.ts';
import { printed, said } from '../declare/remark.ts';
import { patchCautions } from './cautions.ts';
import { beadFields, holeField } from './fields.ts';
import { type PatchKit, patchKit } from './kit.ts';

/** Squares and widths are told in inches, as they are cut and sold; what is run off a tape in feet and inches. */
const cut = { figures: 5 } as const;
/** What is to load is not rounded down. */
const tape = { tape: 16, round: 'up' } as const;
const share = { figures: 2 } as const;
const need = { figures: 3, round: 'up' } as const;

export const patchKitCalculation = calculation({
  name: 'patch-kit',
  title: 'Patch kit',
  question: 'What goes on the truck to patch every hole of this job?',
  fields: {
    holes: countField('Holes', 'How many holes this job patches.', '5', { most: 500 }),
    diameter: holeField,
    ...beadFields,
    coil_width: optional(
      lengthField('wc', 'Width of the coil', 'Left empty, the usual width.', '24 in', { most: '20 ft' }),
    ),
    coil_length: optional(
      quantityField({
        dimension: 'length of a piece',
        beside: 'ft/roll',
        symbol: 'Lc',
        label: 'Length of a roll of coil',
        hint: 'Left empty, the usual length.',
        example: '50 ft/roll',
        zero: 'refused',
        most: '1000 ft/roll',
      }),
    ),
    membrane_width: optional(
      lengthField(
        'wm',
        'Width of the membrane roll',
        'Left empty, the narrowest usual roll that covers the square in one piece.',
        '18 in',
        { most: '20 ft' },
      ),
    ),
    membrane_length: optional(
      quantityField({
        dimension: 'length of a piece',
        beside: 'ft/roll',
        symbol: 'Lr',
        label: 'Length of a roll of membrane',
        hint: 'From its label. Left empty, the length needed is given and no rolls are counted.',
        example: '50 ft/roll',
        zero: 'refused',
        most: '1000 ft/roll',
      }),
    ),
  },
  example: { holes: 5, diameter: '6 in', bead: '1/4 in', bead_shape: 'square', cartridge: 'small' },
  work: (values, rules) => {
    const kit = patchKit(
      values.holes,
      values.diameter,
      {
        coilWidth: values.coil_width,
        coilLength: values.coil_length,
        membraneWidth: values.membrane_width,
        membraneLength: values.membrane_length,
        bead: { size: values.bead, shape: values.bead_shape },
        cartridge: values.cartridge,
        cartridgeHolds: values.cartridge_holds,
        lost: values.lost,
      },
      rules,
    );
    const lapped = kit.membrane.strips.amount > 1;
    return {
      figures: {
        kit: { label: 'To load', value: inALine(kit) },
        ...figuresOf(kit),
      },
      tables: { list: listOf(kit) },
      cautions: [...patchCautions, ...(lapped ? (['caution.patch.strips'] satisfies CautionId[]) : [])],
      remarks: lapped
        ? [
            said`The roll is narrower than the square, so each square is laid in ${kit.membrane.strips.amount} strips that lap by ${printed(kit.layers.overlap, cut)} or more, as a patch layer overlaps. A wider roll needs no lap.`,
          ]
        : [],
    };
  },
});

/** "5 caps, 180 screws, 3 cartridges": what is counted, in a line. */
function inALine({ caps, screws, sealant }: PatchKit): string {
  const many = caps.amount === 1 ? '1 cap' : `${caps.amount} caps`;
  return [many, format(screws), ...(sealant ? [format(sealant.cartridges)] : [])].join(', ');
}

function figuresOf(kit: PatchKit): Record<string, Figure> {
  const { metal, membrane, sealant } = kit;
  const optionally = (name: string, label: string, value: Quantity | undefined, format: Figure['format']) =>
    value ? { [name]: { label, value, ...(format ? { format } : {}) } } : {};
  return {
    screws: { label: 'Screws', value: kit.screws },
    coil_length: { label: 'Metal off the coil', value: metal.length, format: tape },
    coil_abreast: { label: 'Squares side by side on the coil', value: metal.abreast },
    ...optionally('coil_waste', 'Share of that metal in offcuts', metal.waste, share),
    ...optionally('coil_rolls', 'Rolls of coil', metal.rolls, undefined),
    membrane_width: { label: 'Width of the membrane roll', value: membrane.width, format: cut },
    membrane_length: { label: 'Membrane off the roll', value: membrane.length, format: tape },
    membrane_abreast: { label: 'Squares side by side on the roll', value: membrane.abreast },
    membrane_strips: { label: 'Strips to a square', value: membrane.strips },
    ...optionally('membrane_waste', 'Share of that membrane in offcuts and laps', membrane.waste, share),
    ...optionally('membrane_rolls', 'Rolls of membrane', membrane.rolls, undefined),
    bead: { label: 'Bead of sealant', value: kit.bead, format: tape },
    ...(sealant
      ? {
          sealant: { label: 'Sealant in the bead', value: sealant.volume, format: need },
          sealant_with_lost: {
            label: 'Sealant with what is lost',
            value: sealant.withLost,
            format: need,
          },
          cartridges: { label: 'Cartridges', value: sealant.cartridges },
        }
      : {}),
  };
}

/** The kit as a list to load by. */
function listOf({
  layers,
  caps,
  metalSquares,
  membraneSquares,
  metal,
  membrane,
  screws,
  sealant,
}: PatchKit): AnswerTable {
  const inSquares = (q: Quantity<'length'>) => `${format(q, cut)} square`;
  return {
    title: 'To load',
    columns: { what: 'What', size: 'Size', many: 'How many' },
    rows: [
      { what: 'cap', size: layers.cap, many: caps },
      { what: 'square of metal', size: inSquares(layers.metal), many: metalSquares },
      { what: 'metal off the coil', size: `${format(metal.width, cut)} wide`, many: metal.length },
      { what: 'screw for sheet metal', size: 'as the roof asks', many: screws },
      { what: 'square of membrane', size: inSquares(layers.membrane), many: membraneSquares },
      { what: 'membrane off the roll', size: `${format(membrane.width, cut)} wide`, many: membrane.length },
      ...(sealant
        ? [{ what: 'sealant', size: inUnit(sealant.cartridge, 'fl oz/cartridge'), many: sealant.cartridges }]
        : []),
    ],
    format: { size: cut, many: tape },
  };
}
