import { spawn } from 'node:child_process';
import { run } from '../src/cli/run.ts';

/** Modules by the compiler itself, pages by Astro's: neither reads what the other does. */
const halves = [
  ['node_modules/typescript-native/bin/tsc'],
  [
    'node_modules/astro/bin/astro.mjs',
    'check',
    '--tsconfig',
    'src/astro-files.tsconfig.json',
    '--minimumSeverity',
    'warning',
  ],
] as const;

const ended = (command: readonly string[]): Promise<number> =>
  new Promise((told) => {
    spawn(process.execPath, command, { stdio: 'inherit' }).on('close', (code) => told(code ?? 1));
  });

/** Checks the types of everything, both halves at once. */
await run({ name: 'npm run types', does: 'Checks the types of everything.' }, async () =>
  Math.max(...(await Promise.all(halves.map(ended)))),
);
