import { expect, test } from '@playwright/test';
import { findChromium } from './browsers.ts';
import { crowdedWords } from './hand/look.ts';
import { everyPage, oneOfEach } from './pages.ts';

// In Chromium alone: how words flow is laid down by the style sheets, the same in every browser.

/** As a reader does who has set the browser's type to twice its size: 32 px in place of 16. */
test.use({
  launchOptions: {
    executablePath: await findChromium(),
    args: ['--no-sandbox', '--blink-settings=defaultFontSize=32'],
  },
});

const pages = process.env.EVERY_PAGE ? everyPage : oneOfEach;

for (const path of pages) {
  test(`${path} at twice the type: no words cut off, on others, or out of the page, on a phone and on a desk`, async ({
    page,
  }) => {
    const wrong: Record<number, string[]> = {};
    for (const width of [360, 1280]) {
      await page.setViewportSize({ width, height: 740 });
      if (width === 360) await page.goto(path);
      await page.evaluate(() => {
        for (const each of document.querySelectorAll('details')) each.open = true;
      });
      expect(await page.evaluate(() => getComputedStyle(document.body).fontSize)).toBe('36px');
      wrong[width] = await page.evaluate(crowdedWords);
    }
    expect(Object.entries(wrong).filter(([, found]) => found.length > 0)).toEqual([]);
  });
}
