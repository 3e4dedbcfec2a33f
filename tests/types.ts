import { run } from '../src/cli/run.ts';
import { type Program, sideBySide } from './side-by-side.ts';

/** Modules by the compiler itself, pages by Astro's: neither reads what the other does. */
const halves: readonly Program[] = [
  ['node_modules/typescript-native/bin/tsc'],
  [
    'node_modules/astro/bin/astro.mjs',
    'check',
    '--tsconfig',
    'src/astro-files.tsconfig.json',
    '--minimumSeverity',
    'warning',
  ],
];

/** Checks the types of everything, both halves at once. */
await run({ name: 'npm run types', does: 'Checks the types of everything.' }, () => sideBySide(halves));
