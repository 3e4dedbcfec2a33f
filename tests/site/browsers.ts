import { existsSync } from 'node:fs';

const first = (paths: readonly (string | undefined)[]): string | undefined =>
  paths.find((path) => path !== undefined && existsSync(path));

/** A whole Chromium, which keeps a profile on the disk: the one named, or the system's; undefined where none is installed. */
export const findWholeChromium = (): string | undefined =>
  first([
    process.env.CHROMIUM_PATH,
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
  ]);

/**
 * The Chromium to test with: the one named, the system's without its windows, which takes half the time since it draws no frame about a
 * page, the system's whole one, or the one that comes as a package with `npm ci`.
 */
export async function findChromium(): Promise<string> {
  const system = first([process.env.CHROMIUM_PATH, '/usr/bin/chromium-headless-shell', findWholeChromium()]);
  if (system) return system;
  const { default: packaged } = await import('@sparticuz/chromium');
  return packaged.executablePath();
}

/** The Firefox to test with; undefined where none is installed. */
export const findFirefox = (): string | undefined =>
  first([process.env.FIREFOX_PATH, '/usr/bin/firefox-esr', '/usr/bin/firefox']);
