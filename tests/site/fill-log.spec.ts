import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { ONCE } from './once.ts';

const hole = (page: Page, number: number) =>
  page.getByRole('region', { name: `Hole ${number}`, exact: true });

/** The bar stands at the foot of a phone. */
async function barAtHand(page: Page): Promise<Locator> {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto('/plan/fill-log/');
  return page.getByRole('region', { name: /^At hand/ });
}

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('the example’s log stands worked', ONCE, async ({ page }) => {
    await page.goto('/plan/fill-log/');
    await expect(hole(page, 1)).toContainText('full, as planned');
    await expect(hole(page, 2)).toContainText('filling');
  });
});

test('quarters are counted with a tap, kept over a closed tab, and told light when full too soon', async ({
  page,
  context,
}) => {
  await page.goto('/plan/fill-log/');
  await hole(page, 3).getByRole('button', { name: '+ 1/4 bag' }).click();
  await hole(page, 3).getByRole('button', { name: '+ 1/2 bag' }).click();
  await expect(hole(page, 3).locator('output')).toContainText('3/4 bag of');
  await expect(hole(page, 3)).toContainText('filling');
  await page.close();

  const again = await context.newPage();
  await again.goto('/plan/fill-log/');
  await expect(hole(again, 3).locator('output')).toContainText('3/4 bag of');
  await hole(again, 3).getByRole('button', { name: '− 1/4 bag' }).click();
  await expect(hole(again, 3).locator('output')).toContainText('1/2 bag of');
  await hole(again, 3).getByRole('button', { name: 'It is full' }).click();
  await expect(hole(again, 3)).toContainText('full, light');
  await expect(hole(again, 3).locator('.caution.warn')).toContainText('fewer bags than planned');
  await hole(again, 3).getByRole('button', { name: 'Full: open it again' }).click();
  await expect(hole(again, 3)).toContainText('filling');
});

test(
  'the bar at hand leaves a hole that was closed as full, and counts on at the next',
  ONCE,
  async ({ page }) => {
    const bar = await barAtHand(page);
    await hole(page, 3).getByRole('button', { name: '+ 1 bag' }).click();
    await expect(bar).toHaveAccessibleName('At hand: hole 3');
    await hole(page, 3).getByRole('button', { name: 'It is full' }).click();
    await expect(bar).toHaveAccessibleName('At hand: hole 2');
    await bar.getByRole('button', { name: '+ 1 bag' }).click();
    await expect(hole(page, 3).locator('output')).toContainText('1 bag of');
    await expect(hole(page, 2).locator('output')).toContainText('4 1/2 bags of');
  },
);

test(
  'the bar at hand tells a stop, takes back a slip, and finds its hole again after a reload',
  ONCE,
  async ({ page }) => {
    const bar = await barAtHand(page);
    await hole(page, 4).getByRole('button', { name: '+ 1 bag' }).click();
    await expect(bar).toHaveAccessibleName('At hand: hole 4');
    await expect(bar.getByRole('alert')).toBeEmpty();
    for (let bag = 0; bag < 7; bag += 1) await bar.getByRole('button', { name: '+ 1 bag' }).click();
    // The plan has 7 bags for hole 4, of which hole 5 blows 0.7 behind its flue; 6.9 with the usual tenth more: 8 are over it.
    await expect(bar).toContainText('8 bags of');
    await expect(bar).toContainText('over the plan and not full');
    await expect(bar.getByRole('alert')).toContainText('Stop.');
    await page.reload();
    await expect(bar).toHaveAccessibleName('At hand: hole 4');
    await bar.getByRole('button', { name: '+ 1 bag' }).click();
    await expect(bar).toContainText('9 bags of');
    await bar.getByRole('button', { name: 'Undo' }).click();
    await expect(bar).toContainText('8 bags of');
    await expect(bar.getByRole('button', { name: 'Undo' })).toHaveAttribute('aria-disabled', 'true');
  },
);

test(
  'the bar at hand takes half the window at the most, in type twice as large and with a stop, and what has the focus never lies under it',
  ONCE,
  async ({ page }) => {
    const bar = await barAtHand(page);
    const typed = (size: string) =>
      // As where letters alone are made larger, and what a style sheet knows of the screen stays.
      page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
      }, size);
    await typed('36px');
    await hole(page, 4).getByRole('combobox').focus();
    await expect(bar.getByRole('button', { name: '+ 1 bag' })).toBeInViewport({ ratio: 1 });
    await typed('18px');
    // Eight bags are over the plan, which is a stop.
    for (let bag = 0; bag < 8; bag += 1) await hole(page, 4).getByRole('button', { name: '+ 1 bag' }).click();
    await expect(bar.getByRole('alert')).toContainText('Stop.');
    for (const size of ['18px', '36px']) {
      await typed(size);
      const under = await bar.evaluate((bar) => {
        const wrong: string[] = [];
        const { height } = bar.getBoundingClientRect();
        if (height > innerHeight / 2 + 1) wrong.push(`the bar is ${height} px high`);
        for (const each of document.querySelectorAll<HTMLElement>('.opening button, .opening select')) {
          scrollTo(0, 0);
          each.focus();
          const { top } = bar.getBoundingClientRect();
          if (each.getBoundingClientRect().bottom > top) wrong.push(`${each.textContent} lies under it`);
        }
        return wrong;
      });
      expect(under, size).toEqual([]);
    }
  },
);

