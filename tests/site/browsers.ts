import { existsSync } from 'node:fs';

const first = (paths: readonly (string | undefined)[]): string | undefined =>
  paths.find((path) => path !== undefined && existsSync(path));

/** The Chromium to test with: the one named, the system's, or the one that comes as a package with `npm ci`. */
export async function findChromium(): Promise<string> {
  const system = first([
    process.env.CHROMIUM_PATH,
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
  ]);
  if (system) return system;
  const { default: packaged } = await import('@sparticuz/chromium');
  return packaged.executablePath();
}

/** The Firefox to test with; undefined where none is installed. */
export const findFirefox = (): string | undefined =>
  first([process.env.FIREFOX_PATH, '/usr/bin/firefox-esr', '/usr/bin/firefox']);
