import { readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { listening, typeOf } from '../site/listening.ts';
import type { Part } from './figure.ts';
import type { Line } from './slow-phone.ts';

/** A site on a server that packs what it sends, as hosts do. */
export interface PackedServer {
  readonly at: string;
  /** What was asked for since this was last called, in its order, each with its size on the line. */
  readonly asked: () => readonly Part[];
  readonly close: () => Promise<void>;
}

/** What the head of an answer takes on the line, about, in bytes. */
const HEAD = 300;

/** All answers go one behind another over one line, each after its latency: how long an answer waits. */
function over({ kilobitsASecond, latency }: Line): (bytes: number) => Promise<void> {
  let free = 0;
  return async (bytes) => {
    await setTimeout(latency);
    free = Math.max(free, performance.now()) + ((bytes + HEAD) * 8) / kilobitsASecond;
    await setTimeout(free - performance.now());
  };
}

/**
 * Serves a folder, each file packed once and kept so: the packing is no part of what is timed.
 * @param line a slow one, where what is timed is asked for by the copy's worker, which a browser does not slow down
 */
export async function servePacked(folder: string, line?: Line): Promise<PackedServer> {
  const kept = new Map<string, Buffer>();
  let sent: Part[] = [];
  const wait = line && over(line);
  const { origin, close } = await listening(async (request, response) => {
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
    await wait?.(bytes.length);
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
