import { exhaustDuctCalculation } from '../calc/air/declaration.ts';
import { existingField, homeFields, roomsField } from '../calc/air/fields.ts';
import { cavityVentilation } from '../calc/before/cavity-ventilation-declaration.ts';
import { extraFields, readinessFields } from '../calc/before/readiness-fields.ts';
import { dust } from '../calc/crew/dust/declaration.ts';
import { fall } from '../calc/crew/fall/declaration.ts';
import { heat as heatBand } from '../calc/crew/heat/declaration.ts';
import { ladder } from '../calc/crew/ladder/declaration.ts';
import { line } from '../calc/crew/line/declaration.ts';
import { noise } from '../calc/crew/noise/declaration.ts';
import { allOptional, choiceField, groupField, listField, optional } from '../calc/declare/field.ts';
import { heatFields } from '../calc/heat/fields.ts';
import { trappedAirLoad } from '../calc/machine/pressure/declaration.ts';
import { blowingRate } from '../calc/machine/rate/declaration.ts';
import { testBoxCheck } from '../calc/machine/test-box/declaration.ts';
import { hoseMarkFields } from '../calc/marks/declaration.ts';
import { materials, moistureFields } from '../calc/moisture/fields.ts';
import { beadFields } from '../calc/patch/fields.ts';
import { patchKitCalculation } from '../calc/patch/kit-declaration.ts';
import { partFields, receiptFields } from '../calc/receipt/fields.ts';
import { savings } from '../calc/savings/declaration.ts';
import { fuelFields } from '../calc/savings/fuel.ts';
import { worthFields } from '../calc/savings/worth-fields.ts';
import { bays } from '../calc/ways/bays-declaration.ts';
import { ways } from '../calc/ways/compare.ts';
import { compareWays } from '../calc/ways/declaration.ts';
import { lanes } from '../calc/ways/lanes-declaration.ts';

const { stream_reach, stand_off, reach } = hoseMarkFields;
const { layers: _layers, ...airAndPeriod } = moistureFields;
/** What may hold vapour back at the ceiling, beside the board and below the roof. */
const finishes = materials.filter(
  (each) =>
    each !== 'gypsum board primed and painted' && each !== 'wood-fibre board' && each !== 'metal roof',
);
const { part: _part, insulation: _insulation, bag_weight: _weight, ...prefilled } = partFields;

/**
 * What the parts of a job ask beyond the plan itself, a group for each kind of question. All of it may be left empty: a part whose
 * entries are missing waits, and says for what.
 */
export const partFieldGroups = {
  survey: groupField('The survey', 'What was looked at before the fill; empty counts as not looked at.', {
    ...readinessFields,
    connectors: {
      ...extraFields.connectors,
      hint: 'What a licensed heating mechanic said of each that is entered with the roof, by its kind.',
    },
    bare_metal: optional(cavityVentilation.fields.bare_metal),
  }),
  ways: groupField(
    'Ways in',
    'What of this home can be opened, and which way is taken.',
    allOptional({
      gables: compareWays.fields.gables,
      edges: compareWays.fields.edges,
      chosen: choiceField('The way taken', 'The fill log counts its openings. Left empty, roof holes.', ways),
    }),
  ),
  hose: groupField(
    'Hose and tube',
    'Tried with the machine, hose and fill of this job.',
    allOptional({
      stream_reach,
      stand_off,
      spread: lanes.fields.spread,
      reach,
      tube: bays.fields.tube,
    }),
  ),
  machine: groupField('The machine', 'The test box, the rate, the pressure.', {
    ...allOptional({
      box_length: testBoxCheck.fields.length,
      box_width: testBoxCheck.fields.width,
      box_height: testBoxCheck.fields.height,
    }),
    fills: optional(testBoxCheck.fields.fills),
    allowed_spread: testBoxCheck.fields.allowed_spread,
    rate: blowingRate.fields.rate,
    run_weight: blowingRate.fields.weight,
    run_time: blowingRate.fields.time,
    strip: optional(blowingRate.fields.area),
    pressure: optional(trappedAirLoad.fields.pressure),
  }),
  patches: groupField('Patches', 'The bead you lay, and what your coil and roll are.', {
    ...allOptional(beadFields),
    coil_width: patchKitCalculation.fields.coil_width,
    coil_length: patchKitCalculation.fields.coil_length,
    membrane_width: patchKitCalculation.fields.membrane_width,
    membrane_length: patchKitCalculation.fields.membrane_length,
  }),
  heat: groupField(
    'Heat through the roof',
    'What the plan does not know yet of ceiling, old insulation and framing.',
    allOptional({
      board_thickness: heatFields.board_thickness,
      old_r_per_inch: heatFields.old_r_per_inch,
      old_condition: heatFields.old_condition,
      pressed_depth: heatFields.pressed_depth,
      framing_share: heatFields.framing_share,
      nominal_depth: heatFields.nominal_depth,
      energy_zone: heatFields.energy_zone,
    }),
  ),
  saving: groupField('Fuel and money', 'For what the fill saves.', {
    degree_days: optional(savings.fields.degree_days),
    ...allOptional(fuelFields),
    cost: savings.fields.cost,
    ...worthFields,
  }),
  air: groupField('Fresh air', 'Rooms, fans and ducts.', {
    floor: optional({
      ...homeFields.floor,
      hint: 'Inside, of all that is lived in. Left empty, length times width of the plan.',
    }),
    bedrooms: optional(homeFields.bedrooms),
    rooms: optional(roomsField),
    existing: existingField,
    ducts: optional(
      listField(
        'Ducts of the fans',
        'Each from its fan to the outdoors.',
        'a duct',
        exhaustDuctCalculation.fields,
        20,
      ),
    ),
  }),
  moisture: groupField('Moisture', 'For the screen of what vapour does in the roof.', {
    ...allOptional(airAndPeriod),
    finish: optional(
      choiceField(
        'Vapour retarder at the ceiling',
        'Paint, paper, film or facing, beside the board itself; left empty, none.',
        finishes,
      ),
    ),
  }),
  ladder: groupField('The ladder', ladder.question, ladder.fields),
  fall: groupField('Falls', fall.question, allOptional(fall.fields)),
  line: groupField('The overhead line', line.question, line.fields),
  noise: groupField('Noise', noise.question, allOptional(noise.fields)),
  weather: groupField('Heat of the day', heatBand.question, allOptional(heatBand.fields)),
  dust: groupField('Dust', dust.question, allOptional(dust.fields)),
  receipt: groupField('The receipt', 'What the paper tells; R only as the maker’s own paper has it.', {
    installer: receiptFields.installer,
    date: receiptFields.date,
    fact_sheet: receiptFields.fact_sheet,
    ...prefilled,
    other_parts: optional({
      ...receiptFields.parts,
      label: 'Other parts of the house',
      hint: 'Insulated on the same job; each stands by itself.',
    }),
  }),
} as const;
