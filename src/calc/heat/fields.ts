import { sectionFields } from '../cavity/fields.ts';
import { ceilingFields } from '../ceiling/fields.ts';
import { choiceField, ifAny, lengthField, optional, quantityField } from '../declare/field.ts';
import { materialFields } from '../fill/fields.ts';
import { oldConditions } from './old-insulation.ts';
import { framingShares } from './roof-heat.ts';

export const zones = ['zone 1', 'zone 2', 'zone 3'] as const;

/** What describes the roof and its insulation to the heat calculation. */
export const heatFields = {
  ...sectionFields,
  board: ceilingFields.board,
  board_thickness: optional(
    lengthField(
      'tb',
      'Thickness of the board',
      'For wood-fibre panel; gypsum board has it in its name.',
      '1/2 in',
      {
        most: '3 in',
      },
    ),
  ),
  material: materialFields.material,
  density: optional(materialFields.density),
  label_r_per_inch: materialFields.label_r_per_inch,
  old_depth: ifAny(
    lengthField('do', 'Depth of the old insulation', 'As it lies now.', '2 in', {
      zero: 'or none',
      most: '6 ft',
    }),
  ),
  old_r_per_inch: optional(
    quantityField({
      dimension: 'resistance per length',
      beside: 'h ft2 F/(Btu in)',
      symbol: 'ro',
      label: 'R per inch of the old insulation',
      hint: 'Loose; left empty, the middle of the lightest published batts.',
      example: '3 R per in',
      zero: 'refused',
      most: '10 R per in',
    }),
  ),
  old_condition: optional(
    choiceField(
      'Old insulation under the fill',
      'Left empty, it is taken to lie loose. A batt with fill blown above it is often pressed.',
      oldConditions,
    ),
  ),
  pressed_depth: optional(
    lengthField('dp', 'Depth once pressed', 'Of the old insulation, under the new fill.', '1 1/2 in', {
      most: '6 ft',
    }),
  ),
  framing_share: choiceField(
    'Framing',
    'The share of the ceiling that is framing: as the federal standard takes it, or one truss member in each spacing.',
    framingShares,
  ),
  truss_spacing: optional(
    lengthField('s', 'Truss spacing', 'Centre to centre; for the share from the trusses.', '24 in', {
      most: '8 ft',
    }),
  ),
  nominal_depth: optional(
    lengthField(
      'tn',
      'Nominal depth of the insulation',
      'Where it has its full R; the roof restricts it where it is lower. Left empty, the deepest place.',
      '10 in',
      { most: '6 ft' },
    ),
  ),
  energy_zone: ifAny(
    choiceField(
      'Uo value zone',
      'From the home’s heating certificate or the federal map; for the yardstick.',
      zones,
    ),
  ),
} as const;