test(
  'a tap says its opening and what that has now, once; each button tells its opening',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/fill-log/');
    await expect(hole(page, 3).getByRole('button', { name: 'It is full, Hole 3' })).toBeVisible();
    await expect(hole(page, 1).getByRole('button', { name: 'Full: open it again, Hole 1' })).toBeVisible();
    await expect(page.getByLabel('To be filled, or why not: Hole 3')).toBeVisible();
    await page.evaluate(() => {
      const heard: string[] = [];
      Object.assign(window, { heard });
      new MutationObserver((changes) => {
        const said = changes.map(({ target }) =>
          (target instanceof Element ? target : target.parentElement)?.closest<HTMLElement>(
            '[aria-live], [role="status"], [role="alert"], output',
          ),
        );
        for (const each of new Set(said))
          if (each && each.getAttribute('aria-live') !== 'off' && each.textContent?.startsWith('Hole'))
            heard.push(each.textContent);
          else if (
            each &&
            each.getAttribute('aria-live') !== 'off' &&
            /bags? in/.test(each.textContent ?? '')
          )
            heard.push(`also ${each.textContent}`);
      }).observe(document.body, { subtree: true, childList: true, characterData: true });
    });
    await hole(page, 3).getByRole('button', { name: '+ 1 bag' }).click();
    const heard = () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
    await expect.poll(heard).toHaveLength(1);
    expect((await heard())[0]?.replace(/\s/g, ' ')).toMatch(/^Hole 3: 1 bag of 7 bags filling$/);
  },
);

test('what was counted in one job is not taken back in another', ONCE, async ({ page }) => {
  const bar = await barAtHand(page);
  const undo = bar.getByRole('button', { name: 'Undo' });
  await bar.getByRole('button', { name: '+ 1 bag' }).click();
  await expect(undo).not.toHaveAttribute('aria-disabled', 'true');
  const example = JSON.parse(readFileSync('public/example-job.json', 'utf8'));
  await page.setInputFiles('input[type=file]', {
    name: 'another.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...example, name: '9 Sorrel Court' })),
  });
  await expect(page.locator('.job-line')).toContainText('Open: 9 Sorrel Court.');
  await expect(undo).toHaveAttribute('aria-disabled', 'true');
  await undo.click({ force: true });
  await expect(page.locator('.answer output')).toContainText('0 bags in');
});

test('a count that comes down to nothing keeps the focus', ONCE, async ({ page }) => {
  await page.goto('/plan/fill-log/');
  await hole(page, 3).getByRole('button', { name: '+ 1/4 bag' }).click();
  const less = hole(page, 3).getByRole('button', { name: '− 1/4 bag' });
  await less.click();
  await expect(hole(page, 3).locator('output')).toContainText('0 bags of');
  await expect(less).toBeFocused();
  await less.press('Enter');
  await expect(hole(page, 3).locator('output')).toContainText('0 bags of');
});

test(
  'on paper an opening has a box for each bag that is to go, two more, and one for when it is full',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/fill-log/');
    const tally = (number: number) => hole(page, number).locator('.tally');
    await expect(tally(3)).toBeHidden();
    // As many as are begun to the end of what the plan asks for, whatever that is.
    const asked = hole(page, 3)
      .locator('.figures > div', { hasText: 'the plan still asks for' })
      .locator('dd');
    const bags = Number.parseFloat((await asked.textContent()) ?? '');
    expect(bags).toBeGreaterThan(1);
    await page.emulateMedia({ media: 'print' });
    await expect(tally(3)).toBeVisible();
    await expect(tally(3).locator('i')).toHaveCount(Math.ceil(bags) + 2 + 1);
    await expect(tally(3).locator('i.beyond')).toHaveCount(2);
    // The first one is full.
    await expect(tally(1)).toHaveCount(0);
    await expect(hole(page, 3).getByRole('button', { name: '+ 1 bag' })).toBeHidden();
  },
);

test('more bags than planned stop the hole before any density', ONCE, async ({ page }) => {
  await page.goto('/plan/fill-log/');
  // 7 are over the 6.9 that the plan and its usual tenth come to, and no more yet than the ceiling carries.
  for (let bag = 0; bag < 7; bag += 1) await hole(page, 4).getByRole('button', { name: '+ 1 bag' }).click();
  await expect(hole(page, 4)).toContainText('over the plan and not full');
  await expect(hole(page, 4).locator('.caution.stop')).toContainText('Stop blowing');
});

