import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meanings } from '../../../src/calc/before/meanings.ts';
import { type Condition, readiness } from '../../../src/calc/before/readiness.ts';
import { readinessCheck } from '../../../src/calc/before/readiness-declaration.ts';
import {
  type ExtraSurvey,
  type LookedAt,
  notLookedAt,
  readinessFields,
  type Survey,
} from '../../../src/calc/before/readiness-fields.ts';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { readFields, sentence } from '../../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import type { CautionId } from '../../../src/generated/rule-types.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { printed } from '../told.ts';

const { data } = theProject();
const rules = openRulebook(data);

const sound: Survey = {
  ceiling: 'sound',
  leaks: 'none found',
  old_insulation: 'dry or none',
  roof_surface: 'sound',
  roof_carries: 'carries the crew',
  pests: 'no sign',
  junctions: 'all closed',
  wiring: 'sound',
  vermiculite: 'none',
  penetrations: 'sealed',
  fans: 'all end outdoors',
  ducts: 'none overhead',
  flues: 'none',
  lights: 'none',
};
const NEW = 1995;
const names = Object.keys(readinessFields) as LookedAt[];
const every = names.flatMap((name) =>
  Object.entries(meanings[name]).map(([given, meaning]) => ({ name, given, meaning })),
);

describe('a home is ready only where every condition was looked at', () => {
  test.each(names)('all but %s', (name) => {
    const rest: Survey = { ...sound, [name]: undefined };
    expect(readiness(rest, NEW, rules).verdict).toBe('not looked at everywhere');
    expect(readiness({ ...sound, [name]: notLookedAt }, NEW, rules).verdict).toBe('not looked at everywhere');
    expect(readiness(rest, NEW, rules).cautions).toEqual(['caution.before.not-looked']);
  });
});

describe('each answer', () => {
  test.each(every)('$name: $given', ({ name, given, meaning }) => {
    const read = readiness({ ...sound, [name]: given }, NEW, rules);
    const condition = read.conditions.find((each) => each.name === name);
    expect(condition).toMatchObject({ answer: given, state: meaning.state, means: meaning.means });
    const open = meaning.state !== 'clear';
    expect(read.cautions).toEqual(open ? [meaning.caution] : []);
    expect(read.verdict).toBe(meaning.state === 'stop' ? 'not ready' : 'ready');
    if (open) expect(data.cautions[meaning.caution]?.level).toBe(meaning.state);
  });

  test('names the caution that its condition is asked by, whatever was found, and the caution its source', () => {
    const { conditions } = readiness(sound, NEW, rules);
    const shown = answer(readinessCheck, { ...sound, built: String(NEW) }, rules);
    const rows = shown.ok ? (shown.value.tables?.conditions?.rows ?? []) : [];
    expect(conditions).toHaveLength(names.length + 2);
    expect(rows.map(({ rule }) => rule)).toEqual(conditions.map(({ restsOn }) => ({ caution: restsOn })));
    for (const { name, restsOn } of conditions) {
      const tripped = name in meanings ? Object.values(meanings[name as LookedAt]) : [];
      if (tripped.length > 0)
        expect(tripped.flatMap((each) => ('caution' in each ? [each.caution] : []))).toContain(restsOn);
      expect(data.cautions[restsOn], restsOn).toBeDefined();
    }
    expect(conditions.find(({ name }) => name === 'paint')?.restsOn).toBe('caution.before.old-paint');
  });

  test('of the form has a meaning, and none has one that the form does not offer', () => {
    for (const name of names) {
      const { choices } = readinessFields[name];
      expect(Object.keys(meanings[name]).sort()).toEqual(
        choices.filter((choice: string) => choice !== notLookedAt).sort(),
      );
      expect(Object.values(meanings[name]).some(({ state }) => state === 'clear')).toBe(true);
      expect(Object.values(meanings[name]).some(({ state }) => state !== 'clear')).toBe(true);
    }
  });
});

/** Which conditions hold the figures back when they are open; written down from what the work is, not from the code. */
const holding: readonly [LookedAt, string][] = [
  ['ceiling', 'not sound'],
  ['leaks', 'leaks found'],
  ['old_insulation', 'wet'],
  ['roof_carries', 'in doubt'],
  ['pests', 'signs of them'],
  ['junctions', 'some open'],
  ['wiring', 'old or damaged'],
  ['vermiculite', 'found, or in doubt'],
  ['penetrations', 'not sealed'],
  ['fans', 'some end in the cavity'],
  ['ducts', 'leaking, loose or bare'],
  ['flues', 'some not shielded'],
  ['lights', 'not rated, not held clear'],
];

