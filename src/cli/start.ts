import { spawnSync } from 'node:child_process';
import { builtFolder } from './built-folder.ts';
import { InputError, run } from './run.ts';

const COMMAND = {
  name: 'npm start',
  does: 'Builds the site, serves it on this machine, and prints its address.',
  options: {
    port: { takes: 'NUMBER', does: 'the port to serve it at, such as 4321' },
    built: { does: 'serves the site as it was built last, without building it' },
  },
};
const HIGHEST_PORT = 65_535;

function portIn(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port < 1 || port > HIGHEST_PORT)
    throw new InputError(`found --port ${text}, expected a whole number from 1 to ${HIGHEST_PORT}`);
  return port;
}

await run(COMMAND, async (given) => {
  const asked = given.valueOf('port');
  const port = asked === undefined ? undefined : portIn(asked);
  if (!given.has('built')) {
    const { status } = spawnSync('npm', ['run', '--silent', 'build'], {
      stdio: 'inherit',
      shell: process.platform === 'win32',
    });
    if (status !== 0) return status ?? 1;
  }
  builtFolder(COMMAND, given);
  // Only now: it takes seconds to load, and help is not to wait for it.
  const { preview } = await import('astro');
  const server = await preview({
    logLevel: 'error',
    vite: { logLevel: 'error' },
    ...(port === undefined ? {} : { server: { port } }),
  });
  // Where the port is taken the server takes the next one, and whoever asked for a port would look at what stands at it.
  if (port !== undefined && server.port !== port) {
    await server.stop();
    throw new InputError(
      `found port ${port} taken, expected one that is free; npm start -- --built --port NUMBER serves what is built already`,
    );
  }
  const address = `http://${server.host ?? 'localhost'}:${server.port}/`;
  console.log(`Heel to Ridge is at ${address}`);
  console.log(`The example job stands worked at ${address}plan/`);
  console.log('Ctrl+C ends it.');
  await server.closed();
  return 0;
});
