import { expect, type Page, test } from '@playwright/test';
import { ONCE } from './once.ts';

const list = (page: Page) => page.locator('fieldset.list', { hasText: 'Vents, flues and skylights' });
const rows = (page: Page) => list(page).locator('.row');
const off = (page: Page, place: number) =>
  page.getByRole('button', { name: `Remove vent, flue or skylight ${place}`, exact: true });

test.beforeEach(async ({ page }) => {
  await page.goto('/plan/');
  await expect(page.locator('#plan .answer output')).toContainText('5 holes');
  // The form lives when the workings are folded.
  await page.waitForFunction(() => !document.querySelector('#plan details:not([open]) .working'));
});

test('two taps of a glove take off one row, and it can be put back as it was', async ({ page }) => {
  const kind = rows(page).first().getByRole('combobox').first();
  const before = await kind.inputValue();
  // Within the page: a browser that is told each tap from outside may be slower between two of them than a glove ever is.
  const under = await off(page, 1).evaluate(async (button: HTMLElement) => {
    const fieldset = button.closest('fieldset');
    button.click();
    await new Promise((done) => setTimeout(done, 100));
    const next = fieldset?.querySelector<HTMLElement>('.row > button');
    next?.click();
    return next?.textContent;
  });
  expect(under, 'the button of the next row is there to be tapped').toBe('Remove vent, flue or skylight 1');
  await expect(rows(page)).toHaveCount(1);
  await expect(list(page).getByRole('status')).toHaveText('Removed: vent, flue or skylight 1. Left: 1.');
  await page.getByRole('button', { name: 'Undo: put vent, flue or skylight 1 back' }).click();
  await expect(rows(page)).toHaveCount(2);
  await expect(kind).toHaveValue(before);
  await expect(rows(page).first()).toBeFocused();
  await expect(list(page).getByRole('status')).toHaveText('');
});

test('the fields of a row stand in a group that is called after it', ONCE, async ({ page }) => {
  const second = page.getByRole('group', { name: 'vent, flue or skylight 2', exact: true });
  await expect(second).toHaveCount(1);
  await expect(second.locator('input').first()).toHaveAttribute('name', /^roof\.obstacles\.1\./);
});

test('after a row the focus goes to the next, which stands in its place', ONCE, async ({ page }) => {
  await off(page, 1).click();
  await expect(rows(page).first()).toBeFocused();
});

test('after the last row the focus goes to the button that adds one', ONCE, async ({ page }) => {
  await off(page, 2).click();
  await expect(page.getByRole('button', { name: 'Add a vent, flue or skylight' })).toBeFocused();
});

test('a new row has the focus in its first box, and holds no figure back before it is left', async ({
  page,
}) => {
  await page.getByRole('button', { name: 'Add a vent, flue or skylight' }).click();
  const row = rows(page).nth(2);
  await expect(row.locator('input, select').first()).toBeFocused();
  const plan = page.locator('#plan');
  await expect(plan).toContainText('Figures of before');
  await expect(plan.locator('.answer output')).toContainText('5 holes');
  await page.keyboard.press('Tab');
  await expect(plan.locator('.answer output')).toContainText('5 holes');
  await expect(page.locator('.problems')).toHaveCount(0);
  await page.locator('#field-name').focus();
  await expect(page.locator('.problems')).toContainText('The figures wait for this');
});
