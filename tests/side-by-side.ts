import { spawn } from 'node:child_process';

/** A program of Node's with what it is given: `['node_modules/typescript-native/bin/tsc']`. */
export type Program = readonly string[];

/** Runs programs side by side and tells what each said once it has ended; gives the highest of their exit codes. */
export const sideBySide = async (programs: readonly Program[]): Promise<number> =>
  Math.max(0, ...(await Promise.all(programs.map(ended))));

const ended = (program: Program): Promise<number> =>
  new Promise((told) => {
    const said: Buffer[] = [];
    const child = spawn(process.execPath, program, { stdio: ['ignore', 'pipe', 'pipe'] });
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (part: Buffer) => said.push(part));
    child.on('close', (code) => {
      process.stdout.write(Buffer.concat(said));
      told(code ?? 1);
    });
  });
