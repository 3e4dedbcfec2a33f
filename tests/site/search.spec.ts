import { expect, test } from '@playwright/test';
import { LEAST_TARGET } from './hand/look.ts';
import { heldBack } from './held-back.ts';
import { ONCE } from './once.ts';
import { look, lookOn, SLOW } from './searching.ts';

/** What is looked for, the result that has to be there with the word for its kind, and where it leads. */
const finds: readonly [what: string, words: string, result: RegExp, leads: RegExp][] = [
  [
    'a likely cause',
    'hose held still density',
    /^cause: Too much fill in one place/,
    /\/trouble\/ceiling-bows\/#cause-\d+$/,
  ],
  [
    'a step',
    'brush chips screws offcuts',
    /^step: Brush off chips, screws and offcuts/,
    /\/do\/cleaning-up\/#step-\d+$/,
  ],
  ['a procedure', 'clean up', /^procedure: Clean up/, /\/do\/cleaning-up\/$/],
  ['a page for when it goes wrong', 'hose stuck', /^trouble: /, /\/trouble\/hose-stuck\/$/],
  ['a page on safety', 'lead paint', /^safety: /, /\/safety\/lead-paint\/$/],
  ['an explanation', 'taper', /^explanation: /, /\/know\/the-taper-and-r\/$/],
  ['a term', 'purlin', /^term: purlin/, /\/terms\/#purlin$/],
  ['a rule', 'diameter of a hole', /^rule: Diameter of a hole/, /\/rules\/access\.roof-holes\.diameter\/$/],
  ['a calculator', 'ceiling load', /^calculator: /, /\/calculators\/ceiling-load\/$/],
  ['a sheet of the job', 'fill log', /^sheet of the job: /, /\/plan\/fill-log\/$/],
];

test('what any search needs is asked for once, by the links of the page', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await expect((await look(page, 'taper')).first()).toBeVisible(SLOW);
  const always = asked.filter((each) => /pagefind\/(?:pagefind|wasm|filter)/.test(each));
  expect(always.map((each) => each.replace(/_?[0-9a-f]{7,}/, ''))).toEqual(
    expect.arrayContaining(['/pagefind/pagefind.js', '/pagefind/pagefind-entry.json']),
  );
  expect(always).toEqual([...new Set(always)]);
});

test(
  'the part of the index that has the word is asked for while its program is on its way, and once',
  ONCE,
  async ({ page }) => {
    const come = await heldBack(page, '**/wasm.en.pagefind');
    const asked: string[] = [];
    page.on('request', (request) => {
      if (request.url().includes('/pagefind/index/')) asked.push(request.url());
    });
    await page.goto('/search/');
    await page.getByRole('searchbox').fill('taper');
    await expect.poll(() => asked.length).toBe(1);
    await expect(page.locator('#results li')).toHaveCount(0);
    come();
    await expect(page.locator('#results li').first()).toBeVisible(SLOW);
    expect(asked).toHaveLength(1);
  },
);

// One page for all: to open it anew takes longer than to look.
test('search finds what is looked for, says what it is, and leads there', async ({ page }) => {
  await page.goto('/search/');
  for (const [what, words, result, leads] of finds)
    await test.step(`${what} by "${words}"`, async () => {
      const found = (await lookOn(page, words)).filter({ has: page.locator('strong', { hasText: result }) });
      await expect(found.first()).toBeVisible(SLOW);
      const links = await found
        .locator('a')
        .evaluateAll((all) => all.map((each) => (each as HTMLAnchorElement).href));
      expect(
        links.filter((each) => leads.test(each)),
        links.join('; '),
      ).not.toEqual([]);
    });
});

