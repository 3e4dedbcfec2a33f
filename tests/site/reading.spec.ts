import { expect, test } from '@playwright/test';
import { ONCE } from './once.ts';

test(
  'a number in a procedure leads to its rule, and stands again at the end of the page',
  ONCE,
  async ({ page }) => {
    await page.goto('/do/filling-through-roof-holes/');
    const number = page.locator('.prose a.rule', { hasText: '12 to 16 ft' });
    await expect(number).toHaveAttribute('href', /access\.roof-holes\.spacing/);
    await expect(page.locator('.numbers')).toContainText('between 12 and 16 ft');
    await number.click();
    await expect(page.locator('h1')).toBeVisible();
    await expect(page.locator('main')).toContainText('practice');
  },
);

test('a calculator answers as its entries change', async ({ page }) => {
  await page.goto('/calculators/ceiling-load/');
  await expect(page.locator('.answer output')).toHaveText('carries it');
  await page.getByLabel('Density of the new fill').fill('3 lb/ft3');
  // 13 in at 3 lb/ft3 weighs 3.25 lb/ft2, more than the 2.2 that the board may carry.
  await expect(page.locator('.answer output')).toHaveText('does not carry it');
  await expect(page.locator('.caution.stop')).toBeVisible();
});

test('the data files are served: example job and the shape of a job file', ONCE, async ({ request }) => {
  const schema = await (await request.get('/data/job.schema.json')).json();
  const example = await (await request.get('/example-job.json')).json();
  expect(Object.keys(schema.properties)).toEqual(expect.arrayContaining(Object.keys(example)));
});
