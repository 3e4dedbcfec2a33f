import { expect, type Page, test } from '@playwright/test';
import { heldBack } from './held-back.ts';
import { ONCE } from './once.ts';

// A form is on a phone's screen long before its script, where the line is poor.

/** Holds back every script of a page until told otherwise. */
const withoutScripts = (page: Page): Promise<() => void> => heldBack(page, '**/*.js');

for (const [path, id, typed] of [
  ['/calculators/patch-kit/', '#field-holes', '7'],
  ['/plan/', '#field-home-length', '60 ft'],
] as const)
  test(`${path}: what was typed before the script came stays, and is worked`, async ({ page }) => {
    const release = await withoutScripts(page);
    await page.goto(path, { waitUntil: 'commit' });
    const field = page.locator(id);
    const before = await field.inputValue();
    expect(before).not.toBe(typed);
    await field.fill(typed);
    const choice = page.locator('.entries select').first();
    const other = await choice.locator('option').last().getAttribute('value');
    await choice.selectOption({ index: (await choice.locator('option').count()) - 1 });
    release();
    // The form lives when it takes what was typed into its address, or keeps the job under a name of its own.
    await expect(page).toHaveURL(/#./, { timeout: 20_000 });
    await expect(field).toHaveValue(typed);
    await expect(choice).toHaveValue(other ?? '');
    await page.reload();
    await expect(field).toHaveValue(typed);
    await expect(choice).toHaveValue(other ?? '');
  });

test(
  'a working of a job that was unfolded before the script came stays unfolded, and says the same',
  ONCE,
  async ({ page }) => {
    const release = await withoutScripts(page);
    await page.goto('/plan/', { waitUntil: 'commit' });
    const workings = page.locator('#plan details:not(.larger)', { has: page.locator('.working') });
    const [opened, other] = [workings.first(), page.locator('#plan details:not([open]) .working').first()];
    const name = (await opened.locator('summary').first().textContent()) ?? '';
    await opened.locator('summary').first().click();
    const before = (await opened.locator('.working li').first().textContent()) ?? '';
    expect(before).toMatch(/=/);
    await expect(other).toBeAttached();
    release();
    // What nobody unfolded is drawn no longer once the form lives.
    await expect(other).not.toBeAttached({ timeout: 20_000 });
    const still = page.locator('#plan details[open]:not(.larger)', { hasText: name }).first();
    await expect(still.locator('.working li').first()).toHaveText(before);
  },
);

test(
  'before its script came a calculator leads to its example worked out; its workings stand there, folded, once it has come',
  ONCE,
  async ({ page }) => {
    const release = await withoutScripts(page);
    await page.goto('/calculators/fill/', { waitUntil: 'commit' });
    await expect(page.getByRole('link', { name: 'The example worked out' })).toHaveAttribute(
      'href',
      /example\/$/,
    );
    const workings = page.locator('#answer details:not(.larger)');
    await expect(workings).toHaveCount(0);
    release();
    await expect(workings.first()).toBeAttached({ timeout: 20_000 });
    await expect(workings.nth(1).locator('> :not(summary)')).toHaveCount(0);
    await workings.first().locator('summary').click();
    await expect(workings.first().locator('.working li').first()).toHaveText(/=/);
  },
);