test(
  'filled from the gable end the log counts lanes, and what went in through a hole is no lane’s',
  ONCE,
  async ({ page }) => {
    const sheet = (name: string) =>
      page.getByRole('navigation', { name: 'Sheets of this job' }).getByRole('link', { name }).click();
    await page.goto('/plan/ways-in/');
    await page.getByLabel('The way taken').selectOption('gable end');
    await sheet('Fill log');
    const lane = page.getByRole('region', { name: 'Lane 1', exact: true });
    await expect(lane.locator('output')).toContainText('0 bags of');
    await expect(page.getByRole('region', { name: /^Hole \d/ })).toHaveCount(0);
    await expect(page.locator('#plan')).toContainText(
      'Logged, but no longer in the plan: hole 1 of the roof holes',
    );
    await lane.getByRole('button', { name: '+ 1 bag' }).click();
    await expect(lane.locator('output')).toContainText('1 bag of');
    await sheet('Patches');
    await expect(page.locator('#plan')).toContainText('no hole is cut, so there is nothing to patch');
    await sheet('Machine');
    await expect(page.getByRole('table', { name: 'Each opening' })).toContainText('Lane 2');
  },
);

test(
  'the job goes along from sheet to sheet, and a slip on another sheet is led to',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/');
    await page.getByLabel('Length of the roof').first().fill('50 ft');
    await page
      .getByRole('navigation', { name: 'Sheets of this job' })
      .getByRole('link', { name: 'Fill log' })
      .click();
    await expect(page).toHaveURL(/fill-log\/#job=[a-z0-9]{16}$/);
    await expect(page.getByRole('region', { name: /^Hole \d/ })).toHaveCount(4);
    await page.goto('/plan/fill-log/#name=x');
    await expect(page.locator('.problems')).toContainText('on the sheet Plan');
  },
);

test('small bays are counted together, on a page that a thumb gets through', ONCE, async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto('/plan/ways-in/');
  await page.locator('#field-ways-chosen').selectOption('lifted roof edge');
  await page.locator('#field-ways-edges').selectOption('both edges');
  await page
    .getByRole('navigation', { name: 'Sheets of this job' })
    .getByRole('link', { name: 'Fill log' })
    .click();
  const first = page.getByRole('region', { name: /^Bays 1 to \d, back side$/ });
  await first.getByRole('button', { name: '+ 1 bag' }).first().click();
  await expect(first.locator('output').first()).toContainText('1 bag of');
  await expect(page.getByRole('region', { name: /^At hand/ })).toContainText('Bays 1 to');
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(14000);
  await first.getByText('One by one').click();
  await expect(page.getByRole('region', { name: 'Bay 1, back side', exact: true })).toBeVisible();
});

test(
  'a count of bays together leaves those alone that were counted and closed one by one',
  ONCE,
  async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto('/plan/ways-in/');
    await page.locator('#field-ways-chosen').selectOption('lifted roof edge');
    await page.locator('#field-ways-edges').selectOption('both edges');
    await page
      .getByRole('navigation', { name: 'Sheets of this job' })
      .getByRole('link', { name: 'Fill log' })
      .click();
    const first = page.getByRole('region', { name: /^Bays 1 to \d, back side$/ });
    await first.getByText('One by one').click();
    const bay = (number: number) =>
      page.getByRole('region', { name: `Bay ${number}, back side`, exact: true });
    for (const number of [1, 2]) {
      await bay(number).getByRole('button', { name: '+ 1 bag' }).click();
      await bay(number).getByRole('button', { name: 'It is full' }).click();
    }
    const bar = page.getByRole('region', { name: /^At hand: bays 1 to/ });
    await bar.getByRole('button', { name: '+ 1/4 bag' }).click();
    const untouched = async () => {
      for (const number of [1, 2]) {
        await expect(bay(number).locator('output').first()).toContainText('1 bag of');
        await expect(bay(number).getByRole('button', { name: 'Full: open it again' })).toBeVisible();
      }
    };
    await untouched();
    await expect(bay(3).locator('output').first()).toContainText('1/4 bag of');
    // The first counter of the stretch is its own.
    const less = first.getByRole('button', { name: '− 1/4 bag' }).first();
    await less.click();
    await expect(bay(3).locator('output').first()).toContainText('0 bags of');
    await expect(less).toBeDisabled();
    await first.getByRole('button', { name: 'It is full' }).first().click();
    await first.getByRole('button', { name: 'Full: open it again' }).first().click();
    await expect(bay(1).locator('output').first()).toContainText('1 bag of');
  },
);

test('an opening that nothing goes into says why, and asks for no more', ONCE, async ({ page }) => {
  await page.goto('/plan/fill-log/');
  const toGo = page.locator('#plan .figures').first();
  await hole(page, 5).getByLabel('To be filled, or why not').selectOption('filled from another opening');
  await expect(hole(page, 5)).toContainText('not filled');
  await expect(toGo).toContainText('Bags short of the plan');
  // On paper it stands as words, and nothing where hose or tube still goes in.
  await page.emulateMedia({ media: 'print' });
  const box = hole(page, 5).getByLabel('To be filled, or why not');
  expect(
    await box.evaluate((each) => {
      const { appearance, borderTopWidth } = getComputedStyle(each);
      return { appearance, borderTopWidth };
    }),
  ).toEqual({ appearance: 'none', borderTopWidth: '0px' });
  await expect(hole(page, 4).getByLabel('To be filled, or why not')).toBeHidden();
});
