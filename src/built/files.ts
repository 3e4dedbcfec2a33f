import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';

/** Every file of a built site by its place in it, such as "do/patching/index.html", in order. */
export const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => relative(folder, join(each.parentPath, each.name)).replaceAll('\\', '/'))
    .sort();
