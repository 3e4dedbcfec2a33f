import { expect, test } from '@playwright/test';

test('under a host whose own policy refuses the style that a page holds, the page fetches it as a file and looks the same', async ({
  page,
}) => {
  const look = () =>
    page.evaluate(() => {
      const { fontSize, maxWidth } = getComputedStyle(document.querySelector('main') as Element);
      return { fontSize, maxWidth, sheets: document.styleSheets.length };
    });
  await page.goto('/do/patching/');
  const held = await look();
  await page.route('**/do/patching/', async (route) => {
    const answer = await route.fetch();
    await route.fulfill({
      response: answer,
      headers: { ...answer.headers(), 'content-security-policy': "style-src 'self'" },
    });
  });
  await page.reload();
  await expect(page.locator('head link[rel=stylesheet]')).toHaveAttribute('href', /site\.[^/]*\.css$/);
  await expect.poll(look).toEqual(held);
});
