import { type Browser, chromium } from '@playwright/test';
import { findChromium } from '../site/browsers.ts';
import { timeOfCopy } from './copy-time.ts';
import type { Figure } from './figure.ts';
import { timeOfKeystroke } from './keystroke-time.ts';
import { servePacked } from './packed-server.ts';
import { timeOfPaint } from './paint-time.ts';
import { timeOfSearch } from './search-time.ts';

/** Hands a browser over, and ends it. */
export async function inBrowser<T>(use: (browser: Browser) => Promise<T>): Promise<T> {
  const browser = await chromium.launch({ executablePath: await findChromium(), args: ['--no-sandbox'] });
  try {
    return await use(browser);
  } finally {
    await browser.close();
  }
}

/** What a reader waits for: a result after a key, a page, a find. */
export async function timesInBrowser(folder: string): Promise<Figure[]> {
  const server = await servePacked(folder);
  try {
    return await inBrowser(async (browser) => [
      ...(await timeOfKeystroke(browser, server.at)),
      ...(await timeOfPaint(browser, server.at)),
      ...(await timeOfSearch(browser, server)),
      await timeOfCopy(browser, folder),
    ]);
  } finally {
    await server.close();
  }
}
