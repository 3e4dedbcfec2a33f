import { expect, test } from '@playwright/test';

// A form is on a phone's screen long before its script, where the line is poor.

for (const [path, id, typed] of [
  ['/calculators/patch-kit/', '#field-holes', '7'],
  ['/plan/', '#field-home-length', '60 ft'],
] as const)
  test(`${path}: what was typed before the script came stays, and is worked`, async ({ page }) => {
    let release = (): void => {};
    const held = new Promise<void>((go) => {
      release = go;
    });
    await page.route('**/*.js', async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(path, { waitUntil: 'commit' });
    const field = page.locator(id);
    const before = await field.inputValue();
    expect(before).not.toBe(typed);
    await field.fill(typed);
    const choice = page.locator('form.entries select').first();
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
