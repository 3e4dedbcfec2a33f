import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import {
  crowdedWords,
  faintDrawings,
  hoverAndMotion,
  LEAST_TARGET,
  LEAST_TYPE,
  smallTargets,
  smallWords,
} from './hand/look.ts';
import { everyPage, oneOfEach } from './pages.ts';

// In Chromium alone: what is measured is the document and its style sheets, the same in every browser.

/** One page of each kind; every page where it is asked for, which takes a quarter of an hour. */
const pages = process.env.EVERY_PAGE ? everyPage : oneOfEach;
const phone = { width: 360, height: 740 } as const;
const desk = { width: 1280, height: 900 } as const;

for (const path of pages) {
  test(`${path} in the hand: targets for gloves, type for the sun, contrast in both schemes, nothing to hover over, whole at twice the type`, async ({
    page,
  }) => {
    await page.setViewportSize(phone);
    await page.goto(path);
    await page.evaluate(() => {
      for (const each of document.querySelectorAll('details')) each.open = true;
    });
    const wrong: Record<string, string[]> = {};
    wrong.targets = await page.evaluate(smallTargets, LEAST_TARGET);
    wrong.type = await page.evaluate(smallWords, LEAST_TYPE);
    wrong.hover = await page.evaluate(hoverAndMotion);
    for (const scheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme: scheme });
      const { violations } = await new AxeBuilder({ page })
        .options({ rules: { 'color-contrast-enhanced': { enabled: true } } })
        .analyze();
      wrong[`axe, ${scheme}`] = violations.map(
        ({ id, nodes }) => `${id}: ${nodes.slice(0, 4).map(({ html }) => html.slice(0, 120)).join('; ')}`,
      );
      wrong[`drawings, ${scheme}`] = await page.evaluate(faintDrawings);
    }
    for (const size of [phone, desk]) {
      await page.setViewportSize(size);
      // As a reader does who has set the browser's type to twice its size.
      await page.evaluate(() => {
        document.documentElement.style.fontSize = `${2 * 18}px`;
      });
      wrong[`twice the type, ${size.width}`] = await page.evaluate(crowdedWords);
    }
    expect(Object.entries(wrong).filter(([, found]) => found.length > 0)).toEqual([]);
  });
}
