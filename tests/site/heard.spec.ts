import { expect, type Page, test } from '@playwright/test';
import { ONCE } from './once.ts';

/** What a page says aloud of its entries: the place that always stands. */
const said = (page: Page) => page.locator('.bench > [role="status"]');

/** Long enough for whatever would be said to be said. */
const ALL_SAID = 1500;

async function newJob(page: Page, path: string): Promise<void> {
  await page.goto('/plan/jobs/');
  await page.getByLabel('Address').last().fill('Lot 9');
  await page.getByRole('button', { name: 'Begin with nothing filled in' }).click();
  await expect(page.locator('.job-line')).toContainText('Open: Lot 9');
  if (path === '') return;
  const sheets = page.getByRole('navigation', { name: 'Sheets of this job' });
  await sheets.getByRole('link', { name: path, exact: true }).click();
  await expect(page.locator('.job-line')).toContainText('Open: Lot 9');
}

test('a new job is not told off: its empty boxes are wrong once they were left, and that is said once, in short', async ({
  page,
}) => {
  await newJob(page, '');
  const wrong = page.locator('.entries [aria-invalid]');
  await expect(page.locator('.problems')).toContainText('Length of the roof');
  await page.waitForTimeout(ALL_SAID);
  await expect(wrong).toHaveCount(0);
  await expect(page.locator('[role="alert"]')).toHaveCount(0);
  await expect(said(page)).toHaveText('');

  const length = page.locator('#field-home-length');
  await length.focus();
  await page.keyboard.type('6');
  await page.waitForTimeout(ALL_SAID);
  await expect(length).not.toHaveAttribute('aria-invalid');
  await expect(said(page)).toHaveText('');
  await page.keyboard.press('Tab');
  await expect(length).toHaveAttribute('aria-invalid', 'true');
  await expect(said(page)).toHaveText(/^\d+ entries are missing or wrong: .+, .+, .+, and more$/);
  expect((await said(page).textContent())?.length).toBeLessThan(150);
  await expect(wrong).toHaveCount(1);
  await page.locator('#field-home-built').focus();
  await page.keyboard.press('Tab');
  await expect(page.locator('#field-home-built')).toHaveAttribute('aria-invalid', 'true');
});

test('a new stop of the plan is said, and so is what it comes to once that is settled', async ({ page }) => {
  await page.goto('/plan/');
  await expect(page.locator('#plan .answer output')).toContainText('5 holes');
  const board = page.getByLabel('Ceiling board');
  const before = await board.inputValue();
  await board.selectOption('gypsum 3/8 in');
  await expect(said(page)).toHaveText('One open stop holds the plan');
  await board.selectOption(before);
  await expect(said(page)).toHaveText(/^5 holes, .*, the ceiling carries it$/);
});

test('a calculator says its answer in a sentence, with a new stop, and nothing on load', async ({ page }) => {
  await page.goto('/calculators/ceiling-load/');
  const depth = page.locator('#field-depth');
  await depth.waitFor();
  await page.waitForTimeout(ALL_SAID);
  await expect(said(page)).toHaveText('');
  await expect(page.locator('.answers[aria-live]')).toHaveCount(0);
  await depth.fill('40 in');
  await expect(said(page)).toHaveText(/^The ceiling: does not carry it\. Stop\. \S/);
  await depth.fill('10 in');
  await expect(said(page)).toHaveText('The ceiling: carries it');
});

test('back to the example, and back again to what was typed', ONCE, async ({ page }) => {
  await page.goto('/calculators/ceiling-load/');
  const depth = page.locator('#field-depth');
  const undo = page.getByRole('button', { name: 'Undo: back to what was typed' });
  const example = await depth.inputValue();
  await depth.fill('9 in');
  await page.getByRole('button', { name: 'Back to the example' }).click();
  await expect(depth).toHaveValue(example);
  await undo.click();
  await expect(depth).toHaveValue('9 in');
  await expect(undo).toHaveCount(0);
  await page.reload();
  await expect(depth).toHaveValue('9 in');
});
