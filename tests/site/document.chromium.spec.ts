import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { faultsIn } from './axe.ts';
import { everyPage, oneOfEach } from './pages.ts';

// In Chromium alone: the rules of axe look at the document, which is the same in every browser, and only Chromium prints to PDF under test.

for (const path of process.env.EVERY_PAGE ? everyPage : oneOfEach) {
  test(`${path} has nothing that axe finds fault with; its colours neither in the light scheme nor in the dark`, async ({
    page,
  }) => {
    await page.goto(path);
    // The first of each kind unfolded: a long job has hundreds that are made alike.
    await page.evaluate(() => {
      const kinds = new Set<string>();
      for (const each of document.querySelectorAll('details')) {
        const kind = `${each.className} in ${each.parentElement?.tagName} ${each.parentElement?.className}`;
        if (!kinds.has(kind)) each.open = true;
        kinds.add(kind);
      }
    });
    expect(await faultsIn(page)).toEqual([]);
  });
}

test('jobs unfolded, one deleted, one to be asked about, a code drawn: axe finds no fault; targets are large enough', async ({
  page,
}) => {
  await page.goto('/plan/jobs/');
  for (const _ of ['one', 'two', 'three'])
    await page.getByRole('button', { name: 'Begin with the example’s entries' }).click();
  await page.locator('.jobs summary').nth(2).click();
  await page.getByRole('button', { name: 'Delete' }).click();
  await page.locator('.jobs summary').first().click();
  await page.getByRole('button', { name: 'Draw a QR code' }).click();
  await expect(page.locator('.qr')).toBeVisible();
  const { id, ...job } = { ...JSON.parse(readFileSync('public/example-job.json', 'utf8')), id: 'k3m7p2q9' };
  for (const name of ['A', 'B'])
    await page.setInputFiles('#open-jobs', {
      name: 'job.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...job, id, name })),
    });
  await expect(page.getByRole('button', { name: 'Keep both' })).toBeVisible();
  expect(await faultsIn(page)).toEqual([]);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('#jobs :is(a, button, summary, label.button)')]
      .filter((each) => each.getBoundingClientRect().height < 48)
      .map((each) => each.textContent),
  );
  expect(small).toEqual([]);
});

test('the plan prints: no clipped table, no form, the cautions with their parts', async ({ page }) => {
  await page.goto('/plan/');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.entries')).toBeHidden();
  await expect(page.locator('.caution').first()).toBeVisible();
  const pdf = await page.pdf({ format: 'Letter' });
  const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? [];
  expect(pages.length).toBeGreaterThan(1);
  expect(pages.length).toBeLessThanOrEqual(6);
});
