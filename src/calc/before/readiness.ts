import type { CautionId } from '../../generated/rule-types.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type Remark, said } from '../declare/remark.ts';
import {
  connectorMeanings,
  flueKindMeanings,
  holesInRoof,
  lightsInCellulose,
  type Meaning,
  meanings,
  restsOn,
  underFillMeanings,
} from './meanings.ts';
import {
  type ExtraSurvey,
  extraFields,
  type LookedAt,
  notLookedAt,
  readinessFields,
  type Survey,
} from './readiness-fields.ts';

const readinessVerdicts = ['ready', 'not ready', 'not looked at everywhere'] as const;
export type ReadinessVerdict = (typeof readinessVerdicts)[number];

export type ConditionState = 'clear' | 'stop' | 'warn' | 'not looked at';

/** One condition of the list: what was found, and what that means for the fill. */
export interface Condition {
  readonly name: LookedAt | 'connectors' | 'flue_kinds' | 'under_fill' | 'paint' | 'asbestos';
  readonly label: string;
  readonly answer: string;
  readonly state: ConditionState;
  readonly means: string;
  /** What the condition is asked by, whatever was found. */
  readonly restsOn: CautionId;
  /** What this answer trips. */
  readonly caution?: CautionId;
}

export interface Readiness {
  readonly verdict: ReadinessVerdict;
  readonly conditions: readonly Condition[];
  /** The conditions that hold the plan's figures back. */
  readonly openStops: readonly Condition[];
  /** Each once: the stops, then the warnings, then the notes. */
  readonly cautions: readonly CautionId[];
  readonly remarks: readonly Remark[];
}

/**
 * Is the home ready to be filled, and if not, what stands in the way? An empty answer counts as not looked at, and so do
 * paint and asbestos where the year is not known, or has not come yet. One open stop makes it not ready, whatever else was not looked at. A roof that nobody
 * goes on is no stop by itself, but one for holes in it; lights that are rated for contact are none, but one under cellulose.
 * Source of the method: ours; each condition's caution names its own.
 * @example readiness({}, undefined, rules).verdict // => 'not looked at everywhere'
 */
export function readiness(
  { connectors, flue_kinds, roof_holes, cellulose, under_fill, ...survey }: Survey & Partial<ExtraSurvey>,
  typed: number | undefined,
  rules: Rulebook,
): Readiness {
  // A slip of a key must not clear a home of old paint: no home is newer than the rulebook it is held against.
  const built = typed !== undefined && typed > Number.parseInt(rules.version, 10) ? undefined : typed;
  const holesForNobody = survey.roof_carries === 'nobody goes on it' && roof_holes === 'yes';
  const lightsTouched = survey.lights === 'all rated for contact' && cellulose === 'yes';
  const conditions: readonly Condition[] = [
    ...(Object.keys(readinessFields) as LookedAt[]).map((name) => ({
      ...looked(name, survey[name]),
      ...(name === 'roof_carries' && holesForNobody ? holesInRoof : {}),
      ...(name === 'lights' && lightsTouched ? lightsInCellulose : {}),
    })),
    ...(connectors
      ? [extra('connectors', connectors, 'caution.flue.connector', connectorMeanings[connectors])]
      : []),
    ...(flue_kinds
      ? [extra('flue_kinds', flue_kinds, 'caution.flue.kind-unknown', flueKindMeanings[flue_kinds])]
      : []),
    ...(under_fill
      ? [extra('under_fill', under_fill, 'caution.ceiling.overloaded', underFillMeanings[under_fill])]
      : []),
    fromYear(
      'paint',
      'Paint',
      built,
      (year) => year < rules.value('safety.built.lead-before').amount,
      'caution.before.old-paint',
      [
        'It is newer than the paint that is taken to hold lead.',
        'It is taken to hold lead unless a test says otherwise.',
      ],
    ),
    fromYear(
      'asbestos',
      'Asbestos',
      built,
      (year) => year <= rules.value('safety.built.asbestos-until').amount,
      'caution.before.asbestos',
      [
        'None is presumed from the year alone.',
        'Pipe and duct wrapping and ceiling texture are presumed to hold it.',
      ],
    ),
  ];
  const openStops = conditions.filter(({ state }) => state === 'stop');
  const left = conditions.filter(({ state }) => state === 'not looked at');
  const verdict = openStops.length > 0 ? 'not ready' : left.length > 0 ? 'not looked at everywhere' : 'ready';
  return {
    verdict,
    conditions,
    openStops,
    cautions: cautionsOf(conditions, built, rules),
    remarks: [
      ...(built === typed ? [] : [`No home was built in ${typed}: enter the year again.`]),
      ...remarksOf(conditions, left, rules),
    ],
  };
}

