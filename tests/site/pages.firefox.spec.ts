import { test } from '@playwright/test';
import { openOnAPhone } from './hand/on-its-own.ts';

// In Chromium the same is held where each page is measured; here for one of each way of being laid out.
const pages = [
  '/',
  '/plan/',
  '/plan/ways-in/',
  '/plan/hose-marks/',
  '/calculators/hose-marks/',
  '/do/filling-through-roof-holes/',
  '/cards/filling-through-roof-holes/',
  '/rules/',
];

// One visit for all: to begin it anew takes longer than to look.
test('pages fit a phone 360 px wide, hold no inline script or style of others once their scripts have run, and ask no other host for anything', async ({
  page,
  baseURL,
}) => {
  for (const path of pages) await test.step(path, () => openOnAPhone(page, path, baseURL));
});
