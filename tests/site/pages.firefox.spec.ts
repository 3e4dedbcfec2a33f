import { test } from '@playwright/test';
import { openOnAPhone } from './hand/on-its-own.ts';
import { oneOfEach } from './pages.ts';

// In Chromium the same is held where each page is measured.

for (const path of oneOfEach) {
  test(`${path} fits a phone 360 px wide, holds no inline script or style once its scripts have run, and asks no other host for anything`, async ({
    page,
    baseURL,
  }) => {
    await openOnAPhone(page, path, baseURL);
  });
}
