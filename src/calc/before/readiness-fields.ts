import { choiceField, optional, type Values } from '../declare/field.ts';

export const notLookedAt = 'not looked at';

/** A question about one condition; left empty, it counts as not looked at. */
const condition = <const C extends string>(label: string, hint: string, answers: readonly C[]) =>
  optional(choiceField<C | typeof notLookedAt>(label, hint, [...answers, notLookedAt]));

/** What is looked at before the fill; the job file and the readiness calculation both ask it so. */
export const readinessFields = {
  ceiling: condition('Ceiling', 'Press it, sight along it, look for cracks, sags and loose panels.', [
    'sound',
    'not sound',
  ]),
  leaks: condition('Leaks', 'Through the roof, at vents and at edges; stains tell.', [
    'none found',
    'leaks found',
  ]),
  old_insulation: condition('Old insulation', 'Feel it in several places.', ['dry or none', 'wet']),
  roof_surface: condition('Roof surface', 'Rust, open seams, worn coating, ponding.', ['sound', 'worn']),
  roof_carries: condition('Roof under the crew', 'Looked at from inside and outside.', [
    'carries the crew',
    'in doubt',
    'nobody goes on it',
  ]),
  pests: condition('Pests', 'Droppings, nests, gnawed wires, ways in.', ['no sign', 'signs of them']),
  junctions: condition('Junction boxes', 'In the cavity, as far as it can be seen.', [
    'all closed',
    'some open',
  ]),
  wiring: condition('Wiring', 'Old, bare, brittle, spliced outside a box.', ['sound', 'old or damaged']),
  vermiculite: condition('Vermiculite', 'Pebbly, shiny grains, grey-brown or silver-gold.', [
    'none',
    'found, or in doubt',
  ]),
  penetrations: condition(
    'Ceiling penetrations',
    'Pipes, wires, boxes, vents, the furnace closet, and what brings a burner its air.',
    ['sealed', 'not sealed'],
  ),
  fans: condition('Exhaust fans', 'Kitchen, baths, and the dryer; follow each duct to its end.', [
    'all end outdoors',
    'some end in the cavity',
    'missing where one is wanted',
  ]),
  ducts: condition('Air ducts', 'Grilles in the ceiling tell of ducts above it.', [
    'none overhead',
    'all tight',
    'leaking, loose or bare',
  ]),
  flues: condition('Flues and chimneys', 'Everything hot that passes through the cavity.', [
    'none',
    'all shielded',
    'some not shielded',
  ]),
  lights: condition('Recessed lights', 'Read the label inside the can.', [
    'none',
    'all rated for contact',
    'all rated, and held clear',
    'not rated, held clear',
    'not rated, not held clear',
  ]),
} as const;

/** What only some homes are asked; left empty, it is no condition of this one. */
export const extraFields = {
  connectors: optional(
    choiceField(
      'Single-wall connectors',
      'What a licensed heating mechanic said of each that passes through the cavity. Left empty where there is none.',
      ['a mechanic let each stand', 'no mechanic has looked'],
    ),
  ),
  flue_kinds: optional(
    choiceField(
      'Kind of each flue',
      'Has it been read from a label, or told by a mechanic? It says how far the fill stays off. Left empty where there is none.',
      ['each is known', 'some not known'],
    ),
  ),
  roof_holes: optional(
    choiceField('Holes in the roof', 'Is the cavity filled through holes that are cut in the roof?', [
      'yes',
      'no',
    ]),
  ),
  cellulose: optional(
    choiceField('Cellulose', 'Is the fill cellulose? It keeps off every recessed light.', ['yes', 'no']),
  ),
  under_fill: optional(
    choiceField(
      'Ceiling under the fill',
      'What its own page, and that on trapped air, say of the fill that is planned. Left empty, it is not asked here.',
      ['carries it', 'does not carry it', 'no limit is known', 'gives under the air'],
    ),
  ),
} as const;

export type Survey = Values<typeof readinessFields>;
export type ExtraSurvey = Values<typeof extraFields>;
export type LookedAt = keyof Survey;
/** The answers of one condition, once it has been looked at. */
export type Answers<N extends LookedAt> = Exclude<NonNullable<Survey[N]>, typeof notLookedAt>;
