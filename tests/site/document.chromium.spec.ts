import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { faultsIn } from './axe.ts';

// In Chromium alone: the rules of axe look at the document, which is the same in every browser, and only Chromium prints to PDF under test.

test('axe finds words that are far too faint, a little too faint, and large and too faint, in either scheme', async ({
  page,
}) => {
  // By the formula of WCAG 2.1: #888 and #666 on white 3.5 and 5.7 to 1, #666 and #808080 on black 3.7 and 5.3 to 1.
  await page.setContent(`<!doctype html><html lang="en"><title>Faint</title><style>
    html { color-scheme: light dark; background: white; color: black }
    .far { color: #888 } .little { color: #666 } .large { color: #666; font-size: 40px }
    @media (prefers-color-scheme: dark) {
      html { background: black; color: white } .far { color: #666 } .little, .large { color: #808080 }
    }
  </style><main><h1>Faint</h1><p class="far">far too faint</p><p class="little">a little too faint</p><p class="large">large</p></main>`);
  const faint = [
    'color-contrast: <p class="far">far too faint</p>',
    'color-contrast: <p class="little">a little too faint</p>',
    'color-contrast: <p class="large">large</p>',
  ];
  expect(await faultsIn(page)).toEqual([...faint, ...faint.map((each) => `dark: ${each}`)]);
});

test('jobs unfolded, one deleted, one to be asked about, a code drawn: axe finds no fault; targets are large enough', async ({
  page,
}) => {
  await page.goto('/plan/jobs/');
  for (const _ of ['one', 'two', 'three']) {
    await page.getByRole('button', { name: 'Begin with the example’s entries' }).click();
    await expect(page).toHaveURL(/\/plan\/#/);
    await page.goto('/plan/jobs/');
  }
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

test('the plan prints: no clipped table, no boxes of the form, the cautions with their parts', async ({
  page,
}) => {
  await page.goto('/plan/');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.entries :is(input, select, button):visible')).toHaveCount(0);
  await expect(page.locator('.caution').first()).toBeVisible();
  const pdf = await page.pdf({ format: 'Letter' });
  const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? [];
  expect(pages.length).toBeGreaterThan(1);
  expect(pages.length).toBeLessThanOrEqual(6);
});
