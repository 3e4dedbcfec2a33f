import { expect, type Page } from '@playwright/test';

/** Opens a page as on a phone 360 px wide, and holds that it fits, has no inline script once its scripts have run, no inline style but the site's own, and asks no other host for anything. */
export async function openOnAPhone(page: Page, path: string, baseURL: string | undefined): Promise<void> {
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(`${baseURL}/`) && !request.url().startsWith('blob:'))
      elsewhere.push(request.url());
  });
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto(path);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  const inline = await page.evaluate(
    () =>
      document.querySelectorAll('script:not([src]), style:not(head > [data-file]), [style], [onclick]')
        .length,
  );
  expect(inline).toBe(0);
  expect(elsewhere).toEqual([]);
}
