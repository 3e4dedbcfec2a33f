import type { Browser } from '@playwright/test';
import { budgets } from './budgets.ts';
import type { Figure } from './figure.ts';
import { servePacked } from './packed-server.ts';
import { freshPhone, poorLine } from './slow-phone.ts';

/** How long until a phone that opens a page of the site for the first time has all of it, on a poor line? Takes as long, so it is timed once. */
export async function timeOfCopy(browser: Browser, folder: string): Promise<Figure> {
  const server = await servePacked(folder, poorLine);
  const phone = await freshPhone(browser, 'allow');
  try {
    const page = await phone.newPage();
    const began = performance.now();
    await page.goto(`${server.at}do/patching/`);
    await page.getByText('The whole site is saved here').waitFor({ timeout: 600_000 });
    const { kilobitsASecond, latency } = poorLine;
    return {
      what: `first page opened to whole copy, ${kilobitsASecond} kbps, ${latency} ms (${server.asked().length} requests)`,
      unit: 'ms',
      found: performance.now() - began,
      budget: budgets.copyTime,
    };
  } finally {
    await phone.close();
    await server.close();
  }
}
