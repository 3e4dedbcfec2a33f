import type { Page } from '@playwright/test';
import axe, { type RunOptions } from 'axe-core';

/**
 * Contrast of 7 to 1, as the sun asks; axe leaves it off by itself. It passes over what has less than 4.5 to 1, which the rule that is on by
 * itself finds: both are needed.
 */
const CONTRAST = ['color-contrast', 'color-contrast-enhanced'];

/** Only what is wrong is told: to tell what is right takes longer than to find out. */
const told: RunOptions = { resultTypes: ['violations'] };
const inAll: RunOptions = {
  ...told,
  rules: Object.fromEntries(CONTRAST.map((rule) => [rule, { enabled: true }])),
};
const inColours: RunOptions = { ...told, runOnly: { type: 'rule', values: CONTRAST } };

const faults = (page: Page, options: RunOptions): Promise<string[]> =>
  page.evaluate(async (options) => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, options);
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join('; ')}`);
  }, options);

/** What axe finds fault with on a page in the light scheme, and in the colours of the dark one: the two differ in nothing else. */
export async function faultsIn(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  await page.emulateMedia({ colorScheme: 'light' });
  const light = await faults(page, inAll);
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await faults(page, inColours);
  return [...light, ...dark.map((each) => `dark: ${each}`)];
}
