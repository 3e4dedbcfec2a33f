import { expect, type Page, test } from '@playwright/test';
import { ONCE } from './once.ts';

// A form is on a phone's screen long before its script, where the line is poor.

/** Holds back every script of a page until told otherwise. */
async function withoutScripts(page: Page): Promise<() => void> {
  let release = (): void => {};
  const held = new Promise<void>((go) => {
    release = go;
  });
  await page.route('**/*.js', async (route) => {
    await held;
    await route.continue();
  });
  return () => release();
}

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
  'a working that was unfolded before the script came stays unfolded, and says the same',
  ONCE,
  async ({ page }) => {
    const release = await withoutScripts(page);
    await page.goto('/calculators/fill/', { waitUntil: 'commit' });
    const workings = page.locator('#answer details:not(.larger)');
    const step = (place: number) => workings.nth(place).locator('.working li').first();
    await workings.first().locator('summary').click();
    const before = (await step(0).textContent()) ?? '';
    expect(before).toMatch(/=/);
    await expect(step(1)).toBeAttached();
    release();
    // What nobody unfolded is drawn no longer once the form lives.
    await expect(step(1)).not.toBeAttached({ timeout: 20_000 });
    await expect(step(0)).toBeVisible();
    await expect(step(0)).toHaveText(before);
  },
);
