import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { oneOfEach } from './pages.ts';

// In Chromium alone: the rules of axe look at the document, which is the same in every browser, and only Chromium prints to PDF under test.

for (const path of oneOfEach) {
  for (const scheme of ['light', 'dark'] as const) {
    test(`${path} has nothing that axe finds fault with, in the ${scheme} scheme`, async ({ page }) => {
      await page.emulateMedia({ colorScheme: scheme });
      await page.goto(path);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join('; ')}`),
      ).toEqual([]);
    });
  }
}

test('the plan prints: no clipped table, no form, the cautions with their parts', async ({ page }) => {
  await page.goto('/plan/');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('form.entries')).toBeHidden();
  await expect(page.locator('.caution').first()).toBeVisible();
  const pdf = await page.pdf({ format: 'Letter' });
  const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? [];
  expect(pages.length).toBeGreaterThan(1);
  expect(pages.length).toBeLessThanOrEqual(6);
});
