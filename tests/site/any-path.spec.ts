import { expect, type Locator, type Page, test } from '@playwright/test';
import { ONCE } from './once.ts';
import { servePlainly } from './plain-server.ts';

/** Everything a page asks for lies inside the site and is there, and no script fails; hands back what went wrong since. */
function watch(page: Page, at: string): () => readonly string[] {
  const wrong: string[] = [];
  page.on('response', (answer) => {
    if (answer.status() >= 400 && !answer.url().endsWith('/favicon.ico'))
      wrong.push(`${answer.status()} ${answer.url()}`);
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(at) && !/^(blob|data):|\/favicon\.ico$/.test(url)) wrong.push(`outside: ${url}`);
  });
  page.on('pageerror', (error) => wrong.push(error.message));
  return () => wrong;
}

const hrefOf = (link: Element): string => (link as HTMLAnchorElement).href;

// One walk for each path and not a test for each step of it: a browser's start costs more than the walk.
for (const under of ['/', '/a/folder with a space/']) {
  test(
    `the one build, served at "${under}", asks for nothing that is not there and leads where it should`,
    // In every browser the walk without a network leads over the same ground, at a path with a space.
    ONCE,
    async ({ page }) => {
      // Long, and nothing in it can be left out where the machine is busy.
      test.slow();
      const site = await servePlainly('dist', under);
      const wrong = watch(page, site.at);
      const there = async (href: string) => {
        expect(href.startsWith(site.at), href).toBe(true);
        expect((await page.request.get(href)).status(), href).toBe(200);
      };
      // A page is used once its scripts have run.
      const follow = async (link: Locator, to: string) => {
        await link.click();
        await page.waitForURL((url) => url.href.split('#')[0] === site.at + to);
      };
      const card = page.getByRole('dialog');
      const doors = page.getByRole('navigation', { name: 'Site' });
      try {
        await test.step('from the front page to a procedure', async () => {
          await page.goto(site.at);
          await expect(page.locator('a.mark')).toHaveCSS('font-weight', /[6-9]00/);
          await follow(page.getByRole('link', { name: 'Find a step' }).first(), 'do/');
          await follow(page.getByRole('link', { name: /^Patch/ }).first(), 'do/patching/');
        });
        await test.step('the card of a value opens in place, and leads to its page', async () => {
          await page.locator('.prose a.rule').first().click();
          await card.getByRole('link', { name: 'The whole page of this value' }).click();
          await expect(page).toHaveURL(new RegExp(`^${site.at}rules/[^/]+/$`));
        });
        await test.step('the planner leads from sheet to sheet with the job', async () => {
          await follow(doors.getByRole('link', { name: 'Plan a roof' }), 'plan/');
          await page.getByLabel('Length of the roof').first().fill('50 ft');
          await expect(page).toHaveURL(/#job=/);
          await page.locator('#job a.rule').locator('visible=true').first().click();
          // The page of the value lies deeper than this one: the card's own links must not be read from here.
          await expect(card).toBeVisible();
          const links = await card
            .locator('a')
            .evaluateAll((all) => all.map((each) => (each as HTMLAnchorElement).href));
          expect(links.length).toBeGreaterThan(1);
          for (const href of links) await there(href);
          await card.getByRole('button', { name: 'Close' }).click();
          await page.locator('nav.sheets a').nth(2).click();
          await expect(page).toHaveURL(new RegExp(`^${site.at}plan/[^/]+/#job=`));
        });
        await test.step('a calculator works anew, and its values lead to their pages', async () => {
          await follow(doors.getByRole('link', { name: 'Calculators' }), 'calculators/');
          await follow(page.locator('main a[href*="patch-kit"]').first(), 'calculators/patch-kit/');
          const before = await page.locator('.answers').textContent();
          await page.getByLabel('Holes').fill('7');
          await expect(page.locator('.answers')).not.toHaveText(before ?? '');
          await there(await page.locator('.answers a.rule').first().evaluate(hrefOf));
        });
        await test.step('search finds, and what is found is there', async () => {
          await follow(page.locator('a.mark'), '');
          await page.getByRole('searchbox').fill('purlin');
          await page.keyboard.press('Enter');
          await page.locator('#results a', { hasText: 'term: purlin' }).first().click({ timeout: 15_000 });
          await expect(page).toHaveURL(`${site.at}terms/#purlin`);
        });
        await test.step('a file of data is had from the page of data', async () => {
          await page.goto(`${site.at}data/`);
          await there(await page.getByRole('link', { name: 'rulebook.json' }).evaluate(hrefOf));
        });
        expect(wrong()).toEqual([]);
        await test.step('what is not there is told on a page that needs nothing else', async () => {
          await page.goto(`${site.at}do/no/such/page/`);
          await expect(page.getByRole('heading')).toHaveText('No such page');
          expect(wrong()).toEqual([`404 ${site.at}do/no/such/page/`]);
        });
      } finally {
        await site.close();
      }
    },
  );
}
