import { expect, type Page, test } from '@playwright/test';
import { ONCE } from './once.ts';

const card = (page: Page) => page.getByRole('dialog');
const number = (page: Page) => page.locator('.prose a.rule', { hasText: '6 in' }).first();

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('a number leads to the page of its rule', ONCE, async ({ page }) => {
    await page.goto('/do/patching/');
    const href = await number(page).getAttribute('href');
    expect(href).toMatch(/\/rules\/access\.roof-holes\.diameter\/$/);
    await page.goto(href ?? '');
    await expect(page.locator('.rule-card')).toContainText('Diameter of a hole');
  });

  test('so does one in a caption, among common cases, and on the receipt', ONCE, async ({ page }) => {
    for (const [at, place, rule] of [
      ['/plan/', 'caption', 'access.roof-holes.below-peak'],
      ['/calculators/ceiling-load/example/', 'td', 'ceiling.board.limit'],
      ['/plan/receipt/', '.paper li', 'paperwork.receipt.tolerance'],
    ] as const) {
      await page.goto(at);
      const link = page.locator(`${place} a.rule[href$="/rules/${rule}/"]`).first();
      await expect(link, at).toHaveText(/\d/);
    }
  });
});

test('a number opens its card where the reader is, and closing gives the focus back', async ({ page }) => {
  await page.goto('/do/patching/');
  await number(page).click();
  await expect(card(page)).toContainText('Diameter of a hole');
  await expect(card(page)).toContainText('practice');
  await expect(page).toHaveURL(/\/do\/patching\/$/);
  await page.keyboard.press('Escape');
  await expect(card(page)).toBeHidden();
  await expect(number(page)).toBeFocused();
});

test('on a phone the card opens at its head, with the value', ONCE, async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await page.goto('/do/patching/');
  await page.locator('.caution a.rule').first().click();
  const title = card(page).getByRole('heading', { level: 2 });
  await expect(title).toBeFocused();
  await expect(title).toBeInViewport({ ratio: 1 });
  await expect(card(page).locator('output')).toBeInViewport({ ratio: 1 });
  const close = card(page).getByRole('button', { name: 'Close' });
  await expect(close).toBeInViewport({ ratio: 1 });
  await card(page).evaluate((box) => box.scrollTo(0, box.scrollHeight));
  await expect(close).toBeInViewport({ ratio: 1 });
  // It is longer than the screen, or nothing would be tried here.
  expect(await card(page).evaluate((box) => box.scrollHeight > box.clientHeight)).toBe(true);
});

test('the keyboard opens it too, and the whole page is one step away', async ({ page }) => {
  await page.goto('/do/patching/');
  await number(page).focus();
  await page.keyboard.press('Enter');
  await expect(card(page)).toBeVisible();
  await card(page).getByRole('link', { name: 'The whole page of this value' }).click();
  await expect(page).toHaveURL(/\/rules\/access\.roof-holes\.diameter\/$/);
});

test('a number in a drawing opens its card', ONCE, async ({ page }) => {
  await page.goto('/do/patching/');
  await page
    .locator('.drawing .wide a.rule, .drawing .narrow a.rule')
    .locator('visible=true')
    .first()
    .click();
  await expect(card(page)).toBeVisible();
});

test('a number of a result opens its card, and the entries stay', ONCE, async ({ page }) => {
  await page.goto('/calculators/patch-kit/');
  await page.getByLabel('Holes').fill('7');
  await page.locator('.answers a.rule').first().click();
  await expect(card(page)).toBeVisible();
  await card(page).getByRole('button', { name: 'Close' }).click();
  await expect(page.getByLabel('Holes')).toHaveValue('7');
});

test('a number in a remark beside a result opens its card', ONCE, async ({ page }) => {
  await page.goto('/calculators/ceiling-load/');
  await page.getByText('The old insulation is taken at').locator('a.rule').first().click();
  await expect(card(page)).toContainText('0.51');
});

test('where the card can’t be had the link goes to the page', ONCE, async ({ page }) => {
  await page.goto('/do/patching/');
  let first = true;
  await page.route('**/rules/**', (route) => {
    if (first) {
      first = false;
      return route.abort();
    }
    return route.continue();
  });
  await number(page).click();
  await expect(page).toHaveURL(/\/rules\/access\.roof-holes\.diameter\/$/);
});

test(
  'an amount in a table is worked out row by row, down to the entries and the card of a rule',
  ONCE,
  async ({ page }) => {
    await page.goto('/calculators/hose-marks/');
    const unfold = (title: string) => page.locator('summary', { hasText: title }).last().click();
    await unfold('The pushes, the farthest first: row by row');
    await unfold('Push: 2');
    await unfold('Tape at');
    const working = page.locator('details[open] .working').last();
    await expect(working).toContainText(/Mark 2, at \d+:\d\d/);
    await expect(working).toContainText('f: Reach of the stream, 2 ft yours');
    await working.locator('a.rule', { hasText: '2 in' }).click();
    await expect(card(page)).toContainText('Diameter of the hose');
  },
);

test(
  'where there is no dialogue, what can’t be undone is asked in the browser’s own box',
  ONCE,
  async ({ page }) => {
    // As the browsers of 2019 have it: an element without a meaning.
    await page.addInitScript(() => {
      for (const name of ['show', 'showModal', 'close'])
        Reflect.deleteProperty(HTMLDialogElement.prototype, name);
      Reflect.deleteProperty(window, 'HTMLDialogElement');
    });
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    const answers = [false, true];
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.message());
      void (answers.shift() ? dialog.accept() : dialog.dismiss());
    });
    await page.goto('/do/patching/');
    const clear = page.getByRole('button', { name: 'Clear saved copy' });
    await clear.click();
    await expect(clear).toBeVisible();
    await clear.click();
    await expect(page.locator('#copy [role="status"]')).toHaveText(/was cleared/);
    await expect(page.getByRole('button', { name: 'Save a copy' })).toBeVisible();
    expect(asked).toHaveLength(2);
    expect(asked[0]).toContain('Clear the saved copy');
    await expect(page.locator('dialog')).toHaveCount(0);
    expect(errors).toEqual([]);
  },
);
