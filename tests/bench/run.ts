import { readFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { join } from 'node:path';
import { filesIn } from '../../src/built/files.ts';
import { builtFolder } from '../../src/cli/built-folder.ts';
import { InputError, run } from '../../src/cli/run.ts';
import { builtSite } from './built-site.ts';
import { timeOfChecks } from './checks-time.ts';
import { type Figure, isOver, overrun, tableOf } from './figure.ts';
import { growth } from './growth.ts';
import { timesInBrowser } from './in-browser.ts';
import { timeOfLayout } from './layout-time.ts';
import { peers } from './peers.ts';
import { timeOfRulebook } from './rulebook-time.ts';
import { timeOfWork } from './work-time.ts';

const COMMAND = {
  name: 'npm run bench',
  does: 'Measures the built site and the calculations against their budgets, and prints one table.',
  options: {
    check: { does: 'only what comes out the same on every machine; an overrun is then a failure' },
    slow: { does: 'the types and unit tests too' },
    peers: { does: 'the same page built by others too' },
    growth: { does: 'how the site grows with its pages too' },
  },
};

/** Times are told, and never fail, since machines differ. */
await run(COMMAND, async (given) => {
  const check = given.has('check');
  if (check && ['slow', 'peers', 'growth'].some(given.has))
    throw new InputError('found --check with another option, expected it alone');
  const folder = builtFolder(COMMAND, given);
  const site = new Map(filesIn(folder).map((file) => [file, readFileSync(join(folder, file))]));
  const figures: Figure[] = builtSite(site);
  if (!check) {
    // What else runs takes its share: times of a busy machine are too long.
    console.log(`load before: ${(loadavg()[0] ?? 0).toFixed(1)} on ${availableParallelism()} cores`);
    figures.push(...timeOfWork(), ...timeOfLayout(), ...timeOfRulebook(), ...(await timesInBrowser(folder)));
    if (given.has('slow')) figures.push(...timeOfChecks());
    if (given.has('peers')) figures.push(...(await peers(folder, site)));
    if (given.has('growth')) figures.push(...(await growth(site)));
  }
  console.log(tableOf(figures));
  const over = figures.filter(isOver);
  for (const figure of over) console.error(overrun(figure));
  return check && over.length > 0 ? 1 : 0;
});
