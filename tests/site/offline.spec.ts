import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { filesIn } from '../../src/built/files.ts';
import { change, changeRulebook, Versions } from './copies.ts';
import { ONCE } from './once.ts';
import { servePlainly } from './plain-server.ts';

test.use({ serviceWorkers: 'allow' });
// A copy is fetched whole before anything is tried.
test.setTimeout(90_000);

const state = (page: Page): Locator => page.locator('.copy-state');
const news = (page: Page): Locator => page.locator('#copy-notice');
const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();
const saved = (page: Page): Promise<void> =>
  expect(state(page)).toHaveText(/The whole site is saved here/, { timeout: 60_000 });
const card = (page: Page): Locator => page.getByRole('dialog');

/** The caches of the page's host, without the notes. */
const versionsOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => (await caches.keys()).filter((name) => / version /.test(name)));

// At a path, where more can go wrong; the last test ends without a server at the root. Fetching all files twice would take too long.
test('after one visit to the site, at a path of its host, all of it works with the server stopped', async ({
  page,
}) => {
  const site = await servePlainly('dist', '/folder with a space/');
  const wrong: string[] = [];
  page.on('pageerror', ({ message }) => {
    // Firefox tells of what a page had asked for and no longer wanted when it was left, without its address.
    if (!/^Failed to load ‘’/.test(message)) wrong.push(message);
  });
  try {
    // The page of the first visit itself is kept, and is not opened anew.
    await page.goto(`${site.at}do/patching/`);
    await saved(page);
  } finally {
    await site.close();
  }
  await test.step('style sheets were fetched before all else: pages that were not opened yet wait for them', () => {
    const fetched = site.asked.slice(site.asked.indexOf('worker.js') + 1);
    const last = fetched.findLastIndex((path) => path.endsWith('.css'));
    // Beside them, what a page asks for by itself at the same time.
    expect(fetched.slice(0, last).filter((path) => !path.endsWith('.css')).length).toBeLessThan(8);
  });
  await test.step('the rest came in parcels: on a poor network each request costs half a second', () => {
    const fetched = site.asked.slice(site.asked.indexOf('worker.js') + 1);
    const parcels = fetched.filter((path) => path.startsWith('copy/'));
    expect(parcels.toSorted()).toEqual(
      filesIn('dist/copy')
        .map((file) => `copy/${file}`)
        .toSorted(),
    );
    expect(parcels.length).toBeLessThan(40);
    // Style sheets come first, and what the page asks for by itself comes at the same time.
    const others = fetched.filter((path) => !path.startsWith('copy/') && !path.endsWith('.css'));
    expect(others.length).toBeLessThan(8);
  });
  await test.step('the card of a value opens on the page that was open all the time', async () => {
    await page.locator('.prose a.rule', { hasText: '6 in' }).first().click();
    await expect(card(page)).toContainText('Diameter of a hole');
    await card(page).getByRole('link', { name: 'The whole page of this value' }).click();
    await expect(page.locator('.rule-card')).toContainText('Diameter of a hole');
  });
  await test.step('the front page, a procedure with its drawings, a card to print', async () => {
    await page.goto(site.at);
    await expect(page.locator('a.mark')).toHaveCSS('font-weight', /[6-9]00/);
    await page.goto(`${site.at}do/filling-through-roof-holes/?from=a-poster`);
    await expect(page.locator('.drawing svg').locator('visible=true').first()).toBeVisible();
    await page.goto(`${site.at}cards/patching/`);
    await expect(page.locator('.card')).toHaveAttribute('data-size', /\d/);
    await expect(page.locator('.card .last-checked')).toHaveText(/^checked \d{4}-\d\d-\d\d$/);
  });
  await test.step('all cards come to one page', async () => {
    await page.goto(`${site.at}cards/all/`);
    await page.getByRole('button', { name: /^Bring all/ }).click();
    await expect(page.locator('#brought')).toHaveText(/^All \d+ cards are here/);
  });
  await test.step('a calculator works anew', async () => {
    await page.goto(`${site.at}calculators/patch-kit/`);
    const before = await page.locator('.answers').textContent();
    await page.getByLabel('Holes').fill('7');
    await expect(page.locator('.answers')).not.toHaveText(before ?? '');
  });
  await test.step('the planner plans, and draws', async () => {
    await page.goto(`${site.at}plan`);
    await page.getByLabel('Length of the roof').first().fill('50 ft');
    await expect(page).toHaveURL(/\/plan\/#job=/);
    await expect(page.locator('#job .drawing svg').locator('visible=true').first()).toBeVisible();
  });
  await test.step('search finds', async () => {
    await page.goto(`${site.at}search/?q=purlin`);
    await page.locator('#results a', { hasText: 'term: purlin' }).first().click({ timeout: 15_000 });
    await expect(page).toHaveURL(`${site.at}terms/#purlin`);
  });
  await test.step('a file of data is had', async () => {
    const version = await page.evaluate(
      async (at) => (await (await fetch(`${at}data/rulebook.json`)).json()).version,
      site.at,
    );
    expect(version).toMatch(/^\d{4}\.\d+/);
  });
  await test.step('asking the host says that it is not there; what is not there is told', async () => {
    await press(page, 'Check now');
    await expect(state(page)).toHaveText(/could not be reached/);
    await page.goto(`${site.at}do/no/such/page/`).catch(() => undefined);
    await expect(page.getByRole('heading')).toHaveText('No such page');
  });
  expect(wrong).toEqual([]);
});

/** A rulebook in which two safety values and one other are another number, and the page of the other. */
function newer(folder: string): void {
  changeRulebook(folder, '2099.2', {
    'patch.layers.overlap': 3,
    'safety.roof.fall-height': 5,
    'access.roof-holes.diameter': 7,
  });
  change(folder, /^rules\/access\.roof-holes\.diameter\//, '6 in', '7 in');
}

/** Opens the card of the diameter on the page, and gives its value. */
async function diameterOn(page: Page): Promise<string> {
  return await page.evaluate(async () => {
    const root = new URL(document.documentElement.dataset.root ?? '', location.href);
    const html = await (await fetch(new URL('rules/access.roof-holes.diameter/', root))).text();
    const read = new DOMParser().parseFromString(html, 'text/html');
    return /\d in/.exec(read.querySelector('.rule-card')?.textContent ?? '')?.[0] ?? '';
  });
}

test('a newer copy waits, says what it changed, and takes over when asked; no page ever gets files of both', async ({
  browserName,
  context,
  page,
}) => {
  const versions = new Versions();
  const site = await servePlainly(versions.make('first'), '/a/b/');
  try {
    await page.goto(`${site.at}plan/`);
    await saved(page);
    await page.getByLabel('Length of the roof').first().fill('50 ft');
    await expect(page).toHaveURL(/#job=/);
    await page.evaluate(() => Object.assign(window, { stayed: true }));
    const other = await context.newPage();
    await other.goto(`${site.at}do/patching/`);

    await test.step('one that can’t be fetched whole changes nothing', async () => {
      site.change(
        versions.make('broken', newer, (folder) => {
          rmSync(join(folder, 'copy'), { recursive: true });
          rmSync(join(folder, 'terms/index.html'));
        }),
      );
      await press(page, 'Check now');
      await expect(state(page)).toHaveText(/could not be fetched whole/, { timeout: 20_000 });
      await expect(news(page)).toBeEmpty();
      await other.reload();
      await expect(other.locator('footer')).toContainText('Rulebook 2026');
      expect(await diameterOn(other)).toBe('6 in');
    });

    await test.step('one that is whole is offered; until then all pages are of the first', async () => {
      // What is no parcel costs nothing but time: its files come one by one.
      site.change(
        versions.make('second', newer, (folder) => writeFileSync(join(folder, 'copy/1.json'), '[]')),
      );
      await press(page, 'Check now');
      await expect(news(page)).toContainText(
        'A new copy is ready: 2 safety values changed, and 1 other value.',
        { timeout: 20_000 },
      );
      await expect(news(page).locator('li')).toHaveCount(2);
      await expect(news(page).locator('li').first()).toContainText('3 in, before 2 in');
      await other.goto(`${site.at}cards/patching/`);
      await expect(other.locator('.card .from')).toContainText('rulebook 2026');
      await expect(news(other)).toContainText('A new copy is ready');
      expect([await diameterOn(page), await diameterOn(other)]).toEqual(['6 in', '6 in']);
      expect(await page.evaluate(() => 'stayed' in window)).toBe(true);
      await expect(page.getByLabel('Length of the roof').first()).toHaveValue('50 ft');
    });

    await test.step('it takes over when asked, and what was typed is there', async () => {
      await press(page, 'Change over');
      await expect(page.locator('footer')).toContainText('Rulebook 2099.2');
      await expect(page.getByLabel('Length of the roof').first()).toHaveValue('50 ft');
      expect(await page.evaluate(() => 'stayed' in window)).toBe(false);
      expect(await diameterOn(page)).toBe('7 in');
      await expect(news(page)).toContainText('newer than the one you used before: 2 safety values changed');
      await press(page, 'Got it');
      await expect(news(page)).toBeEmpty();
      await page.reload();
      await saved(page);
      await expect(news(page)).toBeEmpty();
    });

    await test.step('the other page is all of the first until it is opened anew', async () => {
      await expect(other.locator('.card .from')).toContainText('rulebook 2026');
      await expect(news(other)).toContainText('Another page changed over');
      expect(await diameterOn(other)).toBe('6 in');
      expect(await versionsOn(page)).toHaveLength(2);
      await press(other, 'Open this page anew');
      await expect(other.locator('.card .from')).toContainText('rulebook 2099.2');
      expect(await diameterOn(other)).toBe('7 in');
    });

    // Firefox goes on naming a closed tab among its pages, as one that may be brought back, and the first is kept for it.
    if (browserName === 'chromium')
      await test.step('the first goes when no page of it is left', async () => {
        const third = await context.newPage();
        await page.close();
        await other.close();
        await expect
          .poll(async () => {
            await third.goto(`${site.at}plan/jobs/`);
            await saved(third);
            return await versionsOn(third);
          })
          .toHaveLength(1);
      });
  } finally {
    await site.close();
    versions.remove();
  }
});

test(
  'a recalled copy stops its answers, offline too, until a newer one takes over; and a copy can be cleared, jobs kept',
  ONCE,
  async ({ page }) => {
    const versions = new Versions();
    const first = versions.make('first');
    const site = await servePlainly(first, '/');
    const recall = (folder: string, version: string): void =>
      writeFileSync(
        join(folder, 'data/recall.json'),
        JSON.stringify({
          format: 'heel-to-ridge recall',
          version: '2099.2',
          recalled: [{ version, reason: 'The load that a board carries is given too high.' }],
        }),
      );
    try {
      const { version } = JSON.parse(readFileSync(join(first, 'data/rulebook.json'), 'utf8'));
      await page.goto(`${site.at}plan/`);
      await saved(page);
      await page.getByLabel('Length of the roof').first().fill('50 ft');
      await expect(page.locator('.answers')).toBeVisible();
      const stop = page.getByRole('alert').filter({ hasText: 'Stop.' });

      await test.step('the host says so, and the stop stands before everything, in the place of the answers', async () => {
        recall(first, '2000.1');
        await press(page, 'Check now');
        await expect(state(page)).toHaveText(/Asked just now/);
        await expect(stop).toHaveCount(0);
        recall(first, version);
        await press(page, 'Check now');
        await expect(stop).toContainText(`Rulebook ${version} is recalled: The load that a board carries`);
        await expect(page.locator('.answers')).toBeHidden();
        await expect(page.getByLabel('Length of the roof').first()).toHaveValue('50 ft');
      });

      await test.step('on paper too', async () => {
        await page.emulateMedia({ media: 'print' });
        for (const path of ['plan/receipt/', 'plan/patch-template/', 'cards/patching/']) {
          await page.goto(site.at + path);
          await expect(stop).toBeVisible();
          for (const answers of await page.locator('.answers, .full-size').all())
            await expect(answers).toBeHidden();
        }
        await page.emulateMedia({ media: null });
      });

      await test.step('a newer copy takes it away', async () => {
        site.change(
          versions.make('second', (folder) => {
            newer(folder);
            recall(folder, version);
          }),
        );
        await page.goto(`${site.at}calculators/patch-kit/`);
        await expect(page.locator('.answers')).toBeHidden();
        await press(page, 'Check now');
        await press(page, 'Change over');
        await expect(page.locator('footer')).toContainText('Rulebook 2099.2');
        await expect(page.locator('.answers')).toBeVisible();
        await expect(stop).toHaveCount(0);
      });

      await test.step('the copy is cleared when asked twice; jobs stay', async () => {
        await saved(page);
        await press(page, 'Clear saved copy');
        await press(page, 'Leave it');
        expect(await versionsOn(page)).not.toEqual([]);
        await press(page, 'Clear saved copy');
        await press(page, 'Clear it');
        await expect(state(page)).toHaveText(/was cleared/);
        await expect(page.getByRole('button', { name: 'Save a copy' })).toBeFocused();
        expect(await page.evaluate(() => caches.keys())).toEqual([]);
        await page.goto(`${site.at}plan/jobs/`);
        await expect(page.locator('.jobs .job')).toHaveCount(1);
        await expect(state(page)).toHaveText(/was cleared/);
        expect(await page.evaluate(() => caches.keys())).toEqual([]);
        await press(page, 'Save a copy');
        await saved(page);
      });

      await test.step('a recall is remembered without a network', async () => {
        recall(join(first, '../second'), '2099.2');
        await press(page, 'Check now');
        await expect(stop).toBeVisible();
        await site.close();
        await page.goto(`${site.at}plan/`);
        await expect(stop).toBeVisible();
        await expect(page.locator('.answers')).toBeHidden();
        await page.goto(site.at);
        await page.getByRole('link', { name: 'Find a step' }).first().click();
        await page
          .getByRole('link', { name: /^Patch/ })
          .first()
          .click();
        await expect(page).toHaveURL(`${site.at}do/patching/`);
      });
    } finally {
      await site.close();
      versions.remove();
    }
  },
);
