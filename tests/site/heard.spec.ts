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

test(
  'a new stop of the plan is said, and so is what it comes to once that is settled',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/');
    await expect(page.locator('#plan .answer output')).toContainText('5 holes');
    const board = page.getByLabel('Ceiling board');
    const before = await board.inputValue();
    await board.selectOption('gypsum 3/8 in');
    await expect(said(page)).toHaveText('One open stop holds the plan');
    await board.selectOption(before);
    await expect(said(page)).toHaveText(/^5 holes, .*, the ceiling carries it$/);
  },
);

test(
  'a calculator says its answer in a sentence, with a new stop, and nothing on load',
  ONCE,
  async ({ page }) => {
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
  },
);

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

test(
  'on a new job a stop of the survey shows as soon as it is answered, and is said',
  ONCE,
  async ({ page }) => {
    await newJob(page, 'Before the fill');
    const plan = page.locator('#plan');
    await expect(plan).toContainText('not looked at everywhere');
    await page.getByLabel('Leaks').selectOption('leaks found');
    await expect(plan.locator('.answer output').first()).toHaveText('not ready');
    await expect(plan.locator('.caution.stop').first()).toBeVisible();
    await expect(page.locator('.short-answer')).toHaveText('The home is: not ready');
    await expect(said(page)).toHaveText('The home is: not ready');
    await expect(page.locator('.problems')).toContainText('Length of the roof');
  },
);

test('back to the example job says which is open, and leads back to the one that was', async ({ page }) => {
  await newJob(page, 'Heat and savings');
  await page.getByRole('button', { name: 'Back to the example job' }).click();
  const line = page.locator('.job-line');
  await expect(line.getByRole('status')).toContainText('The example job is open now, in place of Lot 9');
  const back = page.getByRole('button', { name: 'Back to Lot 9' });
  await expect(back).toBeFocused();
  await back.click();
  await expect(line).toContainText('Open: Lot 9');
  await expect(back).toHaveCount(0);
});

test(
  'what is saved of the site is said where somebody asks for it, and not on every page',
  ONCE,
  async ({ page }) => {
    await page.goto('/do/patching/');
    const state = page.locator('.copy-state');
    await expect(state).not.toHaveText('');
    await expect(state).not.toHaveAttribute('role');
    await page.getByRole('button', { name: 'Check now' }).click();
    await expect(state).toHaveAttribute('role', 'status');
  },
);
