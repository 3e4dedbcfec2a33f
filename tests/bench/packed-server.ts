import { readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import { listening, typeOf } from '../site/listening.ts';
import type { Part } from './figure.ts';

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
  const { origin, close } = await listening((request, response) => {
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
        'content-type': typeOf(file),
        'content-encoding': 'gzip',
        'content-length': bytes.length,
      })
      .end(bytes);
  });
  return {
    at: `${origin}/`,
    asked: () => {
      const all = sent;
      sent = [];
      return all;
    },
    close,
  };
}
