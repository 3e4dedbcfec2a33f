import { expect, type Page } from '@playwright/test';

export const SLOW = { timeout: 15_000 };

/** Looks for some words as a reader does, and gives the results. */
export async function look(page: Page, words: string) {
  await page.goto('/search/');
  return await lookOn(page, words);
}

/** The same where the page is open. */
export async function lookOn(page: Page, words: string) {
  const box = page.getByLabel('Steps, terms, rules and calculators');
  // What was found before is gone first, or it would be taken for what is found now.
  await box.fill('');
  await expect(page.locator('#count')).toHaveText('');
  await box.fill(words);
  await expect(page.locator('#count')).toContainText('found', SLOW);
  // Each kind is shown as it comes.
  await expect(page.locator('#results')).not.toHaveAttribute('aria-busy', 'true', SLOW);
  return page.locator('#results li');
}
