import type { Page } from '@playwright/test';
import axe, { type RunOptions, type Spec } from 'axe-core';

/**
 * Contrast of 7 to 1 for words of every size, as the sun asks. One rule looks for it: of axe's own two, one passes over what has between
 * 4.5 and 7 to 1 and the other what has less than 4.5, and to look through a page twice takes half as long again.
 */
const CONTRAST = 'color-contrast';
const asTheSunAsks: Spec = {
  checks: [
    {
      id: CONTRAST,
      // All that axe itself sets for this check, but for the ratios.
      options: {
        ignoreUnicode: true,
        ignoreLength: false,
        ignorePseudo: false,
        boldValue: 700,
        boldTextPt: 14,
        largeTextPt: 18,
        contrastRatio: { normal: { expected: 7 }, large: { expected: 7 } },
        pseudoSizeThreshold: 0.25,
        shadowOutlineEmMax: 0.2,
        textStrokeEmMin: 0.03,
      },
    },
  ],
};

/** Only what is wrong is told: to tell what is right takes longer than to find out. */
const inAll: RunOptions = { resultTypes: ['violations'] };
const inColours: RunOptions = { ...inAll, runOnly: { type: 'rule', values: [CONTRAST] } };

const faults = (page: Page, options: RunOptions): Promise<string[]> =>
  page.evaluate(async (options) => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, options);
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  }, options);

/** What axe finds fault with on a page in the light scheme, and in the colours of the dark one: the two differ in nothing else. */
export async function faultsIn(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  await page.evaluate((spec) => (window as unknown as { axe: typeof axe }).axe.configure(spec), asTheSunAsks);
  await page.emulateMedia({ colorScheme: 'light' });
  const light = await faults(page, inAll);
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await faults(page, inColours);
  return [...light, ...dark.map((each) => `dark: ${each}`)];
}
