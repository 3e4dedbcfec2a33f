import { type MovedValue, moveEveryValue } from '../calc/checks/moved-values.ts';
import { loadProject } from '../rulebook/project.ts';
import { run } from './run.ts';

/** The least share of values that the checks must guard; a reviewer may rely on it. */
const LEAST = { published: 0.95, all: 0.9 } as const;

/** How many of them the checks guard against every move. */
function guarded(values: readonly MovedValue[]): number {
  return values.filter(({ unnoticed }) => unnoticed.length === 0).length;
}

await run(() => {
  const { data, files } = loadProject('let pass', []);
  const values = moveEveryValue(
    data,
    files.checks.map(({ entry }) => entry),
  );
  for (const { rule, part, unnoticed } of values)
    if (unnoticed.length > 0) console.log(`${rule}${part ? ` (${part})` : ''}: ${unnoticed.join(', ')}`);
  const shares = [
    ['published', values.filter(({ published }) => published)],
    ['all', values],
  ] as const;
  let enough = true;
  for (const [which, some] of shares) {
    const share = guarded(some) / some.length;
    enough &&= share >= LEAST[which];
    console.log(
      `${which}: ${guarded(some)} of ${some.length} values guarded, ${(100 * share).toFixed(1)} % (${100 * LEAST[which]} % asked)`,
    );
  }
  return enough ? 0 : 1;
});
