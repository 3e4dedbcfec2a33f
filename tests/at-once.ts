import { InputError, notAsked, run } from '../src/cli/run.ts';
import { sideBySide } from './side-by-side.ts';

const COMMAND = {
  name: 'npm exec -- node tests/at-once.ts',
  does: 'Runs scripts of package.json side by side: by itself each leaves one of two cores idle for half its time.',
  given: 'SCRIPT ...',
};

await run(COMMAND, (given) => {
  // The npm that runs this one runs the others too.
  const npm = process.env.npm_execpath;
  if (npm === undefined) throw new InputError('found no npm that runs this, expected one, as in "npm test"');
  if (given.words.length === 0) throw notAsked(COMMAND, given);
  console.log(`at once: ${given.words.join(', ')}`);
  return sideBySide(given.words.map((script) => [npm, 'run', '--silent', script]));
});
