import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { everyPage, oneOfEach } from './pages.ts';

// In Chromium alone: the rules of axe look at the document, which is the same in every browser, and only Chromium prints to PDF under test.

type Found = Awaited<ReturnType<AxeBuilder['analyze']>>;
/** Contrast of 7 to 1, as the sun asks; axe leaves it off by itself. It asks more than the rule that is on by itself. */
const CONTRAST = 'color-contrast-enhanced';
/** Only what is wrong is told: to tell what is right takes longer than to find out. */
const TOLD = ['violations'] as const;
const axe = (page: Page) =>
  new AxeBuilder({ page }).setLegacyMode().options({
    resultTypes: [...TOLD],
    rules: { [CONTRAST]: { enabled: true }, 'color-contrast': { enabled: false } },
  });
const inColoursAlone = (page: Page) =>
  new AxeBuilder({ page })
    .setLegacyMode()
    .options({ resultTypes: [...TOLD], runOnly: { type: 'rule', values: [CONTRAST] } });
const faultsIn = ({ violations }: Found): string[] =>
  violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join('; ')}`);

for (const path of process.env.EVERY_PAGE ? everyPage : oneOfEach) {
  test(`${path} has nothing that axe finds fault with; its colours neither in the light scheme nor in the dark`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: 'light' });
    await page.goto(path);
    // The first of each kind unfolded: a long job has hundreds that are made alike.
    await page.evaluate(() => {
      const kinds = new Set<string>();
      for (const each of document.querySelectorAll('details')) {
        const kind = `${each.className} in ${each.parentElement?.tagName} ${each.parentElement?.className}`;
        if (!kinds.has(kind)) each.open = true;
        kinds.add(kind);
      }
    });
    expect(faultsIn(await axe(page).analyze())).toEqual([]);
    // The two schemes differ in their colours alone.
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(faultsIn(await inColoursAlone(page).analyze())).toEqual([]);
  });
}

for (const scheme of ['light', 'dark'] as const) {
  test(`jobs unfolded, one deleted, one to be asked about, a code drawn: axe finds no fault, ${scheme}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.goto('/plan/jobs/');
    for (const _ of ['one', 'two', 'three'])
      await page.getByRole('button', { name: 'Begin with the example’s entries' }).click();
    await page.locator('.jobs summary').nth(2).click();
    await page.getByRole('button', { name: 'Delete' }).click();
    await page.locator('.jobs summary').first().click();
    await page.getByRole('button', { name: 'Draw a QR code' }).click();
    await expect(page.locator('.qr')).toBeVisible();
    const { id, ...job } = { ...JSON.parse(readFileSync('public/example-job.json', 'utf8')), id: 'k3m7p2q9' };
    for (const name of ['A', 'B'])
      await page.setInputFiles('#open-jobs', {
        name: 'job.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify({ ...job, id, name })),
      });
    await expect(page.getByRole('button', { name: 'Keep both' })).toBeVisible();
    const { violations } = await axe(page).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join('; ')}`)).toEqual(
      [],
    );
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('#jobs :is(a, button, summary, label.button)')]
        .filter((each) => each.getBoundingClientRect().height < 48)
        .map((each) => each.textContent),
    );
    expect(small).toEqual([]);
  });
}

test('the plan prints: no clipped table, no form, the cautions with their parts', async ({ page }) => {
  await page.goto('/plan/');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.entries')).toBeHidden();
  await expect(page.locator('.caution').first()).toBeVisible();
  const pdf = await page.pdf({ format: 'Letter' });
  const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? [];
  expect(pages.length).toBeGreaterThan(1);
  expect(pages.length).toBeLessThanOrEqual(6);
});
