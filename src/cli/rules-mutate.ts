import { LEAST_GUARDED, moveEveryValue, shareGuarded } from '../calc/checks/moved-values.ts';
import { needlessReasons, whyUnguarded } from '../calc/checks/unguarded.ts';
import { loadProject } from '../rulebook/project.ts';
import { run } from './run.ts';

await run(
  {
    name: 'npm run --silent rules:mutate',
    does: 'Moves every number that feeds a calculation, and names the moves that no check notices.',
  },
  () => {
    const { data, files } = loadProject('let pass', []);
    const values = moveEveryValue(
      data,
      files.checks.map(({ entry }) => entry),
    );
    const reasons = files.unguarded.map(({ entry }) => entry);
    for (const value of values) {
      const { rule, part, unnoticed } = value;
      if (unnoticed.length === 0) continue;
      console.log(`${rule}${part ? ` (${part})` : ''}: ${unnoticed.join(', ')}`);
      console.log(`  ${whyUnguarded(reasons, value) ?? 'no reason is given in unguarded.yaml'}`);
    }
    for (const { rule, part } of needlessReasons(reasons, values))
      console.log(
        `${rule}${part ? ` (${part})` : ''}: a reason is given in unguarded.yaml, though its checks notice every move`,
      );
    const shares = [
      ['published', values.filter(({ published }) => published)],
      ['all', values],
    ] as const;
    let enough = true;
    for (const [which, some] of shares) {
      const { guarded, share } = shareGuarded(some);
      enough &&= share >= LEAST_GUARDED[which];
      console.log(
        `${which}: ${guarded} of ${some.length} values guarded, ${(100 * share).toFixed(1)} % (${100 * LEAST_GUARDED[which]} % asked)`,
      );
    }
    return enough ? 0 : 1;
  },
);
