import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { type Command, type Given, InputError, notAsked } from './run.ts';

/** What a command that works on a built site may be given. */
export const A_FOLDER = '[FOLDER, such as dist]';

/** The folder of the built site that a command is told, "dist" if none; one that holds no site is refused. */
export function builtFolder(command: Command, given: Given): string {
  const [folder = 'dist', ...rest] = given.words;
  if (rest.length > 0) throw notAsked(command, given);
  if (!existsSync(join(folder, 'index.html')))
    throw new InputError(`found no site in the folder "${folder}", expected a built one: npm run build`);
  return folder.replace(/\/+$/, '');
}
