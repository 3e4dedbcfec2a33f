import { expect, test } from '@playwright/test';
import {
  faintDrawings,
  hoverAndMotion,
  LEAST_TARGET,
  LEAST_TYPE,
  smallTargets,
  smallWords,
} from './hand/look.ts';
import { openOnAPhone } from './hand/on-its-own.ts';
import { everyPage, oneOfEach } from './pages.ts';

// In Chromium alone: what is measured is the document and its style sheets, the same in every browser.

/** One page of each kind; every page where it is asked for, which takes a quarter of an hour. */
const pages = process.env.EVERY_PAGE ? everyPage : oneOfEach;

for (const path of pages) {
  test(`${path} in the hand: fits, asks no other host, targets for gloves, type for the sun, words of drawings that stand out in both schemes, nothing to hover over`, async ({
    page,
    baseURL,
  }) => {
    await openOnAPhone(page, path, baseURL);
    await page.evaluate(() => {
      for (const each of document.querySelectorAll('details')) each.open = true;
    });
    const wrong: Record<string, string[]> = {};
    wrong.targets = await page.evaluate(smallTargets, LEAST_TARGET);
    wrong.type = await page.evaluate(smallWords, LEAST_TYPE);
    wrong.hover = await page.evaluate(hoverAndMotion);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      wrong[`drawings, ${colorScheme}`] = await page.evaluate(faintDrawings);
    }
    await page.emulateMedia({ forcedColors: 'active' });
    wrong['drawings, forced colours'] = await page.evaluate(faintDrawings);
    expect(Object.entries(wrong).filter(([, found]) => found.length > 0)).toEqual([]);
  });
}
