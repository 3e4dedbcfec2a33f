import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { InputError } from './run.ts';

/** The folder of the built site that a command is told, "dist" if none; one that holds no site is refused. */
export function builtFolder(args: readonly string[], how: string): string {
  const [folder = 'dist', ...rest] = args;
  if (rest.length > 0) throw new InputError(`found ${args.join(' ')}, expected ${how}`);
  if (!existsSync(join(folder, 'index.html')))
    throw new InputError(`found no site in the folder "${folder}", expected a built one: npm run build`);
  return folder.replace(/\/+$/, '');
}
