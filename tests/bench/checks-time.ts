import { spawnSync } from 'node:child_process';
import { budgets } from './budgets.ts';
import type { Figure } from './figure.ts';

/** How long do the type check and the unit tests take, one after the other? @throws where one fails: what stops early is not timed. */
export function timeOfChecks(): Figure[] {
  const parts = ['types', 'unit'].map((script) => {
    const start = performance.now();
    const { status, stderr } = spawnSync('npm', ['run', '--silent', script], { encoding: 'utf8' });
    if (status !== 0)
      throw new Error(`found a failure of "npm run ${script}", expected it to pass\n${stderr}`);
    return [`npm run ${script}`, performance.now() - start] as const;
  });
  return [
    {
      what: 'types and unit tests',
      unit: 'ms',
      found: parts.reduce((all, [, time]) => all + time, 0),
      budget: budgets.typesAndUnit,
      parts,
    },
  ];
}
