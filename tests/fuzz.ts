import { spawnSync } from 'node:child_process';
import { BAD_INPUT, notAsked, run } from '../src/cli/run.ts';

const COMMAND = {
  name: 'npm run --silent fuzz',
  does: 'Types far more hostile entries into every field than the tests do by themselves; of one that fails, the number that repeats it is told.',
  given: '[NUMBER, such as 100000]',
};

await run(COMMAND, (given) => {
  const [number, ...more] = given.words;
  const cases = Number(number ?? 100_000);
  if (more.length > 0 || !Number.isSafeInteger(cases) || cases < 1) throw notAsked(COMMAND, given);
  const { status } = spawnSync(
    'npx',
    ['vitest', 'run', '--config', 'tests/vitest.config.ts', 'calc/every/hostile.test', 'hostile-fields.test'],
    { stdio: 'inherit', env: { ...process.env, FUZZ_CASES: String(cases) } },
  );
  return status ?? BAD_INPUT;
});
