import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { InputError, run } from '../../src/cli/run.ts';
import { findNginx, startNginx } from './nginx.ts';

const COMMAND = {
  name: 'npm run measure:host',
  does: 'Measures how many requests a second nginx holds by the recipe, asked by wrk on the same machine, so that both share its cores.',
};
const WRK = process.env.WRK_PATH ?? '/usr/bin/wrk';
const [SECONDS, CONNECTIONS] = [10, 64];

await run(COMMAND, async () => {
  const nginx = findNginx();
  if (!nginx || !existsSync('dist/index.html') || !existsSync(WRK))
    throw new InputError(
      'found no nginx, no wrk or no site, expected all three: apt-get install nginx-light wrk; npm run build',
    );

  const server = await startNginx(nginx, { workers: availableParallelism() });
  // What else runs takes its share: figures of a busy machine are too low.
  const busy = (loadavg()[0] ?? 0).toFixed(1);
  try {
    console.log(
      `load before: ${busy}; ${availableParallelism()} cores, ${CONNECTIONS} connections, ${SECONDS} s each, nginx and wrk on one machine`,
    );
    console.log(
      '| page | packed | requests/s | p50 | p99 | MB/s | not answered |\n|---|---|--:|--:|--:|--:|--:|',
    );
    for (const path of ['do/patching/', 'calculators/ceiling-load/'])
      for (const packing of ['no', 'as it goes', 'beforehand']) {
        if (packing === 'beforehand')
          execFileSync(process.execPath, ['src/cli/publish-gz.ts', server.root], { stdio: 'pipe' });
        const header = packing === 'no' ? [] : ['-H', 'Accept-Encoding: gzip'];
        const wrk = ['-t1', `-c${CONNECTIONS}`, `-d${SECONDS}s`, '--latency', ...header, server.at + path];
        const told = execFileSync(WRK, wrk, { encoding: 'utf8' });
        const figure = (pattern: RegExp): string => pattern.exec(told)?.[1] ?? '0';
        const row = [
          ...[path, packing, figure(/Requests\/sec:\s*(\S+)/), figure(/50%\s*(\S+)/), figure(/99%\s*(\S+)/)],
          ...[figure(/Transfer\/sec:\s*(\S+)/), figure(/Non-2xx[^:]*:\s*(\d+)/)],
        ];
        console.log(`| ${row.join(' | ')} |`);
        if (packing === 'beforehand') execFileSync('find', [server.root, '-name', '*.gz', '-delete']);
      }
  } finally {
    server.close();
  }
  return 0;
});