describe('one open stop holds the figures back', () => {
  test.each(holding)('%s: %s', (name, given) => {
    expect(readiness({ ...sound, [name]: given }, NEW, rules).openStops.map((each) => each.name)).toEqual([
      name,
    ]);
  });

  test('and nothing else does', () => {
    expect(every.filter(({ meaning }) => meaning.state === 'stop')).toHaveLength(holding.length);
  });
});

/** Written down from what the work is, as those above. */
describe('a condition that only some homes are asked', () => {
  test.each<[keyof ExtraSurvey & Condition['name'], string, CautionId | undefined]>([
    ['connectors', 'a mechanic let each stand', undefined],
    ['connectors', 'no mechanic has looked', 'caution.flue.connector'],
    ['flue_kinds', 'each is known', undefined],
    ['flue_kinds', 'some not known', 'caution.flue.kind-unknown'],
    ['under_fill', 'carries it', undefined],
    ['under_fill', 'does not carry it', 'caution.ceiling.overloaded'],
    ['under_fill', 'no limit is known', 'caution.ceiling.unrated'],
    ['under_fill', 'gives under the air', 'caution.machine.pressed'],
  ])('%s: %s', (name, given, caution) => {
    const read = readiness({ ...sound, [name]: given }, NEW, rules);
    expect(read.conditions.find((each) => each.name === name)).toMatchObject({
      answer: given,
      state: caution ? 'stop' : 'clear',
    });
    expect(read.cautions).toEqual(caution ? [caution] : []);
    expect(read.openStops.map((each) => each.name)).toEqual(caution ? [name] : []);
    if (caution) expect(data.cautions[caution]?.level).toBe('stop');
    expect(readiness(sound, NEW, rules).conditions.map((each) => each.name)).not.toContain(name);
  });
});

/** From the rules: paint before 1978, asbestos in 1980 or before, the federal code within 1976. */
const years: readonly [built: number, cautions: readonly string[]][] = [
  [1975, ['caution.before.old-paint', 'caution.before.asbestos', 'caution.before.no-data-plate']],
  [1976, ['caution.before.old-paint', 'caution.before.asbestos', 'caution.before.no-data-plate']],
  [1977, ['caution.before.old-paint', 'caution.before.asbestos']],
  [1978, ['caution.before.asbestos']],
  [1980, ['caution.before.asbestos']],
  [1981, []],
];

describe('the year', () => {
  test.each(years)('%d warns of %j, and holds nothing back', (built, cautions) => {
    const read = readiness(sound, built, rules);
    expect(read.cautions).toEqual(cautions);
    expect(read.verdict).toBe('ready');
    expect(
      read.remarks.map(remarkText).some((remark) => remark.includes('6 ft² of paint or less in a room')),
    ).toBe(built < 1978);
  });

  test('left out, leaves paint and asbestos not looked at', () => {
    const read = readiness(sound, undefined, rules);
    expect(read.verdict).toBe('not looked at everywhere');
    expect(read.remarks.map(remarkText)).toEqual(['Not looked at: paint, asbestos.']);
    expect(read.cautions).toEqual(['caution.before.not-looked']);
  });
});

test('a year that has not come by the rulebook’s own counts as not known, and is told: a slip would clear an old home', () => {
  const edition = Number(rules.version.split('.')[0]);
  const [slip, newest] = [edition + 1, edition].map((year) => readiness(sound, year, rules));
  expect(newest?.verdict).toBe('ready');
  expect(slip?.verdict).toBe('not looked at everywhere');
  expect(slip?.remarks.map(remarkText)).toEqual([
    `No home was built in ${edition + 1}: enter the year again.`,
    'Not looked at: paint, asbestos.',
  ]);
  expect(slip?.cautions).toEqual(readiness(sound, undefined, rules).cautions);
});

