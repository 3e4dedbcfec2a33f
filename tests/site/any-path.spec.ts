import { expect, type Page, test } from '@playwright/test';
import { type Served, servePlainly } from './plain-server.ts';

/** Everything a page asks for stands inside the site, is there, and runs; tells what went wrong since. */
function watch(page: Page, at: string): () => readonly string[] {
  const wrong: string[] = [];
  page.on('response', (answer) => {
    if (answer.status() >= 400) wrong.push(`${answer.status()} ${answer.url()}`);
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(at) && !/^(blob|data):/.test(url) && !url.endsWith('/favicon.ico'))
      wrong.push(`outside: ${url}`);
  });
  page.on('pageerror', (error) => wrong.push(error.message));
  return () => wrong;
}

for (const under of ['/', '/a/b/', '/folder with a space/']) {
  test.describe(`the one build, served at "${under}"`, () => {
    let site: Served;
    test.beforeAll(async () => {
      site = await servePlainly('dist', under);
    });
    test.afterAll(() => site.close());

    test('from the front page to a step, to the card of a value, and to the document it is drawn from', async ({
      page,
    }) => {
      const wrong = watch(page, site.at);
      await page.goto(site.at);
      await expect(page.getByRole('link', { name: 'Heel to Ridge' })).toHaveCSS('font-weight', /[6-9]00/);
      await page.getByRole('link', { name: 'Find a step' }).first().click();
      await expect(page).toHaveURL(`${site.at}do/`);
      await page
        .getByRole('link', { name: /^Patch/ })
        .first()
        .click();
      await expect(page).toHaveURL(/\/do\/patching\/$/);
      const number = page.locator('.prose a.rule').first();
      await number.click();
      const card = page.getByRole('dialog');
      await expect(card).toBeVisible();
      await card.getByRole('link', { name: 'The whole page of this value' }).click();
      await expect(page).toHaveURL(new RegExp(`^${site.at}rules/[^/]+/$`));
      await page.getByRole('navigation', { name: 'Site' }).getByRole('link', { name: 'Values' }).click();
      await expect(page).toHaveURL(`${site.at}rules/`);
      expect(wrong()).toEqual([]);
    });

    test('a card that opens on a page at another depth than its own keeps its links', async ({ page }) => {
      const wrong = watch(page, site.at);
      await page.goto(`${site.at}plan/`);
      await page.locator('#job a.rule').locator('visible=true').first().click();
      const links = page.getByRole('dialog').locator('a');
      await expect(links.first()).toBeVisible();
      const hrefs = await links.evaluateAll((all) => all.map((each) => (each as HTMLAnchorElement).href));
      for (const href of hrefs.filter((each) => !/^(https?|mailto):/.test(each) || each.startsWith(site.at)))
        expect((await page.request.get(href)).status(), href).toBe(200);
      expect(hrefs.some((each) => each.startsWith(site.at))).toBe(true);
      expect(wrong()).toEqual([]);
    });

    test('a calculator works anew, and its values lead to their pages', async ({ page }) => {
      const wrong = watch(page, site.at);
      await page.goto(`${site.at}calculators/patch-kit/`);
      const before = await page.locator('.answers').textContent();
      await page.getByLabel('Holes').fill('7');
      await expect(page.locator('.answers')).not.toHaveText(before ?? '');
      const href = await page
        .locator('.answers a.rule')
        .first()
        .evaluate((each) => (each as HTMLAnchorElement).href);
      expect(href.startsWith(`${site.at}rules/`), href).toBe(true);
      expect((await page.request.get(href)).status()).toBe(200);
      expect(wrong()).toEqual([]);
    });

    test('the planner leads from sheet to sheet with the job', async ({ page }) => {
      const wrong = watch(page, site.at);
      await page.goto(`${site.at}plan/`);
      await page.getByLabel('Length of the roof').first().fill('50 ft');
      await expect(page).toHaveURL(/#.*50/);
      await page.getByRole('navigation', { name: 'Sheets of this job' }).getByRole('link').nth(2).click();
      await expect(page).toHaveURL(new RegExp(`^${site.at}plan/[^/]+/#.*50`));
      expect(wrong()).toEqual([]);
    });

    test('search finds, and what is found is there', async ({ page }) => {
      const wrong = watch(page, site.at);
      await page.goto(site.at);
      await page.getByRole('searchbox').fill('purlin');
      await page.keyboard.press('Enter');
      const found = page.locator('#results a', { hasText: 'term: purlin' }).first();
      await found.click({ timeout: 15_000 });
      await expect(page).toHaveURL(`${site.at}terms/#purlin`);
      expect(wrong()).toEqual([]);
    });

    test('a file of data is had from the page of data', async ({ page }) => {
      await page.goto(`${site.at}data/`);
      const href = await page
        .getByRole('link', { name: 'rulebook.json' })
        .evaluate((each) => (each as HTMLAnchorElement).href);
      expect(await (await page.request.get(href)).json()).toHaveProperty('rules');
    });
  });
}
