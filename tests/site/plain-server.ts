import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

/** A site on a plain file server. */
export interface Served {
  /** Where its front page is. */
  readonly at: string;
  /** Serves another folder from now on, at the same address. */
  readonly change: (folder: string) => void;
  readonly close: () => Promise<void>;
}

/**
 * Serves a folder as plain file servers do, under a path and nothing beside it: the index of a folder, a slash added where a folder was
 * asked for without one, 404.html for all else.
 * @param under "/", or a path that begins and ends in a slash, as it is read: "/a folder/"
 */
export async function servePlainly(first: string, under: string): Promise<Served> {
  let folder = first;
  const server = createServer((request, response) => {
    const { pathname, search } = new URL(request.url ?? '/', 'http://localhost');
    const path = decodeURIComponent(pathname);
    const file = path.startsWith(under) ? join(folder, path.slice(under.length)) : undefined;
    const found = file === undefined ? undefined : statSync(file, { throwIfNoEntry: false });
    if (found?.isDirectory() && !path.endsWith('/')) {
      response.writeHead(301, { location: `${pathname}/${search}` }).end();
      return;
    }
    const whole = file !== undefined && found?.isDirectory() ? join(file, 'index.html') : file;
    const there = whole !== undefined && statSync(whole, { throwIfNoEntry: false })?.isFile();
    const sent = there ? whole : join(folder, '404.html');
    const type = types[extname(sent)] ?? 'application/octet-stream';
    response.writeHead(there ? 200 : 404, { 'content-type': type }).end(readFileSync(sent));
  });
  await new Promise<void>((ready) => server.listen(0, 'localhost', ready));
  return {
    at: `http://localhost:${(server.address() as AddressInfo).port}${encodeURI(under)}`,
    change: (next) => {
      folder = next;
    },
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
