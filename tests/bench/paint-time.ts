import type { Browser } from '@playwright/test';
import { type Figure, median } from './figure.ts';
import { freshPhone, poorLine, slowDown } from './slow-phone.ts';

const TIMES = 5;
const PROCESSOR = 4;

/** When is the largest part of a page painted, on a poor line and a slow phone that has seen nothing of the site? Median, in milliseconds. */
export async function largestPaint(browser: Browser, address: string): Promise<number> {
  const times: number[] = [];
  for (let time = 0; time < TIMES; time++) {
    const phone = await freshPhone(browser);
    try {
      const page = await phone.newPage();
      await slowDown(page, { processor: PROCESSOR, line: poorLine });
      await page.goto(address, { waitUntil: 'load' });
      times.push(
        await page.evaluate(
          () =>
            new Promise<number>((found, failed) => {
              new PerformanceObserver((list) =>
                found(list.getEntries().at(-1)?.startTime ?? Number.NaN),
              ).observe({
                type: 'largest-contentful-paint',
                buffered: true,
              });
              setTimeout(() => failed(new Error('found no painted page after 10 s')), 10_000);
            }),
        ),
      );
    } finally {
      await phone.close();
    }
  }
  return median(times);
}

/** The page of the site that stands for those that are read. */
export const READ_PAGE = 'do/patching/';

export const timeOfPaint = async (browser: Browser, at: string): Promise<Figure[]> => [
  {
    what: `largest paint of /${READ_PAGE}, 400 kbps, 400 ms, processor ${PROCESSOR} times as slow`,
    unit: 'ms',
    found: await largestPaint(browser, at + READ_PAGE),
  },
];
