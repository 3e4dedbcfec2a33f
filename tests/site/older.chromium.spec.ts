import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';

// In Chromium alone: a browser that can do more is made to do less.

test('a browser of 2019, which knows fewer words, calculates, opens a job and reads a record', async ({
  page,
}) => {
  await page.addInitScript(() => {
    // What the oldest browsers of package.json lack, and a newer one would hide the lack of.
    for (const [of, names] of [
      [String.prototype, ['matchAll', 'replaceAll', 'at']],
      [Array.prototype, ['at', 'findLast', 'findLastIndex', 'toSorted', 'toReversed', 'with']],
      [Blob.prototype, ['arrayBuffer', 'text', 'stream']],
      [Object, ['hasOwn', 'groupBy']],
      [Promise, ['any', 'allSettled', 'withResolvers']],
      [window, ['structuredClone', 'CompressionStream', 'requestIdleCallback']],
    ] as const)
      for (const name of names) Reflect.deleteProperty(of, name);
  });
  await page.goto('/calculators/ceiling-load/');
  await page.getByLabel('Depth').first().fill('60 in');
  await expect(page.locator('.answer output')).not.toHaveText('carries it');
  await expect(page.locator('.caution.stop').first()).toBeVisible();

  const example = JSON.parse(readFileSync('public/example-job.json', 'utf8'));
  const asFile = (value: unknown) => ({
    name: 'file.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(value)),
  });
  await page.goto('/plan/jobs/');
  await page.setInputFiles('#open-jobs', asFile({ ...example, name: '9 Sorrel Court' }));
  await expect(page.locator('.jobs .job')).toHaveText(['9 Sorrel Court']);
  await page.goto('/recheck/');
  await page.setInputFiles('#open-record', asFile({ format: 'none' }));
  await expect(page.getByText('a file of another kind')).toBeVisible();
});
