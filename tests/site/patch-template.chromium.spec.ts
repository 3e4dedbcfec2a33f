import { expect, test } from '@playwright/test';
import { type PrintedPage, printedPages } from './pdf-lengths.ts';

// In Chromium alone: only it prints to PDF under test.

const POINTS_PER_INCH = 72;
/** A hundredth of an inch is finer than a tape shows. */
const NEAR = 0.01 * POINTS_PER_INCH;

const holds = (lengths: readonly number[], inches: number): boolean =>
  lengths.some((each) => Math.abs(each - inches * POINTS_PER_INCH) <= NEAR);

const only = (pages: readonly PrintedPage[]): PrintedPage => {
  expect(pages).toHaveLength(1);
  const [page] = pages;
  if (!page) throw new Error('found no page, expected one');
  return page;
};

/** Landscape Letter and A4, in points. */
const papers = [
  { format: 'Letter', width: 792, height: 612 },
  { format: 'A4', width: 842, height: 595 },
] as const;

for (const paper of papers) {
  test(`the template prints alone on one ${paper.format} sheet, at full size: its bars are 1 in, its metal 10 in by 5`, async ({
    page,
  }) => {
    await page.goto('/plan/patch-template/');
    // As the print dialogue does with the paper turned; the page's own rule turns it where the browser follows that.
    const sheet = only(printedPages(await page.pdf({ format: paper.format, landscape: true })));
    expect(Math.abs(sheet.width - paper.width)).toBeLessThan(2);
    expect(Math.abs(sheet.height - paper.height)).toBeLessThan(2);
    expect(holds(sheet.across, 1), `across: ${sheet.across}`).toBe(true);
    expect(holds(sheet.up, 1), `up: ${sheet.up}`).toBe(true);
    expect(holds(sheet.across, 10)).toBe(true);
    expect(holds(sheet.up, 5)).toBe(true);
  });
}

test('another hole has a template of its own: over 4 in the metal is 8 in by 4', async ({ page }) => {
  await page.goto('/plan/patch-template/');
  await page.getByRole('link', { name: '4 in', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('hole of 4 in');
  const sheet = only(printedPages(await page.pdf({ format: 'Letter', landscape: true })));
  expect(holds(sheet.across, 1)).toBe(true);
  // By hand: 2 in of metal beyond the hole on every side, as 10 in over the hole of 6.
  expect(holds(sheet.across, 8)).toBe(true);
  expect(holds(sheet.up, 4)).toBe(true);
});

test('the page turns the paper by itself, and nothing is shrunk by it', async ({ page }) => {
  await page.goto('/plan/patch-template/');
  const sheet = only(printedPages(await page.pdf({ preferCSSPageSize: true })));
  expect(sheet.width).toBeGreaterThan(sheet.height);
  expect(holds(sheet.across, 10)).toBe(true);
  expect(holds(sheet.up, 5)).toBe(true);
});

test('a print that was shrunk is told from a true one', async ({ page }) => {
  await page.goto('/plan/patch-template/');
  const sheet = only(printedPages(await page.pdf({ format: 'Letter', landscape: true, scale: 0.95 })));
  expect(holds(sheet.across, 1)).toBe(false);
  expect(holds(sheet.across, 0.95)).toBe(true);
});

test('on paper and on the screen the bars are 96 CSS px, which is 1 in', async ({ page }) => {
  await page.goto('/plan/patch-template/');
  for (const media of ['screen', 'print'] as const) {
    await page.emulateMedia({ media });
    const across = await page.locator('[data-bar="across"]').boundingBox();
    const up = await page.locator('[data-bar="up"]').boundingBox();
    expect(across?.width).toBeCloseTo(96, 1);
    expect(up?.height).toBeCloseTo(96, 1);
  }
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('the template is whole, and the patch stands drawn with its screws numbered', async ({ page }) => {
    await page.goto('/plan/patch-template/');
    await expect(page.locator('.full-size svg text', { hasText: /^1\/2$/ })).toHaveCount(1);
    await page.goto('/calculators/patch-layers/');
    await expect(page.locator('.drawing svg')).toHaveCount(2);
    await expect(page.locator('.drawing svg text', { hasText: /^36$/ })).toHaveCount(1);
    // The one layout that the page is built with stands on a broad screen too.
    await expect(page.locator('.drawing svg').first()).toBeVisible();
  });
});
