import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Part } from './figure.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** A site on a server that packs what it sends, as hosts do. */
export interface PackedServer {
  readonly at: string;
  /** What was asked for since this was last called, in its order, each with its size on the line. */
  readonly asked: () => readonly Part[];
  readonly close: () => Promise<void>;
}

/** Serves a folder, each file packed once and kept so: the packing is no part of what is timed. */
export async function servePacked(folder: string): Promise<PackedServer> {
  const kept = new Map<string, Buffer>();
  let sent: Part[] = [];
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const asked = join(folder, path);
    const file = statSync(asked, { throwIfNoEntry: false })?.isDirectory()
      ? join(asked, 'index.html')
      : asked;
    if (!statSync(file, { throwIfNoEntry: false })?.isFile()) {
      response.writeHead(404).end();
      return;
    }
    const bytes = kept.get(file) ?? gzipSync(readFileSync(file), { level: 9 });
    kept.set(file, bytes);
    sent.push([relative(folder, file), bytes.length]);
    response
      .writeHead(200, {
        'content-type': types[extname(file)] ?? 'application/octet-stream',
        'content-encoding': 'gzip',
        'content-length': bytes.length,
      })
      .end(bytes);
  });
  await new Promise<void>((ready) => server.listen(0, 'localhost', ready));
  return {
    at: `http://localhost:${(server.address() as AddressInfo).port}/`,
    asked: () => {
      const all = sent;
      sent = [];
      return all;
    },
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
