import { expect, type Page, test } from '@playwright/test';
import { heldBack } from './held-back.ts';
import { look, lookOn, SLOW } from './searching.ts';

/** How many finds a phone shows before anybody scrolls far. */
const SEEN = 3;

/** What a crew types, where one of the first three finds has to lead, and why there. */
const rows: readonly [typed: string, leads: RegExp, because: string][] = [
  ['condensation', /^\/calculators\/dew-point\/$/, 'it works out at what cold air lets its water go'],
  ['mold', /^\/safety\/dust-and-fibre\/$/, 'it names mould among what old dust holds'],
  ['mildew', /^\/trouble\/stain-on-the-ceiling\/#step-\d+$/, 'its step says to leave a spot of mould alone'],
  ['sheetrock', /^\/terms\/#ceiling-board$/, 'the word for it here, with what crews call it'],
  ['sheetrock sagging', /^\/trouble\/ceiling-bows\/$/, 'the page for when a ceiling comes down'],
  ['caulk', /^\/calculators\/sealant\/$/, 'how much of it a job takes'],
  ['caulk wont stick', /^\/trouble\/seal-will-not-bond\/$/, 'the page for when a seal does not hold'],
  ['fuse', /^\/trouble\/blower-loads-up\/(?:#step-\d+)?$/, 'what to do when the circuit trips'],
  ['certificate', /^\/calculators\/receipt\/$/, 'the calculator that fills it in'],
  ['fiberglass density', /^\/calculators\/fill\/$/, 'density and bags of the fill'],
  ['density', /^\/know\/what-density-does\/$/, 'the page on it'],
  ['nail pops', /^\/trouble\/ceiling-bows\/$/, 'it names a screw that pops among the signs'],
  [
    'fasteners popping',
    /^\/(?:trouble\/ceiling-bows|do\/checking-the-work)\//,
    'ceiling screws are looked at there',
  ],
  ['how many bags', /^\/calculators\/fill\/$/, 'its question is how many bags'],
  ['hole spacing', /^\/calculators\/hole-layout\/$/, 'it lays the holes out'],
  ['ladder', /^\/safety\/falls\/$/, 'what keeps a person from falling off it'],
  ['lead', /^\/safety\/lead-paint\/$/, 'the page on lead, before a person who leads'],
  [
    'carbon monoxide',
    /^\/safety\/combustion-appliances\/(?:#step-\d+)?$/,
    'where the alarm is hung and appliances are tested',
  ],
  ['CO detector', /^\/trouble\/alarm-or-sick-occupant\/$/, 'what to do when it sounds'],
  ['patch leaks', /^\/know\/how-a-patch-fails\/$/, 'the page on it'],
  ['R value', /^\/know\/the-taper-and-r\/$/, 'where R is lost; its heading has the letter alone'],
  ['can light', /^\/do\/flues-lights-and-wiring\/#step-\d+$/, 'the step that reads its label'],
  ['thermal camera', /^\/do\/checking-the-work\/$/, 'the ceiling is scanned with one there'],
  ['power line', /^\/calculators\/line-clearance\/$/, 'how far to keep from one'],
  ['upper chord', /^\/terms\/#chord$/, 'the other name of the top chord'],
  ['metal barrier', /^\/do\/guarding-a-flue\/(?:#step-\d+)?$/, 'the page on the shield about a flue'],
  ['doublewide', /^\/terms\/#double-section$/, 'the word for it here'],
  ['zone of the opening', /^\/terms\/#stretch$/, 'the word for it here'],
  [
    'average depth',
    /^\/know\/the-taper-and-r\/$/,
    'what the mean depth promises, and the roof does not give',
  ],
  [
    'gypsum ½ in',
    /^\/rules\/thermal\.board\.gypsum-thickness\/$/,
    'a fraction of one character is the one written 1/2',
  ],
  ['roof leak', /^\/trouble\/leak-after-rain\/$/, 'the page for it'],
];

const leadsOf = async (page: Page): Promise<string[]> =>
  await page.locator('#results li a').evaluateAll((all) =>
    all.map((each) => {
      const { pathname, hash } = new URL((each as HTMLAnchorElement).href);
      return pathname + hash;
    }),
  );

// One page for all: to open it anew takes longer than to look.
test('what a crew types finds the page it wants among the first', async ({ page }) => {
  await page.goto('/search/');
  for (const [typed, leads, because] of rows)
    await test.step(`"${typed}": ${because}`, async () => {
      await lookOn(page, typed);
      const first = (await leadsOf(page)).slice(0, SEEN);
      expect
        .soft(
          first.filter((each) => leads.test(each)),
          `${typed}: ${first.join('; ')}`,
        )
        .not.toEqual([]);
    });
});

test('a word that goes by another here is told', async ({ page }) => {
  await look(page, 'mold on sheetrock');
  await expect(page.locator('#count')).toContainText(
    '“mold”: looked for “mould”. “sheetrock”: looked for “ceiling board”.',
  );
  // The same word with another hyphen is nothing to tell.
  await lookOn(page, 'R value');
  await expect(page.locator('#count')).toHaveText(/^\d+ found\.$/);
});

test('a word that no page has finds nothing by its first letters, and is named', async ({ page }) => {
  await page.goto('/search/');
  for (const typed of ['steering', 'swamp cooler', 'shotgun']) {
    await lookOn(page, typed);
    await expect(page.locator('#count'), typed).toContainText('No page has the word', SLOW);
    for (const text of await page.locator('#results mark').allTextContents())
      expect(
        typed.split(' ').some((word) => text.toLowerCase().startsWith(word)),
        `${typed}: ${text}`,
      ).toBe(true);
  }
  await expect(page.locator('#results li')).toHaveCount(0);
});

test('words that no page has together find the pages that have some, and say so', async ({ page }) => {
  const found = await look(page, 'hopper ladder purlin');
  await expect(page.locator('#count')).toContainText('No page has all of these words');
  await expect(found.first()).toBeVisible();
});

test('a word that is half typed finds what it begins', async ({ page }) => {
  const found = await look(page, 'purl');
  await expect(page.locator('#count')).toHaveText(/^\d+ found\.$/);
  await expect(found.filter({ hasText: 'term: purlin' }).first()).toBeVisible();
});

test('what is pasted is looked for up to a hundred letters and eight words, and is over at once', async ({
  page,
}) => {
  await page.goto(`/search/?q=${'ladder roof truss purlin hose gable eave ridge patch bag '.repeat(60)}`);
  await expect(page.locator('#count')).toContainText('found', SLOW);
  await expect(page.locator('#count')).toHaveText(/^.{0,300}$/s);
  await expect(page.getByLabel('Steps, terms, rules and calculators')).toHaveAttribute('maxlength', '100');
});

test('where a part of the index can’t be had, that is told, and the next words are looked for', async ({
  page,
}) => {
  await page.goto('/search/');
  await page.route('**/pagefind/fragment/**', (route) => route.abort());
  const box = page.getByLabel('Steps, terms, rules and calculators');
  for (const typed of ['ridge', 'purl']) {
    await box.fill(typed);
    await expect(page.locator('#count')).toHaveText(/^A part of the index can’t be had/, SLOW);
    await expect(page.locator('#results')).not.toHaveAttribute('aria-busy', 'true');
  }
  await page.unroute('**/pagefind/fragment/**');
  const found = await lookOn(page, 'ladder');
  await expect(found.first()).toBeVisible();
});

test('the best find of three kinds stands first, and not in its group again', async ({ page }) => {
  await look(page, 'ladder');
  await expect(page.locator('#results h2').first()).toHaveText('Best matches');
  const leads = await leadsOf(page);
  expect(new Set(leads).size).toBe(leads.length);
  const kinds = await page.locator('#results ol').first().locator('strong').allTextContents();
  expect(new Set(kinds.map((each) => each.split(':')[0])).size).toBe(SEEN);
});

test('the best finds are shown before any other is asked for', async ({ page }) => {
  const letGo = await heldBack(page, '**/pagefind/fragment/**', SEEN);
  await page.goto('/search/?q=ladder');
  const results = page.locator('#results');
  await expect(results.locator('h2')).toHaveText(['Best matches'], SLOW);
  await expect(results.locator('li')).toHaveCount(SEEN);
  await expect(results).toHaveAttribute('aria-busy', 'true');
  letGo();
  await expect(results).not.toHaveAttribute('aria-busy', 'true', SLOW);
  expect(await results.locator('li').count()).toBeGreaterThan(SEEN);
});

test('what crews call a term stands in the list of terms', async ({ page }) => {
  await page.goto('/terms/#mould');
  await expect(page.locator('div:target dt')).toHaveText('mould, often called: mold, moldy, mildew');
});
