import { expect, test } from '@playwright/test';

// Pages for a reviewer: what changed, and which documents values are drawn from.

test('on a wide screen no word of a table’s head is broken', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 740 });
  for (const path of ['/changes/2026.3/', '/changes/2026.3/cautions/', '/sources/']) {
    await page.goto(path);
    const broken = await page.locator('thead th').evaluateAll((heads) =>
      heads.flatMap((head) => {
        const node = head.firstChild;
        if (!node) return [];
        return [...(node.textContent ?? '').matchAll(/\S+/g)].flatMap(({ index, 0: word }) => {
          const range = document.createRange();
          range.setStart(node, index);
          range.setEnd(node, index + word.length);
          return range.getClientRects().length > 1 ? [word] : [];
        });
      }),
    );
    expect.soft(broken, path).toEqual([]);
  }
});

test('each change is shown as it was and as it is, and never twice the same', async ({ page }) => {
  let rows = 0;
  for (const version of ['2026.2', '2026.3'])
    for (const path of [`/changes/${version}/`, `/changes/${version}/cautions/`]) {
      await page.goto(path);
      const told = await page
        .locator('.changes tbody tr')
        .evaluateAll((all) =>
          all.map((row) =>
            ['Before', 'Now'].map((of) => row.querySelector(`[data-label=${of}]`)?.textContent),
          ),
        );
      for (const [before, now] of told) {
        rows += 1;
        expect(before?.trim()).toMatch(/./);
        expect(now).toBeDefined();
        expect(now).not.toBe(before);
      }
    }
  expect(rows).toBeGreaterThan(20);
});

test('each version tells its cautions before and now, and what of them changed', async ({ page }) => {
  await page.goto('/changes/');
  // Published as they stand in rules/releases: 14 cautions came with 2026.3, and three were said otherwise.
  const link = page.getByRole('link', { name: '23 cautions of 2026.3, before and now' });
  await expect(page.locator('p', { has: link })).toHaveText(/3 wording, 6 sources, 14 new\s*$/);
  await link.click();
  await expect(page).toHaveURL(/\/changes\/2026\.3\/cautions\/$/);
  const reworded = page.locator('.changes tbody tr', {
    has: page.locator('[data-label=Change]', { hasText: /^wording/ }),
  });
  await expect(reworded).toHaveCount(3);
  await expect(reworded.first().locator('[data-label=Before]')).toContainText(/It says: |What to do: /);
  await page.getByRole('link', { name: 'its values' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Values of 2026.3, after 2026.2');
});

test('values are filtered by the kind of their source and by document, as the address says', async ({
  page,
}) => {
  await page.goto('/rules/');
  const shown = page.locator('#values tbody tr:visible');
  const all = await shown.count();
  const counted = async (kind: string): Promise<number> =>
    Number(
      await page
        .locator('dl.figures div', { hasText: new RegExp(`^${kind}\\d`) })
        .locator('dd')
        .textContent(),
    );
  for (const kind of ['regulation', 'standard', 'handbook', 'practice', 'memory', 'derived']) {
    await page.getByLabel('Kind of source').selectOption(kind);
    await expect(shown).toHaveCount(await counted(kind));
  }
  await page.getByRole('button', { name: 'Show all' }).click();
  await expect(shown).toHaveCount(all);
  await page.getByLabel('Document').selectOption('24 CFR part 3280');
  const lines = await shown.locator('[data-label=Source]').allTextContents();
  expect(lines.length).toBeGreaterThan(0);
  expect(lines.length).toBeLessThan(all);
  for (const each of lines) expect(each).toMatch(/^24 CFR part 3280 \(/);
  await expect(page).toHaveURL(/#document=24\+CFR\+part\+3280$/);
  await page.reload();
  await expect(page.getByLabel('Document')).toHaveValue('24 CFR part 3280');
  await expect(shown).toHaveCount(lines.length);
});

test('where a value is used is told in words that lead there', async ({ page }) => {
  await page.goto('/rules/patch.layers.overlap/');
  const uses = page.locator('h2:text-is("Used by") + ul > li');
  await expect(uses.filter({ hasText: /^page: Patch the hole$/ }).getByRole('link')).toHaveAttribute(
    'href',
    /\/do\/patching\/$/,
  );
  await expect(
    uses.filter({ hasText: /^drawing: The layers of a patch.*“Patch the hole”$/ }).getByRole('link'),
  ).toHaveAttribute('href', /\/do\/patching\/$/);
  await expect(uses.filter({ hasText: /^sheet of the job: Patches$/ }).getByRole('link')).toHaveAttribute(
    'href',
    /\/plan\/patches\/$/,
  );
  expect(await uses.count()).toBe(await uses.getByRole('link').count());
  await page.goto('/rules/safety.noise.allowed/');
  await uses
    .filter({ hasText: /^sheet of the job: Crew$/ })
    .getByRole('link')
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Crew');
  await page.goBack();
  await uses
    .filter({ hasText: /^caution: / })
    .first()
    .getByRole('link')
    .click();
  await expect(page).toHaveURL(/\/cautions\/noise\/#/);
});

test('the history of a value tells how its source was read, before and now', async ({ page }) => {
  await page.goto('/rules/safety.fall.systems/');
  const history = page.locator('section', { has: page.getByRole('heading', { name: 'History' }) });
  const then = history.locator('li', { hasText: '2026.3: source' });
  await expect(then.locator('dd')).toHaveText([
    /^Before: 29 CFR part 1926 .*: read$/,
    /^Now: 29 CFR part 1926 .*: reprint$/,
  ]);
});

test('of a document each thing that is known stands by itself, in words as they are written', async ({
  page,
}) => {
  await page.goto('/sources/ashrae-fundamentals-26/');
  const said = page.locator('dl.fields').first();
  await expect(said.locator('div', { hasText: 'Edition' })).toContainText('2021, SI edition');
  await expect(said.locator('div', { hasText: 'Where to find it' })).toContainText('Sold by the publisher');
});

test('the copy that a document was read in stands on its page and at each value drawn from it', async ({
  page,
}) => {
  const copy = /^Read in\s*A third party.s copy of the annual edition of 2015/;
  await page.goto('/sources/cfr-24-3280/');
  await expect(
    page
      .locator('dl.fields')
      .first()
      .locator('div', { has: page.locator('dt', { hasText: /^Read in$/ }) }),
  ).toHaveText(copy);
  await expect(page.locator('td[data-label="How read"]').first()).toContainText('reprint');
  await page.goto('/rules/moisture.retarder.ceiling/');
  const figures = page.locator('.rule-card dl.figures');
  await expect(figures.locator('div', { has: page.locator('dt', { hasText: /^Read in$/ }) })).toHaveText(
    copy,
  );
  await expect(figures.locator('div', { hasText: 'Status' })).toContainText('reprint');
});

test('a value read in another edition than its document says so, and no other does', async ({ page }) => {
  await page.goto('/rules/ventilation.duct.length/');
  await expect(page.locator('.rule-card dl.figures div', { hasText: 'Edition' }).first()).toContainText(
    '2015 and 2021',
  );
  await page.goto('/sources/irc/');
  const row = page.locator('.sign-off tbody tr', { hasText: 'How long an exhaust duct may be' });
  await expect(row.locator('[data-label="How read"]')).toContainText('edition: 2015 and 2021');
  await expect(page.locator('dl.fields').first()).not.toContainText('2015 and 2021');
});
