import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { addressOf } from '../../src/calc/declare/address.ts';
import { ONCE } from './once.ts';

const answer = (page: Page) => page.locator('#plan .answer output');

/** Types as a person would: clears the box, then writes. */
async function write(page: Page, label: string, text: string): Promise<void> {
  const box = page.getByLabel(label, { exact: false }).first();
  await box.fill(text);
  await box.blur();
}

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('the example job stands worked, with its drawings', ONCE, async ({ page }) => {
    await page.goto('/plan/');
    // 66 ft takes five holes: four would leave gaps or ends over their longest (8 + 3 × 16 + 8 = 64 ft).
    await expect(answer(page)).toContainText('5 holes');
    await expect(page.locator('.drawing .wide svg')).toHaveCount(3);
    // Nothing is kept, and nothing is pressed, that needs script.
    await expect(page.locator('.job-line')).toBeHidden();
    await expect(page.locator('main').getByRole('button')).toHaveCount(0);
  });

  test('a rule has its page, with value, source and clause', ONCE, async ({ page }) => {
    await page.goto('/rules/access.roof-holes.spacing/');
    await expect(page.locator('.answer')).toContainText('between 12 and 16 ft');
    await expect(page.locator('main')).toContainText('practice');
  });
});

test(
  'the links to the sheets of a job stand in one line of a screen 1280 wide, whichever is the bold one',
  ONCE,
  async ({ page }) => {
    await page.setViewportSize({ width: 1280, height: 800 });
    for (const path of ['/plan/', '/plan/heat/', '/plan/receipt/']) {
      await page.goto(path);
      const tops = await page
        .locator('.sheets li')
        .evaluateAll((links) => links.map((link) => link.getBoundingClientRect().top));
      expect(tops.length, path).toBe(12);
      expect(new Set(tops).size, path).toBe(1);
    }
  },
);

test('what is said of a hole stands under its places, as wide as all of them', ONCE, async ({ page }) => {
  await page.goto('/plan/');
  const table = page.locator('#plan table', { hasText: 'Fills from' });
  // Hole 4 stands beside a flue: of words in a column of their own each had a line.
  const remark = table.locator('tbody', { hasText: 'keep' }).locator('.remark > td').first();
  const [all, its] = [await table.boundingBox(), await remark.boundingBox()];
  expect(its?.width).toBeGreaterThan(0.85 * (all?.width ?? Number.POSITIVE_INFINITY));
});

test('a changed length changes the holes, the bags and the drawing at once', async ({ page }) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  await write(page, 'Length of the roof', '50 ft');
  // Three holes reach 48 ft at most (8 + 2 × 16 + 8), four reach from there to 64 ft.
  await expect(answer(page)).toContainText('4 holes');
  await expect(page.locator('#plan tbody > tr > th')).toHaveCount(4);
  await expect(page.locator('.drawing .wide svg desc').first()).toContainText('A roof of 50 ft');
});

test('what was typed survives a closed tab; an address with entries offers them as a job that is not kept yet', async ({
  page,
  context,
}) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  await write(page, 'Length of the roof', '50 ft');
  await expect(answer(page)).toContainText('4 holes');
  await expect(page).toHaveURL(/#job=[a-z0-9]{16}$/);
  await page.close();

  const again = await context.newPage();
  await again.goto('/plan/');
  await expect(answer(again)).toContainText('4 holes');

  const entries = JSON.parse(readFileSync('public/example-job.json', 'utf8'));
  const { format: _format, version: _version, ...typed } = entries;
  await again.goto(
    `/plan/#${addressOf({ ...typed, name: '3 Teasel Row', home: { ...typed.home, length: '30 ft' } })}`,
  );
  await again.reload();
  await expect(again.getByText('This job came with the address')).toBeVisible();
  await expect(again.getByText('Open: 3 Teasel Row')).toBeVisible();
  await again.goto('/plan/jobs/');
  await expect(again.locator('.jobs .job')).toHaveText(['14 Larkspur Lane']);
});

test(
  'an entry that can’t be read is named, kept as typed, and no figure stands beside it',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/');
    await expect(answer(page)).toContainText('5 holes');
    await write(page, 'Length of the roof', '66');
    await expect(page.locator('.problems')).toContainText('Length of the roof');
    await expect(page.locator('.problems')).toContainText('no unit');
    await expect(answer(page)).toHaveCount(0);
    await expect(page.getByLabel('Length of the roof').first()).toHaveValue('66');
    await page.locator('.problems a').first().click();
    await expect(page.getByLabel('Length of the roof').first()).toBeFocused();
  },
);

test('an unrated ceiling stops before any figure', ONCE, async ({ page }) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  await page.getByLabel('Ceiling board').selectOption('gypsum 3/8 in');
  const first = page.locator('#plan > *').first();
  await expect(first).toHaveClass(/stop/);
  await expect(first).toContainText('No published limit');
});

test(
  'a roof on which no layout holds every rule says which clash and by how much it departs',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/');
    await expect(answer(page)).toContainText('5 holes');
    // What stands beyond the end of the shorter roof would be refused first.
    await page.getByRole('button', { name: 'Remove vent, flue or skylight 2' }).click();
    const first = page.getByRole('button', { name: 'Remove vent, flue or skylight 1' });
    // A second press within half a second is taken for one of the first.
    await expect(async () => {
      await first.click();
      await expect(first).toHaveCount(0, { timeout: 100 });
    }).toPass();
    await write(page, 'Length of the roof', '20 ft');
    await expect(page.locator('.trouble')).toContainText('can’t all hold');
    await expect(page.locator('.trouble li').first()).toContainText('over the');
  },
);

