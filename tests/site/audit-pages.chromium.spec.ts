import { expect, test } from '@playwright/test';

// Pages for a reviewer: what changed, and which documents values are drawn from.

for (const path of ['/changes/', '/sources/'])
  test(`${path}: on a wide screen no word of a table's head is broken`, async ({ page }) => {
    await page.setViewportSize({ width: 1280, height: 740 });
    await page.goto(path);
    const broken = await page.locator('thead th').evaluateAll((heads) =>
      heads.flatMap((head) => {
        const node = head.firstChild;
        if (!node) return [];
        return [...(node.textContent ?? '').matchAll(/\S+/g)].flatMap(({ index, 0: word }) => {
          const range = document.createRange();
          range.setStart(node, index);
          range.setEnd(node, index + word.length);
          return range.getClientRects().length > 1 ? [word] : [];
        });
      }),
    );
    expect(broken).toEqual([]);
  });

test('each change is shown as it was and as it is, and never twice the same', async ({ page }) => {
  await page.goto('/changes/');
  const rows = page.locator('.changes tbody tr');
  expect(await rows.count()).toBeGreaterThan(20);
  for (const row of await rows.all()) {
    const before = await row.locator('[data-label=Before]').textContent();
    expect(before?.trim()).not.toBe('');
    expect(await row.locator('[data-label=Now]').textContent()).not.toBe(before);
  }
});

test('the history of a value tells how its source was read, before and now', async ({ page }) => {
  await page.goto('/rules/safety.fall.systems/');
  const history = page.locator('section', { has: page.getByRole('heading', { name: 'History' }) });
  await expect(history).toContainText('2026.3: source');
  await expect(history.locator('dd')).toHaveText([
    /^Before: 29 CFR part 1926 .*: read$/,
    /^Now: 29 CFR part 1926 .*: reprint$/,
  ]);
});

test('of a document each thing that is known stands by itself, in words as they are written', async ({
  page,
}) => {
  await page.goto('/sources/ashrae-fundamentals-26/');
  const said = page.locator('dl.fields').first();
  await expect(said.locator('div', { hasText: 'Edition' })).toContainText('2021, SI edition');
  await expect(said.locator('div', { hasText: 'Where to find it' })).toContainText('Sold by the publisher');
});
