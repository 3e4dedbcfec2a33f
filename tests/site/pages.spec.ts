import { expect, test } from '@playwright/test';
import { everyPage, oneOfEach } from './pages.ts';

for (const path of oneOfEach) {
  test(`${path} fits a phone 360 px wide`, async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(path);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });
}

test('no page holds inline script or style, or asks another host for anything', async ({ page, baseURL }) => {
  test.setTimeout(120_000);
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(`${baseURL}/`) && !request.url().startsWith('blob:'))
      elsewhere.push(request.url());
  });
  for (const path of everyPage) {
    await page.goto(path);
    const inline = await page.evaluate(
      () => document.querySelectorAll('script:not([src]), style, [style], [onclick]').length,
    );
    expect(inline, path).toBe(0);
  }
  expect(elsewhere).toEqual([]);
});
