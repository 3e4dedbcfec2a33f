import { statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from '../../src/built/files.ts';
import type { Point } from '../../src/drawings/lines.ts';
import { toSvg } from '../../src/drawings/svg.ts';
import { type Figure, median } from './figure.ts';
import { growingCopy } from './growing-copy.ts';
import { largestJob } from './largest-job.ts';
import type { Site } from './page-load.ts';
import { type PlainPage, plainPages, repeated } from './plain-pages.ts';
import { plot } from './plot.ts';
import { bareAstro, withBuilder } from './scratch.ts';
import { workTime } from './work-time.ts';

const MANY = [100, 1000];
const FEET = [20, 40, 60, 80, 120, 160];
const ROUNDS = 7;
export const PLOT = 'tests/bench/growth.svg';

const seconds = (milliseconds: number): number => milliseconds / 1000;

/** How build, index and work grow, ours beside the least that builds such pages; drawn as curves. Needs the network and minutes. */
export async function growth(site: Site): Promise<Figure[]> {
  // A number with a unit that no rule backs stops our build, so both builders are given the words without numbers.
  const words = plainPages(site, 30).map((page) => ({
    ...page,
    body: page.body.replace(/\d[\d.,/]*/g, 'some'),
  }));
  const pages = (many: number): PlainPage[] => repeated(words, many);
  const bare = await withBuilder(bareAstro, async ({ build }) =>
    MANY.map((many) => [many, build(pages(many))] as const),
  );
  const ours = await growingCopy(async (build) => {
    const found: { many: number; time: number; index: number }[] = [];
    for (const many of [0, ...MANY]) {
      const { time, built } = await build(pages(many));
      const index = filesIn(join(built, 'pagefind'))
        .map((file) => statSync(join(built, 'pagefind', file)).size)
        .reduce((all, size) => all + size, 0);
      found.push({ many, time, index });
    }
    return found;
  });
  // In rounds: a moment in which the machine is slow would lift one length above the others.
  const rounds = Array.from({ length: ROUNDS }, () => FEET.map((feet) => workTime(largestJob(feet))));
  const work = FEET.map(
    (feet, place): Point => [feet, median(rounds.flatMap((round) => round[place] ?? []))],
  );
  const drawing = plot(
    'How the site grows',
    'Three curves: time of a build and size of the search index by pages added, time of work(job) by length of roof.',
    [
      {
        title: 'Time of a build',
        x: 'pages added',
        y: 's',
        series: [
          { name: 'this site', points: ours.map(({ many, time }): Point => [many, seconds(time)]) },
          { name: bareAstro.name, points: bare.map(([many, time]): Point => [many, seconds(time)]) },
        ],
      },
      {
        title: 'Size of the search index',
        x: 'pages added',
        y: 'MB',
        series: [{ name: 'this site', points: ours.map(({ many, index }): Point => [many, index / 1e6]) }],
      },
      {
        title: 'Time of work(job)',
        x: 'ft of roof, two sections',
        y: 'ms',
        series: [{ name: 'this site', points: work }],
      },
    ],
  );
  writeFileSync(PLOT, `${toSvg(drawing, 'growth').replace('<svg ', '<svg color="black" ')}\n`);
  return [
    ...ours.flatMap(({ many, time, index }): Figure[] => [
      { what: `this site with ${many} pages added: build and index`, unit: 'ms', found: time },
      { what: `this site with ${many} pages added: search index`, unit: 'B', found: index },
    ]),
    ...bare.map(([many, time]): Figure => {
      const [less, more] = [ours[0], ours.find((each) => each.many === many)];
      return {
        what: `${bareAstro.name}: build of ${many} pages`,
        unit: 'ms',
        found: time,
        // What the pages added, without the pages that are there already; a few are lost in the spread of what those take.
        ...(less && more && many === MANY.at(-1) && { beside: more.time - less.time }),
      };
    }),
    ...work.map(
      ([feet, time]): Figure => ({ what: `work(job), two sections of ${feet} ft`, unit: 'ms', found: time }),
    ),
  ];
}
