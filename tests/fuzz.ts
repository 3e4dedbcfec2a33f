import { spawnSync } from 'node:child_process';
import { BAD_INPUT, InputError, run } from '../src/cli/run.ts';

const HOW = 'npm run --silent fuzz -- NUMBER, such as 100000';

/** Types far more hostile entries into every field than the tests do by themselves; of one that fails, the number that repeats it is told. */
await run(() => {
  const [given, ...more] = process.argv.slice(2);
  const cases = Number(given ?? 100_000);
  if (more.length > 0 || !Number.isSafeInteger(cases) || cases < 1)
    throw new InputError(`found "${process.argv.slice(2).join(' ')}", expected ${HOW}`);
  const { status } = spawnSync(
    'npx',
    ['vitest', 'run', '--config', 'tests/vitest.config.ts', 'calc/every/hostile.test', 'hostile-fields.test'],
    { stdio: 'inherit', env: { ...process.env, FUZZ_CASES: String(cases) } },
  );
  return status ?? BAD_INPUT;
});
