import { expect, test } from '@playwright/test';
import { faultsIn } from './axe.ts';
import { jpegOf } from './jpeg.ts';

// In Chromium alone: only it prints to PDF under test, and axe looks at the document.

const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
/** Pictures that stand in a PDF as they were given. */
const picturesOf = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Subtype\s*\/Image\b/g)?.length ?? 0;

test('photographs print two or four a page after the list, on Letter and A4, each whole with its caption', async ({
  page,
}) => {
  await page.goto('/plan/photographs/');
  const alone = { Letter: 0, A4: 0 };
  for (const format of ['Letter', 'A4'] as const) {
    alone[format] = pagesOf(await page.pdf({ format }));
    expect(alone[format]).toBeLessThanOrEqual(3);
  }
  await page.emulateMedia({ media: 'print' });
  const box = (id: string) =>
    page.locator(`#photograph-${id}`).evaluate((each) => getComputedStyle(each, '::before').borderTopStyle);
  expect(await box('patches')).toBe('solid');
  await page.emulateMedia({ media: null });
  const files = [];
  for (const [place, size] of [
    { width: 400, height: 300 },
    { width: 300, height: 400 },
    { width: 500, height: 200 },
    { width: 200, height: 500 },
    { width: 300, height: 300 },
  ].entries())
    files.push({ name: `${place}.jpg`, mimeType: 'image/jpeg', buffer: await jpegOf(page, size) });
  await page.setInputFiles('#choose-patches', files);
  await expect(page.locator('figure.photograph img')).toHaveCount(5);
  await page.getByLabel('Words for photograph 1').fill('w'.repeat(200));

  for (const [onAPage, more] of [
    ['2', 3],
    ['4', 2],
  ] as const) {
    await page.getByLabel('Photographs on a page').selectOption(onAPage);
    for (const format of ['Letter', 'A4'] as const) {
      const pdf = await page.pdf({ format });
      expect(pagesOf(pdf), `${onAPage} a page on ${format}`).toBe(alone[format] + more);
      expect(picturesOf(pdf)).toBeGreaterThanOrEqual(5);
    }
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: 700, height: 1000 });
    const wrong = await page.locator('.photograph-page').evaluateAll((pages) =>
      pages.flatMap((each) => {
        const sheet = each.getBoundingClientRect();
        return [...each.querySelectorAll('img, figcaption')].flatMap((part) => {
          const box = part.getBoundingClientRect();
          const inside = box.bottom <= sheet.bottom + 1 && box.right <= sheet.right + 1;
          return inside && box.width > 20 && box.height > 10 ? [] : [part.outerHTML.slice(0, 80)];
        });
      }),
    );
    expect(wrong).toEqual([]);
    const shape = await page
      .locator('.photograph-page img')
      .evaluateAll((all) => all.map((each) => (each as HTMLImageElement).naturalWidth > 0));
    expect(shape).toEqual([true, true, true, true, true]);
    await expect(page.locator('.photograph-page figcaption').first()).toContainText(
      /1 of 5\. The finished patch.*Taken .*14 Larkspur Lane/,
    );
    await page.emulateMedia({ media: null });
  }
});

test('with photographs, one removed: axe finds no fault, nor in dark colours; targets are large enough; it fits a phone', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto('/plan/photographs/');
  const buffer = await jpegOf(page, { width: 400, height: 300 });
  await page.setInputFiles(
    '#choose-patches',
    ['a', 'b'].map((name) => ({ name, mimeType: 'image/jpeg', buffer })),
  );
  await page.getByRole('button', { name: 'Remove photograph 1' }).click();
  await expect(page.getByRole('button', { name: 'Undo: put the photograph back' })).toBeVisible();
  expect(await faultsIn(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('.photographs :is(button, label.button)')]
      .filter((each) => each.getBoundingClientRect().height < (each.matches('.button') ? 56 : 48))
      .map((each) => each.textContent),
  );
  expect(small).toEqual([]);
});
