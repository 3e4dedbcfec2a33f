import { execFileSync, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** The nginx to test with: the one named, or the system's; undefined where there is none. */
export const findNginx = (): string | undefined =>
  [process.env.NGINX_PATH, '/usr/sbin/nginx', '/usr/bin/nginx', '/usr/local/sbin/nginx'].find(
    (path) => path !== undefined && existsSync(path),
  );

const freePort = (): Promise<number> =>
  new Promise((found) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => found(port));
    });
  });

export interface Nginx {
  /** Where the front page is. */
  readonly at: string;
  /** A copy of the site, to change a file of. */
  readonly root: string;
  readonly close: () => void;
}

/**
 * The recipe of the built site on a real nginx, in a folder of its own: as it is written, but for the three lines that it says to change.
 */
export async function startNginx(nginx: string, { workers = 1 } = {}): Promise<Nginx> {
  const folder = mkdtempSync(join(tmpdir(), 'nginx-'));
  const root = join(folder, 'site');
  cpSync('dist', root, { recursive: true, preserveTimestamps: true });
  // Its workers may run as another than who tests.
  for (const name of ['logs', 'tmp']) mkdirSync(join(folder, name));
  execFileSync('chmod', ['-R', 'a+rX', folder]);
  const port = await freePort();
  const changed = [
    ['listen 80;', `listen 127.0.0.1:${port};`],
    ['server_name notes.example.org;', 'server_name localhost;'],
    ['root /var/www/heel-to-ridge;', `root ${root};`],
  ] as const;
  let recipe = readFileSync('dist/hosting/nginx.conf', 'utf8');
  for (const [from, to] of changed) {
    if (!recipe.includes(from)) throw new Error(`found no "${from}" in the recipe for nginx`);
    recipe = recipe.replace(from, to);
  }
  writeFileSync(join(folder, 'heel-to-ridge.conf'), recipe);
  const paths = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi'];
  const types = ['/etc/nginx/mime.types', '/usr/local/etc/nginx/mime.types'].find((path) => existsSync(path));
  if (types === undefined)
    throw new Error('found no mime.types of nginx, expected it where nginx keeps its settings');
  // The recipe asks for it beside the settings, where it is on every host.
  cpSync(types, join(folder, 'mime.types'));
  writeFileSync(
    join(folder, 'nginx.conf'),
    `daemon off;
worker_processes ${workers};
pid ${folder}/pid;
error_log ${folder}/logs/error.log;
events { worker_connections 1024; }
http {
  include mime.types;
  default_type application/octet-stream;
  sendfile on;
  tcp_nopush on;
  ${paths.map((name) => `${name}_temp_path ${folder}/tmp/${name};`).join(' ')}
  include ${folder}/heel-to-ridge.conf;
}
`,
  );
  const args = ['-e', join(folder, 'logs/error.log'), '-p', folder, '-c', join(folder, 'nginx.conf')];
  // Ends in the words of nginx where the recipe is wrong.
  execFileSync(nginx, ['-t', '-q', ...args], { stdio: 'pipe' });
  const running = spawn(nginx, args, { stdio: 'ignore' });
  const at = `http://localhost:${port}/`;
  const until = Date.now() + 10_000;
  while (
    !(await fetch(at).then(
      ({ ok }) => ok,
      () => false,
    ))
  ) {
    if (Date.now() > until || running.exitCode !== null)
      throw new Error(`nginx does not answer: ${readFileSync(join(folder, 'logs/error.log'), 'utf8')}`);
    await new Promise((next) => setTimeout(next, 50));
  }
  return {
    at,
    root: resolve(root),
    close: () => {
      running.kill('SIGTERM');
      running.once('exit', () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 }));
    },
  };
}
