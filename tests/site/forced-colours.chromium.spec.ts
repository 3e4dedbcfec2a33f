import { expect, test } from '@playwright/test';

// In Chromium alone: it lays a plate of the page's own colour behind words, and only there a button could be blank.

test.use({ contextOptions: { forcedColors: 'active' } });

/** What a button has where the system sets the colours. */
const OF_THE_SYSTEM = ['ButtonText', 'ButtonFace'] as const;

test('where the system sets the colours, every main button has a button’s', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  for (const path of [
    '/calculators/ceiling-load/',
    '/plan/',
    '/plan/jobs/',
    '/plan/fill-log/',
    '/do/patching/',
  ]) {
    await page.goto(path);
    const number = page.locator('main a.rule').locator('visible=true').first();
    // The card of a number has a button too.
    if (path.startsWith('/do/')) {
      await number.click();
      await expect(page.getByRole('dialog')).toBeVisible();
    }
    const blank = await page.evaluate(([text, face]) => {
      const probe = document.createElement('span');
      document.body.append(probe);
      probe.style.color = text;
      probe.style.backgroundColor = face;
      const { color, backgroundColor } = getComputedStyle(probe);
      return [...document.querySelectorAll('button:not(.plain), .button:not(.plain)')]
        .filter((each) => {
          const own = getComputedStyle(each);
          return own.color !== color || own.backgroundColor !== backgroundColor || own.borderStyle === 'none';
        })
        .map((each) => each.outerHTML.slice(0, 100));
    }, OF_THE_SYSTEM);
    expect.soft(await page.locator('button, .button').count(), path).toBeGreaterThan(0);
    expect.soft(blank, path).toEqual([]);
  }
});
