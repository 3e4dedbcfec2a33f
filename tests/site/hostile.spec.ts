import { expect, type Page, test } from '@playwright/test';
import { ONCE } from './once.ts';

/** What people and programs type that no field expects. What shows words as typed gets none that look like a fault of ours. */
const hostile = [
  '<script>window.ran = 1</script>',
  '"><img src=x onerror="window.ran = 1">',
  '🙂Łąka家'.repeat(60),
  '\u202e12 ft\u202c',
  '1e309',
  '-0',
  '٣',
  '9'.repeat(400),
] as const;

/** Types at every box of a page, one after another, and tells what went wrong. */
async function typed(page: Page, path: string): Promise<string[]> {
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(`${path}: ${error}`));
  await page.goto(path);
  const ready = page.locator('.entries input:not([type="file"])').first();
  await expect(ready).toBeVisible();
  // A page that runs answers a key; one that does not yet has it taken away again.
  await expect
    .poll(async () => {
      await ready.fill('x');
      return page.url().includes('#');
    })
    .toBe(true);
  const found = await page.evaluate((hostile) => {
    const wrong: string[] = [];
    const look = (what: string) => {
      const shown = document.querySelector('.answers')?.textContent ?? '';
      if (/NaN|Infinity|undefined|\[object/.test(shown)) wrong.push(`${what}: ${shown.slice(0, 200)}`);
      if ('ran' in window || document.querySelector('.answers script, .answers img[src="x"]'))
        wrong.push(`${what}: script`);
    };
    const drawn = () => new Promise((done) => setTimeout(done));
    return (async () => {
      const boxes = [
        ...document.querySelectorAll<HTMLInputElement>('.entries input:not([type="file"])'),
      ].slice(0, 10);
      for (const [place, box] of boxes.entries()) {
        const before = box.value;
        // Each box gets two of them, and all of them have their turn.
        for (const text of [
          hostile[place % hostile.length],
          hostile[(place * 3 + 1) % hostile.length],
          before,
        ]) {
          box.focus();
          box.value = text ?? '';
          box.dispatchEvent(new Event('input', { bubbles: true }));
          await drawn();
          box.blur();
          await drawn();
          look(`${box.id} as ${JSON.stringify(text)}`);
        }
      }
      return wrong;
    })();
  }, hostile);
  return [...wrong, ...found];
}

for (const path of [
  '/plan/',
  '/calculators/hole-layout/',
  '/calculators/roof-heat/',
  '/calculators/moisture/',
])
  test(
    `${path} takes whatever is typed: no error, no number that is none, no script`,
    path === '/plan/' ? {} : ONCE,
    async ({ page }) => {
      expect(await typed(page, path)).toEqual([]);
    },
  );

test('a browser that refuses to write the address loses nothing that is typed, and searches and filters all the same', async ({
  page,
}) => {
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(String(error)));
  await page.addInitScript(() => {
    history.replaceState = () => {
      throw new DOMException('too many in a short time', 'SecurityError');
    };
  });
  for (const [path, name] of [
    ['/calculators/ceiling-load/', 'depth'],
    ['/plan/', 'home.length'],
  ] as const) {
    await page.goto(path);
    const box = page.locator(`[name="${name}"]`);
    await box.fill('61 ft');
    await box.blur();
    await expect.poll(() => page.evaluate(() => JSON.stringify({ ...localStorage }))).toContain('61 ft');
    await page.reload();
    await expect(box).toHaveValue('61 ft');
  }
  await page.goto('/search/');
  await page.getByLabel('Steps, terms, rules and calculators').fill('ladder');
  await expect(page.locator('#count')).toHaveText(/^\d+ found\.$/, { timeout: 15_000 });
  await page.goto('/rules/');
  const all = await page.locator('#shown').textContent();
  await page.getByLabel('Topic').selectOption('fill');
  await expect(page.locator('#shown')).not.toHaveText(all ?? '');
  expect(wrong).toEqual([]);
});