describe('properties', () => {
  const anySurvey = fc.record(
    Object.fromEntries(
      names.map((name) => [name, fc.constantFrom(undefined, ...readinessFields[name].choices)]),
    ),
  ) as fc.Arbitrary<Survey>;
  const anyYear = fc.option(fc.integer({ min: 1900, max: 2050 }), { nil: undefined });

  test('an empty answer is the same as not looked at', () => {
    fc.assert(
      fc.property(anySurvey, anyYear, (survey, built) => {
        const told = Object.fromEntries(names.map((name) => [name, survey[name] ?? notLookedAt])) as Survey;
        expect(readiness(told, built, rules)).toEqual(readiness(survey, built, rules));
      }),
    );
  });

  test('the verdict is what the states say, and each caution stands once, the stops first', () => {
    const gravity = ['stop', 'warn', 'note'];
    fc.assert(
      fc.property(anySurvey, anyYear, (survey, built) => {
        const { verdict, conditions, cautions } = readiness(survey, built, rules);
        const states = conditions.map(({ state }) => state);
        expect(verdict).toBe(
          states.includes('stop')
            ? 'not ready'
            : states.includes(notLookedAt)
              ? 'not looked at everywhere'
              : 'ready',
        );
        expect(new Set(cautions).size).toBe(cautions.length);
        const levels = cautions.map((id) => gravity.indexOf(data.cautions[id]?.level ?? ''));
        expect(levels).toEqual([...levels].sort());
      }),
    );
  });

  test('looking at one more thing and finding it sound never makes a home less ready', () => {
    const rank = ['not ready', 'not looked at everywhere', 'ready'];
    fc.assert(
      fc.property(anySurvey, anyYear, fc.constantFrom(...names), (survey, built, name) => {
        const better = { ...survey, [name]: sound[name] } as Survey;
        return (
          rank.indexOf(readiness(better, built, rules).verdict) >=
          rank.indexOf(readiness(survey, built, rules).verdict)
        );
      }),
    );
  });
});

describe('bad entries come back as sentences', () => {
  const bad: readonly [string, Readonly<Record<string, unknown>>, RegExp][] = [
    [
      'an answer that there is not',
      { ceiling: 'fine' },
      /^Ceiling \(ceiling\): found "fine"; expected one of: sound; not sound; not looked at\.$/,
    ],
    [
      'a condition that there is not',
      { leak: 'none found' },
      /found the unknown key "leak"; expected one of built, ceiling, leaks, /,
    ],
    [
      'a year in words',
      { built: 'old' },
      /^Year built \(built\): found "old"; expected a year such as 1979\.$/,
    ],
  ];
  test.each(bad)('%s', (_, given, says) => {
    const read = answer(readinessCheck, given, rules);
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
  });

  test('every field may be left out of a job file', () => {
    expect(readFields(readinessFields, {}).ok).toBe(true);
  });
});

describe('what is printed of the readiness', () => {
  test('a row a condition: what, found, state, what it means, what it rests on', () => {
    const { figures, tables, remarks } = printed(readinessCheck, { ...sound, built: '1995' });
    expect(figures).toEqual({ verdict: 'ready', stops: '0', warnings: '0', unseen: '0' });
    expect(tables.conditions).toHaveLength(names.length + 2);
    expect(tables.conditions?.[0]).toBe(
      `Ceiling | sound | clear | ${meanings.ceiling.sound.means} | caution.before.ceiling-unsound`,
    );
    expect(tables.conditions?.slice(-2)).toEqual([
      'Paint | built 1995 | clear | It is newer than the paint that is taken to hold lead. | caution.before.old-paint',
      'Asbestos | built 1995 | clear | None is presumed from the year alone. | caution.before.asbestos',
    ]);
    expect(remarks).toEqual([]);
  });

  test('an old home is told of its paint and its asbestos', () => {
    const { figures, tables } = printed(readinessCheck, { ...sound, built: '1970' });
    expect(Object.keys(figures)).toEqual([
      'verdict',
      'stops',
      'unseen',
      'warnings',
      'paint_indoors',
      'paint_outdoors',
    ]);
    expect(tables.conditions?.slice(-2)).toEqual([
      'Paint | built 1970 | warn | It is taken to hold lead unless a test says otherwise. | caution.before.old-paint',
      'Asbestos | built 1970 | warn | Pipe and duct wrapping and ceiling texture are presumed to hold it. | caution.before.asbestos',
    ]);
  });

  test('what was not looked at is listed, and has its row', () => {
    const { pests: _, ...rest } = sound;
    const { tables, remarks } = printed(readinessCheck, { ...rest, built: '1995' });
    expect(tables.conditions?.[names.indexOf('pests')]).toBe(
      'Pests | not looked at | not looked at | It is not known to be sound. | caution.before.pests',
    );
    expect(remarks).toEqual(['Not looked at: pests.']);
  });
});

describe('lights that are rated for contact', () => {
  const rated = { ...sound, lights: 'all rated for contact' } as const;
  const stops = (survey: Survey & Partial<ExtraSurvey>) =>
    readiness(survey, NEW, rules).openStops.map(({ name }) => name);

  test('are a stop under cellulose, whose label keeps it off every recessed light, and under nothing else', () => {
    expect(stops({ ...rated, cellulose: 'yes' })).toEqual(['lights']);
    expect(stops({ ...rated, cellulose: 'no' })).toEqual([]);
    expect(stops(rated)).toEqual([]);
    expect(stops({ ...sound, cellulose: 'yes' })).toEqual([]);
  });
});
