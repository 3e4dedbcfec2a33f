import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { listening, typeOf } from './listening.ts';

/** A site on a plain file server. */
export interface Served {
  /** Where its front page is. */
  readonly at: string;
  /** The paths that were asked for, below the site's own, in their order. */
  readonly asked: readonly string[];
  /** Serves another folder from now on, at the same address. */
  readonly change: (folder: string) => void;
  readonly close: () => Promise<void>;
}

/**
 * Serves a folder as plain file servers do, under a path and nothing beside it: the index of a folder, a slash added where a folder was
 * asked for without one, 404.html for all else.
 * @param under "/", or a path that begins and ends in a slash, as it is read: "/a folder/"
 * @param port one that is free where none is named
 */
export async function servePlainly(first: string, under: string, port = 0): Promise<Served> {
  let folder = first;
  const asked: string[] = [];
  const { origin, close } = await listening((request, response) => {
    const { pathname, search } = new URL(`http://localhost${request.url ?? '/'}`);
    const path = decodeURIComponent(pathname);
    asked.push(path.startsWith(under) ? path.slice(under.length) : pathname);
    const file = path.startsWith(under) ? join(folder, path.slice(under.length)) : undefined;
    const found = file === undefined ? undefined : statSync(file, { throwIfNoEntry: false });
    if (found?.isDirectory() && !path.endsWith('/')) {
      response.writeHead(301, { location: `${pathname}/${search}` }).end();
      return;
    }
    const whole = file !== undefined && found?.isDirectory() ? join(file, 'index.html') : file;
    const there = whole !== undefined && statSync(whole, { throwIfNoEntry: false })?.isFile();
    const sent = there ? whole : join(folder, '404.html');
    response.writeHead(there ? 200 : 404, { 'content-type': typeOf(sent) }).end(readFileSync(sent));
  }, port);
  return {
    at: `${origin}${encodeURI(under)}`,
    asked,
    change: (next) => {
      folder = next;
    },
    close,
  };
}
