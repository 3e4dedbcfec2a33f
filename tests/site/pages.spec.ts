import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { attributeOf, elementsIn } from '../../src/built/html.ts';
import { everyPage, oneOfEach } from './pages.ts';

for (const path of oneOfEach) {
  test(`${path} fits a phone 360 px wide, holds no inline script or style once its scripts have run, and asks no other host for anything`, async ({
    page,
    baseURL,
  }) => {
    const elsewhere: string[] = [];
    page.on('request', (request) => {
      if (!request.url().startsWith(`${baseURL}/`) && !request.url().startsWith('blob:'))
        elsewhere.push(request.url());
    });
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(path);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    const inline = await page.evaluate(
      () => document.querySelectorAll('script:not([src]), style, [style], [onclick]').length,
    );
    expect(inline).toBe(0);
    expect(elsewhere).toEqual([]);
  });
}

test('no page at all is written with an inline script or style, or with a script, a style sheet or a picture of another host', () => {
  const wrong = everyPage.flatMap((path) =>
    elementsIn(readFileSync(`dist${path}index.html`, 'utf8'))
      .filter((element) => {
        const { tagName, attrs } = element;
        const asked = attributeOf(element, tagName === 'link' ? 'href' : 'src');
        return (
          tagName === 'style' ||
          (tagName === 'script' && asked === undefined) ||
          attrs.some(({ name }) => name === 'style' || name.startsWith('on')) ||
          /^(?:[a-z]+:)?\/\//i.test(asked ?? '')
        );
      })
      .map(({ tagName }) => `${path}: ${tagName}`),
  );
  expect(wrong).toEqual([]);
});
