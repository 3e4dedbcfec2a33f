import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { faultsIn } from './axe.ts';
import {
  crowdedWords,
  faintDrawings,
  hoverAndMotion,
  LEAST_TARGET,
  LEAST_TYPE,
  LEAST_UNTOUCHED,
  smallTargets,
  smallWords,
} from './hand/look.ts';
import { openOnAPhone } from './hand/on-its-own.ts';
import { everyPage, oneOfEach } from './pages.ts';
import { SLOW } from './searching.ts';

// In Chromium alone: what is measured is the document and its style sheets, the same in every browser. All of it in one visit, which takes
// longer than each of the looks.

/** One page of each kind; every page where it is asked for, which takes a quarter of an hour. */
const pages = process.env.EVERY_PAGE ? everyPage : oneOfEach;

/** A phone held upright, and a desk. */
const [phone, desk] = [
  { width: 360, height: 740 },
  { width: 1280, height: 740 },
];

/** A phone on its side. */
const aside = { width: 844, height: 390 };

/** The first of each kind unfolded, or all of them: a long job has hundreds that are made alike. */
const unfold = (page: Page, which: 'all' | 'one of each kind'): Promise<void> =>
  page.evaluate((all) => {
    const kinds = new Set<string>();
    for (const each of document.querySelectorAll('details')) {
      const kind = `${each.className} in ${each.parentElement?.tagName} ${each.parentElement?.className}`;
      each.open = all || !kinds.has(kind);
      kinds.add(kind);
    }
  }, which === 'all');

/** As for a reader who has set the browser's type to so many pixels. */
async function setType(page: Page, standard: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Page.setFontSizes', { fontSizes: { standard } });
  await session.detach();
  // 18 px where it is left at 16.
  expect(await page.evaluate(() => getComputedStyle(document.body).fontSize)).toBe(
    `${(standard / 16) * 18}px`,
  );
}

/** Only what has something in it, so that a fault is told by its name. */
const some = (found: Readonly<Record<string, readonly string[]>>) =>
  Object.entries(found).filter(([, all]) => all.length > 0);

for (const path of pages) {
  test(`${path}: fits the hand and twice the type, and axe finds no fault`, async ({ page, baseURL }) => {
    await openOnAPhone(page, path, baseURL);
    if (path.startsWith('/search/?')) {
      const results = page.locator('#results');
      await expect(results.locator('li').first()).toBeVisible(SLOW);
      await expect(results).not.toHaveAttribute('aria-busy', 'true', SLOW);
    }
    await unfold(page, 'all');

    await test.step('in the hand: targets for gloves, type for the sun, words of drawings that stand out in both schemes, nothing to hover over', async () => {
      const wrong: Record<string, string[]> = {
        targets: await page.evaluate(smallTargets, LEAST_TARGET),
        type: await page.evaluate(smallWords, LEAST_TYPE),
        hover: await page.evaluate(hoverAndMotion),
      };
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        wrong[`drawings, ${colorScheme}`] = await page.evaluate(faintDrawings);
      }
      await page.emulateMedia({ forcedColors: 'active' });
      wrong['drawings, forced colours'] = await page.evaluate(faintDrawings);
      await page.emulateMedia({ forcedColors: null });
      expect(some(wrong)).toEqual([]);
    });

    await test.step('at twice the type: no words cut off, on others, or out of the page, on a phone and on a desk', async () => {
      const wrong: Record<string, string[]> = {};
      await setType(page, 32);
      for (const size of [phone, desk]) {
        await page.setViewportSize(size);
        // What is laid out anew for a desk may come folded.
        await unfold(page, 'all');
        wrong[size.width] = await page.evaluate(crowdedWords);
      }
      await setType(page, 16);
      expect(some(wrong)).toEqual([]);
    });

    await test.step('axe finds no fault with the document, nor with its colours in the light scheme or the dark', async () => {
      await unfold(page, 'one of each kind');
      expect(await faultsIn(page)).toEqual([]);
    });
  });
}

/** Field cards are paper: `cards.chromium.spec.ts` measures their type in points. */
const drawn = everyPage.filter(
  (path) =>
    !path.startsWith('/cards/') && readFileSync(`dist${path}index.html`, 'utf8').includes('class="drawing'),
);

test('words of drawings can be read where nothing is made larger, in every size of screen', async ({
  page,
}) => {
  // Two dozen pages, each in three sizes.
  test.slow();
  expect(drawn).toContain('/plan/');
  for (const path of drawn) {
    await page.goto(path);
    const wrong: Record<string, string[]> = {};
    for (const size of [phone, aside, desk]) {
      await page.setViewportSize(size);
      wrong[`${path}, ${size.width} px`] = await page.evaluate(smallWords, LEAST_UNTOUCHED);
    }
    expect(some(wrong)).toEqual([]);
  }
});

/** Which of these pages are wider than the screen, at twice the type and with all unfolded? */
async function widerThan(page: Page, screen: typeof phone, paths: readonly string[]): Promise<string[]> {
  await page.setViewportSize(screen);
  await page.goto('/');
  await setType(page, 32);
  const wider: string[] = [];
  for (const path of paths) {
    await page.goto(path);
    await unfold(page, 'all');
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (width > screen.width) wider.push(`${path}: ${width} px`);
  }
  return wider;
}

test('at twice the type a page with long amounts or long names is no wider than a phone', async ({
  page,
}) => {
  const paths = [
    '/know/air-vapour-and-metal-roofs/',
    '/know/materials-compared/',
    '/do/testing-the-machine/',
    '/calculators/roof-heat/',
    '/checks/hole-layout/',
    '/checks/patch-kit/',
    '/changes/2026.8/cautions/',
  ];
  expect(await widerThan(page, phone, paths)).toEqual([]);
});

test('at twice the type nothing slides sideways on the smallest phone: long buttons, bars, words of a status, names of sheets', async ({
  page,
}) => {
  const paths = [
    '/plan/photographs/',
    '/plan/jobs/',
    '/calculators/dust/',
    '/calculators/gable-lanes/',
    '/train/lessons/',
    '/know/the-taper-and-r/',
    '/rules/',
    '/cards/all/',
  ];
  expect(await widerThan(page, { width: 320, height: 568 }, paths)).toEqual([]);
});
