import { homedir } from 'node:os';
import { join } from 'node:path';

/**
 * The folder that somebody means: ~ at its beginning is the home folder, which a shell puts in and we are not handed by one.
 * @example folderMeant('~/our-notes', '/home/dee') // => '/home/dee/our-notes'
 */
export const folderMeant = (typed: string, home = homedir()): string =>
  /^~(?=$|[/\\])/.test(typed) ? join(home, typed.slice(1)) : typed;

/**
 * A word of a command, as a shell takes it for one, whatever stands in it.
 * @example asWord('../agency-notes/our notes', 'linux') // => "'../agency-notes/our notes'"
 * @example asWord('../our-notes', 'linux') // => '../our-notes'
 */
export function asWord(word: string, platform: NodeJS.Platform = process.platform): string {
  if (/^[\w./:\\-]+$/.test(word) && !(platform !== 'win32' && word.includes('\\'))) return word;
  return platform === 'win32' ? `"${word}"` : `'${word.replaceAll("'", "'\\''")}'`;
}

/**
 * The lines that build and serve the site with a folder's notes, each as it is typed. On Windows those of PowerShell, which a new terminal opens there.
 * @example startWith('../our-notes', 'linux') // => ['LOCAL=../our-notes npm start']
 */
export const startWith = (folder: string, platform: NodeJS.Platform = process.platform): readonly string[] =>
  platform === 'win32'
    ? [`$env:LOCAL = '${folder.replaceAll("'", "''")}'`, 'npm start']
    : [`LOCAL=${asWord(folder, platform)} npm start`];
