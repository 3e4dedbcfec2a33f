import type { Page } from '@playwright/test';

/**
 * Holds back what a page asks for at these addresses, until told to let it go.
 * @param first so many of them come at once
 */
export async function heldBack(page: Page, addresses: string, first = 0): Promise<() => void> {
  let letGo = (): void => {};
  const gone = new Promise<void>((done) => {
    letGo = done;
  });
  let asked = 0;
  await page.route(addresses, async (route) => {
    asked += 1;
    if (asked > first) await gone;
    await route.continue();
  });
  return () => letGo();
}
