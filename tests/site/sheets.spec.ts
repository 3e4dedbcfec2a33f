import { expect, type Page, test } from '@playwright/test';
import { ONCE } from './once.ts';

const sheet = (page: Page, title: string) =>
  page
    .getByRole('navigation', { name: 'Sheets of this job' })
    .getByRole('link', { name: title, exact: true });
const answers = (page: Page) => page.locator('#plan');

/** On the sheet of the survey, says that the roof leaks: an open stop. */
async function openStop(page: Page): Promise<void> {
  await page.goto('/plan/before/');
  await page.getByLabel('Leaks').selectOption('leaks found');
}

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  /** What each sheet tells of the example job; figures by hand stand in the tests of the job. */
  const told: readonly [path: string, says: RegExp][] = [
    ['before', /The home is\s*ready/],
    ['ways-in', /Not ruled out by what is entered\s*gable end, roof holes/],
    ['hose-marks', /Opening 5/],
    ['machine', /The machine blows\s*on target/],
    ['patches', /5\s+caps, 180\s+screws/],
    ['heat', /Effective R after\s*R-34/],
    ['air', /To install, running all the time/],
    ['crew', /Foot of the ladder out/],
    ['receipt', /Insulation receipt and certificate/],
  ];
  test('each sheet stands worked for the example job', ONCE, async ({ page }) => {
    for (const [path, says] of told) {
      await page.goto(`/plan/${path}/`);
      await expect.soft(answers(page), path).toContainText(says);
    }
  });
});

test(
  'an open stop of the survey keeps the plan’s figures behind it, on every sheet that shows them',
  ONCE,
  async ({ page }) => {
    await openStop(page);
    await expect(answers(page)).toContainText('not ready');
    await sheet(page, 'Plan').click();
    await expect(answers(page).locator('.answer output').first()).toContainText(
      'One open stop holds the plan',
    );
    await expect(answers(page).locator('.caution.stop').first()).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Holes' })).toBeHidden();
    await page.getByText('Figures behind the stops').click();
    await expect(page.getByRole('heading', { name: 'Holes' })).toBeVisible();
    // Not on paper, unfolded or not.
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('heading', { name: 'Holes' })).toBeHidden();
    await expect(answers(page).locator('.answer output').first()).toBeVisible();
    await page.emulateMedia({ media: 'screen' });
    await sheet(page, 'Hose marks').click();
    await expect(page.getByRole('heading', { name: 'Opening 1' })).toBeHidden();
    await sheet(page, 'Before the fill').click();
    await expect(answers(page)).toContainText('not ready');
    await page.getByLabel('Leaks').selectOption('none found');
    await sheet(page, 'Hose marks').click();
    await expect(page.getByRole('heading', { name: 'Opening 1' })).toBeVisible();
  },
);

test(
  'while a stop is open, what settles it is worked, and the moisture of the fill and the receipt wait',
  ONCE,
  async ({ page }) => {
    await openStop(page);
    await sheet(page, 'Air and moisture').click();
    await expect(answers(page).getByRole('heading', { name: 'Fresh air' })).toBeVisible();
    await expect(answers(page).locator('.behind-stops')).toHaveCount(1);
    await expect(answers(page).locator('.behind-stops .part')).toHaveCount(1);
    await expect(answers(page).locator('.behind-stops .part')).toBeHidden();
    await sheet(page, 'Receipt').click();
    await expect(answers(page).locator('.paper')).toBeHidden();
    await expect(answers(page).locator('.caution.stop').first()).toBeVisible();
  },
);

test(
  'each condition of readiness names what it rests on, and leads to its source',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/before/');
    const row = page
      .getByRole('table', { name: 'Conditions' })
      .getByRole('row')
      .filter({ hasText: 'Vermiculite' });
    await row.getByRole('link').click();
    await expect(page).toHaveURL(/cautions\/before\/#vermiculite$/);
    await expect(page.locator('#vermiculite')).toContainText('EPA guidance on vermiculite');
  },
);

test(
  'a part that lacks an entry says which, and leads to its box; what was typed stays',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/hose-marks/');
    const box = page.getByLabel('Reach of the stream');
    await box.fill('');
    await expect(page.getByText('Waits for: Reach of the stream')).toBeVisible();
    await page.getByRole('link', { name: 'Reach of the stream' }).click();
    await expect(box).toBeFocused();
    await box.fill('3 ft');
    await expect(page.getByRole('heading', { name: 'Opening 1' })).toBeVisible();
    await box.fill('3 lb');
    await box.blur();
    await expect(page.locator('.problems')).toContainText('Reach of the stream');
    await expect(box).toHaveValue('3 lb');
  },
);

test('entries that clash are told at the part they belong to; the others stand', ONCE, async ({ page }) => {
  await page.goto('/plan/machine/');
  await page.getByLabel('Rate of the machine').fill('12 lb/min');
  await expect(answers(page).getByRole('alert')).toContainText('a rate beside a weighed run');
  await expect(answers(page)).toContainText('on target');
});

test('the R typed from the maker’s paper stands on the receipt, and no other', ONCE, async ({ page }) => {
  await page.goto('/plan/receipt/');
  const paper = page.getByRole('region', { name: 'Insulation receipt and certificate' });
  await expect(paper).not.toContainText(/R-\d/);
  await page.getByLabel('R-value').fill('30 h ft2 F/Btu');
  await page.getByLabel('R copied from').selectOption('bag label');
  await page.getByLabel('Which one').fill('coverage chart, row R 30');
  await expect(paper).toContainText('R-30');
});