/** A condition by what was found, and what that means. */
const found = (
  name: Condition['name'],
  label: string,
  answer: string,
  restsOn: CautionId,
  meaning: Meaning,
): Condition => ({ name, label, answer, restsOn, ...meaning });

function looked<N extends LookedAt>(name: N, answer: Survey[N]): Condition {
  const { label } = readinessFields[name];
  if (answer === undefined || answer === notLookedAt) return unseen(name, label, restsOn(name));
  const meaning = (meanings[name] as Readonly<Record<string, Meaning>>)[answer];
  if (!meaning) throw new Error(`found no meaning of "${answer}" for ${name}, expected one for each answer`);
  return found(name, label, answer, restsOn(name), meaning);
}

/** A condition that only some homes are asked. */
const extra = (
  name: 'connectors' | 'flue_kinds' | 'under_fill',
  answer: string,
  restsOn: CautionId,
  meaning: Meaning,
): Condition => found(name, extraFields[name].label, answer, restsOn, meaning);

const unseen = (name: Condition['name'], label: string, restsOn: CautionId): Condition => ({
  name,
  label,
  restsOn,
  answer: notLookedAt,
  state: notLookedAt,
  means: 'It is not known to be sound.',
});

function fromYear(
  name: Condition['name'],
  label: string,
  built: number | undefined,
  old: (year: number) => boolean,
  caution: CautionId,
  [newer, older]: readonly [string, string],
): Condition {
  if (built === undefined) return unseen(name, label, caution);
  const answer = `built ${built}`;
  return old(built)
    ? { name, label, answer, restsOn: caution, state: 'warn', means: older, caution }
    : { name, label, answer, restsOn: caution, state: 'clear', means: newer };
}

function cautionsOf(
  conditions: readonly Condition[],
  built: number | undefined,
  rules: Rulebook,
): readonly CautionId[] {
  const of = (wanted: ConditionState): CautionId[] =>
    conditions.flatMap(({ state, caution }) => (state === wanted && caution ? [caution] : []));
  const cautions: CautionId[] = [...of('stop'), ...of('warn')];
  if (conditions.some(({ state }) => state === notLookedAt)) cautions.push('caution.before.not-looked');
  // The code came into force within the year, so a home of that year may be of either kind.
  if (built !== undefined && built <= rules.value('safety.built.federal-code-from').amount)
    cautions.push('caution.before.no-data-plate');
  return [...new Set(cautions)];
}

function remarksOf(
  conditions: readonly Condition[],
  left: readonly Condition[],
  rules: Rulebook,
): readonly Remark[] {
  const remarks: Remark[] = [];
  if (left.length > 0)
    remarks.push(`Not looked at: ${left.map(({ label }) => label.toLowerCase()).join(', ')}.`);
  if (conditions.some(({ name, state }) => name === 'paint' && state === 'warn')) {
    const { indoors, outdoors } = smallPaintJob(rules);
    const within = rules.value('safety.paint.same-job-within');
    remarks.push(
      said`The lead-safe rules leave out a job that disturbs ${indoors} of paint or less in a room, and ${outdoors} or less outdoors; jobs in the same room within ${within} add up.`,
    );
  }
  return remarks;
}

/** How much painted surface may a small job disturb before the lead-safe rules reach it? */
export const smallPaintJob = (rules: Rulebook) => ({
  indoors: rules.value('safety.paint.minor-indoors'),
  outdoors: rules.value('safety.paint.minor-outdoors'),
});
