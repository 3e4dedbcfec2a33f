import { expect, test } from '@playwright/test';
import { ONCE } from './once.ts';

test(
  'a link within the page leaves a calculator its entries, whatever another tab typed, and the address too',
  ONCE,
  async ({ page, context }) => {
    const depth = '#field-depth';
    await page.goto('/calculators/ceiling-load/');
    await page.locator(depth).fill('9 in');
    await expect(page).toHaveURL(/depth=9\+in/);
    const other = await context.newPage();
    await other.goto('/calculators/ceiling-load/');
    await other.locator(depth).fill('4 in');
    await expect(other).toHaveURL(/depth=4\+in/);
    await page.getByRole('link', { name: 'To the page' }).press('Enter');
    await expect(page).toHaveURL(/depth=9\+in/);
    await expect(page.locator(depth)).toHaveValue('9 in');
  },
);