test('a vent can be added and taken off', ONCE, async ({ page }) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  const rows = page.locator('fieldset.list', { hasText: 'Vents, flues and skylights' }).locator('.row');
  await expect(rows).toHaveCount(2);
  await page.getByRole('button', { name: 'Add a vent, flue or skylight' }).click();
  await expect(rows).toHaveCount(3);
  await page.getByRole('button', { name: 'Remove vent, flue or skylight 3' }).click();
  await expect(rows).toHaveCount(2);
  await expect(answer(page)).toContainText('5 holes');
});

test('a job file is opened, and one with a slip is refused in a sentence', ONCE, async ({ page }) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  const job = JSON.parse(readFileSync('public/example-job.json', 'utf8')) as { home: { length: string } };
  const asFile = (text: string) => ({
    name: 'job.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await page.setInputFiles(
    '#open-job',
    asFile(JSON.stringify({ ...job, home: { ...job.home, length: '50 ft' } })),
  );
  await expect(answer(page)).toContainText('4 holes');
  await page.setInputFiles(
    '#open-job',
    asFile(JSON.stringify({ ...job, home: { ...job.home, lenght: '50 ft' } })),
  );
  await expect(page.getByRole('status').filter({ hasText: 'Not opened' })).toContainText('"length"');
  await expect(answer(page)).toContainText('4 holes');
});

test('a figure’s working shows symbols, numbers with units and whose each is', ONCE, async ({ page }) => {
  await page.goto('/plan/');
  await page.getByText('How the load is worked out').click();
  const working = page.locator('details[open] .working');
  await expect(working.first()).toContainText('yours');
  await expect(working.first()).toContainText('a rule');
  const rule = working.first().locator('a.rule').first();
  await expect(rule).toHaveAttribute('href', /\/rules\//);
  await rule.click();
  await expect(page.getByRole('dialog')).toBeVisible();
});

test('an address with mischief in it does no harm', ONCE, async ({ page }) => {
  const alarms: string[] = [];
  page.on('dialog', (dialog) => {
    alarms.push(dialog.message());
    void dialog.dismiss();
  });
  page.on('pageerror', (error) => alarms.push(String(error)));
  await page.goto(
    '/plan/#name=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E&__proto__.polluted=1&home.length=%3Cscript%3E&constructor.prototype.x=1',
  );
  await expect(page.locator('.problems')).toContainText('Length of the roof');
  expect(await page.evaluate(() => ('polluted' in {} ? 'polluted' : 'clean'))).toBe('clean');
  expect(alarms).toEqual([]);
});

test('a press on a button that leaves a mistake behind is not lost when the mistake is told', async ({
  page,
}) => {
  await page.goto('/calculators/edge-bays/');
  await page.getByLabel('Truss spacing').fill('wide');
  // The sentence under the field moves the button away from under the finger.
  await page.getByRole('button', { name: 'Add a truss' }).click();
  await expect(page.locator('#field-trusses_measured-0-at')).toBeVisible();
  await expect(page.locator('.answers')).toContainText('The figures wait for this');
});

test(
  'another home typed over the example loses what was seen at that one, is told so, and keeps its own answers',
  ONCE,
  async ({ page }) => {
    const told = page.locator('.job-line').getByText('Another home than the example’s');
    await page.goto('/plan/before/');
    const verdict = page.locator('#plan').getByText('not looked at everywhere');
    await expect(page.locator('#plan')).toContainText('ready');
    await expect(verdict).toHaveCount(0);
    // Answered before the home has a name: it is this home's own.
    await page.locator('#field-survey-roof_surface').selectOption('worn');
    await page.goto('/plan/');
    await expect(page.locator('.job-line')).toContainText('Kept on this phone');
    await expect(told).toHaveCount(0);
    await page.locator('#field-home-length').fill('50 ft');
    await expect(told).toContainText(
      'the survey, the machine’s figures, the heat of the day, the fill log, the receipt',
    );
    const sheets = page.getByRole('navigation', { name: 'Sheets of this job' });
    await sheets.getByRole('link', { name: 'Before the fill' }).click();
    await expect(page.locator('#field-survey-roof_surface')).toHaveValue('worn');
    await expect(page.locator('#field-survey-leaks')).toHaveValue('');
    await expect(verdict.first()).toBeVisible();
    await page
      .getByRole('navigation', { name: 'Sheets of this job' })
      .getByRole('link', { name: 'Fill log' })
      .click();
    await expect(page.locator('.answer output')).toContainText('0 bags in');
    await page.reload();
    await expect(page.locator('.answer output')).toContainText('0 bags in');
  },
);

test(
  'a home that never had figures shows none of the example’s while its last entry is typed',
  ONCE,
  async ({ page }) => {
    const {
      format: _,
      version: __,
      ...entries
    } = JSON.parse(readFileSync('public/example-job.json', 'utf8'));
    const { bag_weight: ___, ...fill } = entries.fill;
    await page.goto(`/plan/#${addressOf({ ...entries, name: 'Next door', fill })}`);
    const plan = page.locator('#plan');
    await expect(plan).toContainText('The figures wait for this');
    const box = page.locator('#field-fill-bag_weight');
    await box.fill('25');
    await expect(plan).toContainText('found "25"');
    await expect(plan).not.toContainText('Figures of before');
    await expect(answer(page)).toHaveCount(0);
    await box.fill('25 lb/bag');
    await expect(plan).toContainText('Next door');
    await expect(answer(page)).toContainText('5 holes');

    // Now it has some, and they are marked wherever they stand.
    const bar = page.locator('.short-answer');
    await expect(bar).toHaveText(/^5\s+holes/);
    await box.fill('2');
    await expect(plan).toContainText('Figures of before: waiting for');
    await expect(bar).toHaveText(/^Figures of before: 5\s+holes/);
  },
);
