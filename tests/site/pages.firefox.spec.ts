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

for (const path of pages) {
  test(`${path} fits a phone 360 px wide, holds no inline script or style of others once its scripts have run, and asks no other host for anything`, async ({
    page,
    baseURL,
  }) => {
    await openOnAPhone(page, path, baseURL);
  });
}
