import { readFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { join } from 'node:path';
import { filesIn } from '../../src/built/files.ts';
import { builtFolder } from '../../src/cli/built-folder.ts';
import { InputError, run } from '../../src/cli/run.ts';
import { builtSite } from './built-site.ts';
import { timeOfChecks } from './checks-time.ts';
import { type Figure, fails, isOver, overrun, tableOf } from './figure.ts';
import { growth } from './growth.ts';
import { timesInBrowser } from './in-browser.ts';
import { timeOfLayout } from './layout-time.ts';
import { peers } from './peers.ts';
import { timeOfRulebook } from './rulebook-time.ts';
import { timeOfWork } from './work-time.ts';

const HOW =
  'npm run bench, or npm run bench -- --check, or npm run bench -- with --slow, --peers or --growth';
const known = ['--check', '--slow', '--peers', '--growth'];

/**
 * Measures the site against its budgets and prints one table. With --check it measures only what comes out the same on every machine,
 * and an overrun is a failure; times are told, and never fail, since machines differ.
 */
await run(async () => {
  const flags = process.argv.slice(2);
  const unknown = flags.filter((flag) => !known.includes(flag));
  const check = flags.includes('--check');
  if (unknown.length > 0 || (check && flags.length > 1))
    throw new InputError(`found ${flags.join(' ')}, expected ${HOW}`);
  const folder = builtFolder([], HOW);
  const site = new Map(filesIn(folder).map((file) => [file, readFileSync(join(folder, file))]));
  const figures: Figure[] = builtSite(site);
  if (!check) {
    // What else runs takes its share: times of a busy machine are too long.
    console.log(`load before: ${(loadavg()[0] ?? 0).toFixed(1)} on ${availableParallelism()} cores`);
    figures.push(...timeOfWork(), ...timeOfLayout(), ...timeOfRulebook(), ...(await timesInBrowser(folder)));
    if (flags.includes('--slow')) figures.push(...timeOfChecks());
    if (flags.includes('--peers')) figures.push(...(await peers(folder, site)));
    if (flags.includes('--growth')) figures.push(...(await growth(site)));
  }
  console.log(tableOf(figures));
  const over = figures.filter(isOver);
  for (const figure of over) console.error(overrun(figure));
  return check && over.some(fails) ? 1 : 0;
});