test('a step that is found stands at its anchor, and a term at its own', ONCE, async ({ page }) => {
  await (await look(page, 'brush chips screws offcuts'))
    .locator('a', { hasText: 'step: Brush off chips' })
    .first()
    .click();
  await expect(page).toHaveURL(/#step-\d+$/);
  await expect(page.locator('li:target')).toContainText('Brush off chips, screws and offcuts');
  await (await look(page, 'purlin')).locator('a', { hasText: 'term: purlin' }).first().click();
  await expect(page.locator('div:target dt')).toContainText('purlin');
});

test(
  'what is shown of a find keeps the space on both sides of a word that was looked for',
  ONCE,
  async ({ page }) => {
    const found = await look(page, 'screws');
    await expect(found.first()).toBeVisible();
    const beside = await found
      .locator('mark')
      .evaluateAll((all) =>
        all.flatMap((each) => [
          each.previousSibling?.textContent?.at(-1),
          each.nextSibling?.textContent?.at(0),
        ]),
      );
    expect(beside.length).toBeGreaterThan(0);
    expect(beside.filter((letter) => /\p{L}/u.test(letter ?? ''))).toEqual([]);
  },
);

test(
  'of a find the title alone is underlined, and finds are apart by a line, each large enough for a glove',
  ONCE,
  async ({ page }) => {
    const link = (await look(page, 'ladder')).locator('a').first();
    await expect(link).toHaveCSS('text-decoration-line', 'none');
    await expect(link.locator('strong')).toHaveCSS('text-decoration-line', 'underline');
    await expect(link).toHaveCSS('border-bottom-style', 'solid');
    expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(LEAST_TARGET.page);
  },
);

test(
  'what is found stands in a group for each kind; a kind chosen stands alone, and in the address',
  ONCE,
  async ({ page }) => {
    const results = await look(page, 'ceiling');
    const kinds = new Set(
      (await results.locator('strong').allTextContents()).map((text) => text.split(':')[0]),
    );
    for (const kind of ['step', 'rule', 'calculator', 'term', 'trouble']) expect([...kinds]).toContain(kind);
    await page.getByRole('button', { name: /^Steps: all \d+$/ }).click();
    await expect(page).toHaveURL(/q=ceiling&kind=step$/);
    await expect(page.locator('#results h2')).toHaveText(['Steps']);
    await page.reload();
    await expect(page.locator('#results h2')).toHaveText(['Steps'], SLOW);
    await expect(page.getByLabel('Of this kind')).toHaveValue('step');
  },
);

test('sources and checks stand behind all that a crew looks for', ONCE, async ({ page }) => {
  for (const words of ['ladder', 'R-38']) {
    await look(page, words);
    const kinds = await page.locator('#results h2').allTextContents();
    const audit = kinds.filter((kind) => ['Sources', 'Checks'].includes(kind));
    expect(audit.length, words).toBeGreaterThan(0);
    expect(kinds.slice(-audit.length), words).toEqual(audit);
  }
});

test('no card and no list is found, since each says again what its page says', ONCE, async ({ page }) => {
  const links = await (await look(page, 'patch the hole'))
    .locator('a')
    .evaluateAll((all) => all.map((each) => new URL((each as HTMLAnchorElement).href).pathname));
  expect(links.length).toBeGreaterThan(0);
  expect(links.filter((each) => /^\/cards\/|^\/(do|rules|calculators|terms)\/$/.test(each))).toEqual([]);
});

test('where nothing is found, it says so', ONCE, async ({ page }) => {
  await page.goto('/search/?q=zzxxyyqq');
  await expect(page.locator('#count')).toHaveText('Nothing found. No page has the word “zzxxyyqq”.', SLOW);
});

test.describe('without script', { tag: ONCE.tag }, () => {
  test.use({ javaScriptEnabled: false });
  test('no box is shown that finds nothing: the search page leads to steps and values', async ({ page }) => {
    await page.goto('search/');
    await expect(page.getByRole('searchbox')).toHaveCount(0);
    await expect(page.getByRole('main').getByRole('link', { name: 'steps' })).toHaveAttribute(
      'href',
      '../do/',
    );
    await page.goto('');
    await expect(page.getByRole('searchbox')).toHaveCount(0);
  });
});
