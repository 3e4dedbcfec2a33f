import { dust } from '../../calc/crew/dust/declaration.ts';
import { fall } from '../../calc/crew/fall/declaration.ts';
import { heat } from '../../calc/crew/heat/declaration.ts';
import { ladder } from '../../calc/crew/ladder/declaration.ts';
import { line } from '../../calc/crew/line/declaration.ts';
import { noise } from '../../calc/crew/noise/declaration.ts';
import type { Calculation } from '../../calc/declare/calculation.ts';
import type { Fields } from '../../calc/declare/field.ts';
import { compare } from '../../quantity/quantity.ts';
import { homeWidth } from './home.ts';
import { type AnyPart, part, unlessEmpty } from './part.ts';

/** The fields of a calculation that the job asks for in one group under the same names. */
const inGroup = <F extends Fields>(group: string, { fields }: Calculation<F>) =>
  Object.fromEntries(Object.keys(fields).map((name) => [name, `${group}.${name}`])) as {
    readonly [N in keyof F]: string;
  };

const ladderPart = part({
  calculation: ladder,
  whileHeld: true,
  asked: inGroup('ladder', ladder),
  runs: ({ job }) =>
    job.ladder.height || job.ladder.working
      ? [{ values: job.ladder }]
      : 'Enter the height of the edge, or the working length of the ladder.',
});

const fallPart = part({
  calculation: fall,
  whileHeld: true,
  asked: inGroup('fall', fall),
  runs: ({ job }) => {
    const across = homeWidth(job);
    const lesser = compare(across, job.home.length) < 0 ? across : job.home.length;
    return [
      {
        values: {
          ...job.fall,
          height: job.fall.height ?? job.ladder.height,
          width: job.fall.width ?? lesser,
        },
      },
    ];
  },
});

const linePart = part({
  calculation: line,
  whileHeld: true,
  asked: inGroup('line', line),
  runs: ({ job }) =>
    job.line.voltage || job.line.gap
      ? [{ values: job.line }]
      : 'No overhead line is entered. Where there is one near the roof, enter what the power company says of it, and how near anything comes.',
});

const noisePart = part({
  calculation: noise,
  whileHeld: true,
  asked: inGroup('noise', noise),
  // What a sound of one more level is allowed is answered without any times in noise.
  runs: ({ job: { noise: given } }) => [
    { values: { ...given, periods: given.next_level ? (given.periods ?? []) : unlessEmpty(given.periods) } },
  ],
});

const weatherPart = part({
  calculation: heat,
  whileHeld: true,
  asked: inGroup('weather', heat),
  runs: ({ job }) => [{ values: job.weather }],
});

const dustPart = part({
  calculation: dust,
  whileHeld: true,
  asked: inGroup('dust', dust),
  runs: ({ job: { dust: measured } }) =>
    measured.total || measured.respirable || measured.fibres
      ? [{ values: measured }]
      : 'No measurement of dust is entered.',
});

/** What keeps the crew whole on the day. */
export const crewParts: readonly AnyPart[] = [
  ladderPart,
  fallPart,
  linePart,
  noisePart,
  weatherPart,
  dustPart,
];