test('a list that may be left empty has one empty choice, and each answer once', ONCE, async ({ page }) => {
  await page.goto('/plan/before/');
  const options = page.getByLabel('Leaks').locator('option');
  expect(await options.allTextContents()).toEqual(['', 'none found', 'leaks found', 'not looked at']);
});

test('a price that can’t be read holds the savings, and neither plan nor log', ONCE, async ({ page }) => {
  await page.goto('/plan/heat/');
  await page.getByLabel('Cost of the work').fill('much');
  await page.getByLabel('Degree-days').focus();
  await expect(answers(page)).toContainText('Effective R after');
  await expect(answers(page).getByRole('alert')).toContainText('Cost of the work');
  await sheet(page, 'Fill log').click();
  await expect(page.getByRole('button', { name: '+ 1 bag' }).first()).toBeVisible();
  await expect(answers(page).locator('.waiting').first()).toContainText(
    'Not read: Cost of the work, on the sheet Heat and savings',
  );
});

test(
  'a stop leads to the entry that settles it, and a choice among the ways in is not behind it',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/before/');
    await page.getByLabel('Roof under the crew').selectOption('nobody goes on it');
    await expect(answers(page)).toContainText('not ready');
    await sheet(page, 'Plan').click();
    await answers(page).getByRole('link', { name: 'The way taken, on the sheet Ways in' }).click();
    await expect(page.locator('caption', { hasText: 'The three ways in' })).toBeVisible();
    await page.getByLabel('The way taken').selectOption('gable end');
    await expect(answers(page)).not.toContainText('holds the plan');
  },
);

test(
  'the lanes of the gable end are drawn on the sheet of the ways in, and drawn anew when the home is another',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/ways-in/');
    const lanes = page.locator('figure', { hasText: 'Lanes from the gable end' });
    await expect(lanes).toBeVisible();
    await expect(lanes.locator('.wide svg')).toContainText('66 ft');
    await sheet(page, 'Plan').click();
    await page.getByLabel('Length of the roof').first().fill('50 ft');
    await sheet(page, 'Ways in').click();
    // From both ends each push goes to the middle.
    await expect(lanes.locator('.wide svg')).toContainText('25 ft');
    await expect(lanes.locator('.wide svg')).not.toContainText('66 ft');
  },
);

test('holes of a plan that cuts none are folded away, and not on paper', ONCE, async ({ page }) => {
  await page.goto('/plan/ways-in/');
  await page.getByLabel('The way taken').selectOption('gable end');
  await expect(page.getByRole('navigation', { name: 'Onward' })).toContainText('Fill from the gable end');
  await sheet(page, 'Plan').click();
  await expect(answers(page)).toContainText('the holes of this plan are not cut');
  await expect(page.getByRole('heading', { name: 'Holes' })).toBeHidden();
  const behind = answers(page).locator('h2:text("Every rule behind this plan") + *');
  await expect(behind).toContainText('What a ceiling board may carry');
  await expect(behind).not.toContainText('Spacing of the holes');
  await page.getByText('Holes of the plan, not to be cut').click();
  await expect(page.getByRole('heading', { name: 'Holes' })).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('heading', { name: 'Holes' })).toBeHidden();
});

test('a fill too heavy tells before its fold what would pass', ONCE, async ({ page }) => {
  await page.goto('/plan/');
  await page
    .getByLabel('Density of the fill')
    .or(page.locator('#field-fill-density'))
    .first()
    .fill('2 lb/ft3');
  await expect(answers(page).getByText('Highest density that passes').first()).toBeVisible();
  await expect(answers(page)).toContainText('no lesser depth can be planned');
});

test('a head of hose marks reads as a name and not as one number', ONCE, async ({ page }) => {
  await page.goto('/plan/hose-marks/');
  await expect(page.getByRole('heading', { name: 'Opening 1, 14 Larkspur Lane' })).toHaveCount(1);
});

test(
  'the card of an opening beside a flue bears the bags that the plan has blown there, and those of another are those of its stretch',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/');
    const bags = await page.locator('#plan table:has-text("Fills from") tbody').evaluateAll((rows) =>
      rows.map((row) => {
        const cells = [...row.querySelectorAll('td')].map(({ textContent }) => textContent ?? '');
        const [, here] = /blow ([\d.]+\sbags) here/.exec(cells.join(' ')) ?? [];
        return { here, stretch: cells[4] };
      }),
    );
    expect(bags.map(({ here }) => here !== undefined)).toEqual([false, false, false, true, true]);
    await page.goto('/plan/hose-marks/');
    const cards = page.locator('.hole-card', { hasText: 'Bags to blow through it' });
    await expect(cards.locator('.figures > div:first-child dd')).toHaveText(
      bags.map(({ here, stretch }) => here ?? stretch ?? ''),
    );
  },
);

test('a unit behind its box describes it', ONCE, async ({ page }) => {
  await page.goto('/plan/machine/');
  const field = page.locator('.field:has(.unit)').first();
  const [unit, box] = [field.locator('.unit'), field.locator('input')];
  await expect(box).toHaveAccessibleDescription(new RegExp(`${await unit.textContent()}$`));
});
