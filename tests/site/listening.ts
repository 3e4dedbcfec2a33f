import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** What a host says that a file is, by the end of its name. */
export const typeOf = (file: string): string => types[extname(file)] ?? 'application/octet-stream';

/** A server of this machine. */
export interface Listening {
  /** Such as http://localhost:41234, without a slash behind it. */
  readonly origin: string;
  readonly close: () => Promise<void>;
}

/** Begins to listen, on a port that is free where none is named; closing ends what is still open too. */
export async function listening(answer: RequestListener, port = 0): Promise<Listening> {
  const server = createServer(answer);
  await new Promise<void>((ready) => server.listen(port, 'localhost', ready));
  return {
    origin: `http://localhost:${(server.address() as AddressInfo).port}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
