import type { CautionId } from '../../generated/rule-types.ts';
import type { Answers, ExtraSurvey, LookedAt } from './readiness-fields.ts';

/** What an answer means for the fill; the state of an open condition is the level of its caution. */
export type Meaning =
  | { readonly state: 'clear'; readonly means: string }
  | { readonly state: 'stop' | 'warn'; readonly means: string; readonly caution: CautionId };

const clear = (means: string): Meaning => ({ state: 'clear', means });
const stop = (caution: CautionId, means: string): Meaning => ({ state: 'stop', means, caution });
const warn = (caution: CautionId, means: string): Meaning => ({ state: 'warn', means, caution });

/** Every answer of every condition. */
export const meanings: { readonly [N in LookedAt]: { readonly [A in Answers<N>]: Meaning } } = {
  ceiling: {
    sound: clear('It may carry what its board is rated for.'),
    'not sound': stop('caution.before.ceiling-unsound', 'It is mended before any fill.'),
  },
  leaks: {
    'none found': clear('Nothing to mend.'),
    'leaks found': stop('caution.before.wet', 'They are mended, and the cavity dries, before any fill.'),
  },
  old_insulation: {
    'dry or none': clear('The new fill may lie on it.'),
    wet: stop('caution.before.wet', 'It comes out, and the cavity dries, before any fill.'),
  },
  roof_surface: {
    sound: clear('Nothing to mend.'),
    worn: warn('caution.before.roof-worn', 'It will leak into the fill sooner or later.'),
  },
  roof_carries: {
    'carries the crew': clear('The crew may work on it, on the framing or on planks.'),
    'in doubt': stop('caution.roof.carries-crew', 'Nobody steps on it.'),
    'nobody goes on it': clear('The work is done from a platform, at the gable end or the roof edge.'),
  },
  pests: {
    'no sign': clear('Nothing to do.'),
    'signs of them': stop('caution.before.pests', 'They are gone, and shut out, before any fill.'),
  },
  junctions: {
    'all closed': clear('Nothing to do.'),
    'some open': stop('caution.before.wiring', 'An electrician closes them before any fill.'),
  },
  wiring: {
    sound: clear('Nothing to do.'),
    'old or damaged': stop('caution.before.wiring', 'An electrician looks at it before any fill.'),
  },
  vermiculite: {
    none: clear('Nothing to do.'),
    'found, or in doubt': stop('caution.before.vermiculite', 'The work stops, and the cavity is closed.'),
  },
  penetrations: {
    sealed: clear('No indoor air reaches the fill that way.'),
    'not sealed': stop('caution.before.seal-first', 'They are sealed before any fill.'),
  },
  fans: {
    'all end outdoors': clear('Nothing to do.'),
    'some end in the cavity': stop('caution.before.fan-inside', 'They are ducted outdoors before any fill.'),
    'missing where one is wanted': warn('caution.before.fan-missing', 'It goes in before the fill.'),
  },
  ducts: {
    'none overhead': clear('Nothing to keep clear of.'),
    'all tight': clear('The hose is fed beside them.'),
    'leaking, loose or bare': stop('caution.ducts.leaks', 'They are made tight and covered before any fill.'),
  },
  flues: {
    none: clear('Nothing to keep clear of.'),
    'all shielded': clear('The fill stays outside the shields.'),
    'some not shielded': stop('caution.flue.keep-clear', 'Each gets its shield before any fill.'),
  },
  lights: {
    none: clear('Nothing to keep clear of.'),
    'all rated for contact': clear('The fill may touch them, unless it is cellulose.'),
    'all rated, and held clear': clear('The fill stays outside the barriers.'),
    'not rated, held clear': clear('The fill stays outside the barriers, and none lies above.'),
    'not rated, not held clear': stop(
      'caution.before.lights',
      'Each is changed or held clear before any fill.',
    ),
  },
};

/** Every answer about a single-wall connector. */
export const connectorMeanings: { readonly [A in NonNullable<ExtraSurvey['connectors']>]: Meaning } = {
  'a mechanic let each stand': clear('The fill keeps the distance that listing and local code ask for.'),
  'no mechanic has looked': stop(
    'caution.flue.connector',
    'A licensed heating mechanic says what may stand there before any fill.',
  ),
};

/** Every answer about what the flues are. */
export const flueKindMeanings: { readonly [A in NonNullable<ExtraSurvey['flue_kinds']>]: Meaning } = {
  'each is known': clear('The fill keeps the distance of its kind.'),
  'some not known': stop('caution.flue.kind-unknown', 'Its kind is found out before any fill.'),
};

/** What the ceiling’s load, with the fill that is planned and the air that blows it, means. */
export const underFillMeanings: { readonly [A in NonNullable<ExtraSurvey['under_fill']>]: Meaning } = {
  'carries it': clear('The weight that is planned is within what it may carry.'),
  'does not carry it': stop(
    'caution.ceiling.overloaded',
    'Plan a lighter fill, or have an engineer design the support.',
  ),
  'no limit is known': stop('caution.ceiling.unrated', 'An engineer says what it may carry before any fill.'),
  'gives under the air': stop(
    'caution.machine.pressed',
    'The gauge read more than it carries with the fill on it: nothing is blown before that is mended.',
  ),
};

/** What lights that are rated for contact, and not held clear, mean under cellulose. */
export const lightsInCellulose = stop(
  'caution.before.lights',
  'Cellulose keeps off these too: each is held clear before any fill.',
);

/** What a roof that nobody goes on means where holes are to be cut in it. */
export const holesInRoof = stop(
  'caution.roof.carries-crew',
  'Holes are to be cut in it, and nobody goes on it: take another way in.',
);

/**
 * The caution that a condition is asked by: what its gravest answer trips.
 * @example restsOn('pests') // => 'caution.before.pests'
 */
export function restsOn(name: LookedAt): CautionId {
  const tripped = Object.values(meanings[name] as Readonly<Record<string, Meaning>>).filter(
    (each): each is Exclude<Meaning, { state: 'clear' }> => each.state !== 'clear',
  );
  const gravest = tripped.find(({ state }) => state === 'stop') ?? tripped[0];
  if (!gravest) throw new Error(`${name}: found no answer that trips a caution, expected one`);
  return gravest.caution;
}
