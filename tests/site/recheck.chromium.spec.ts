import { execFileSync } from 'node:child_process';
import { expect, type Page, test } from '@playwright/test';

interface Written {
  version: number;
  readonly job: { survey: Record<string, string> };
  readonly figures: Record<string, { text: string; amount?: number; rules: readonly string[] }>;
  readonly rules: Record<string, { kind: string; rows?: (string | number | number[])[][] }>;
}

const exampleRecord = (): Written =>
  JSON.parse(
    execFileSync(process.execPath, ['src/cli/job.ts', 'public/example-job.json', '--record'], {
      encoding: 'utf8',
    }),
  );

async function recheck(page: Page, record: Written): Promise<void> {
  await page.goto('recheck/');
  await page.getByLabel('Choose a record').setInputFiles({
    name: 'record.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(record)),
  });
}

test('the recheck page tells apart what rounding would print alike, and the rows of a table that changed', async ({
  page,
}) => {
  const record = exampleRecord();
  // A figure that rests on a table: its amount a part in a million more, its text as it was; and the last number of the table another.
  const tables = Object.entries(record.rules).filter(([, { kind }]) => kind === 'table');
  const [id = '', table] = tables.find(([, { rows }]) => typeof rows?.[0]?.at(-1) === 'number') ?? [];
  const figure = Object.values(record.figures).find(
    ({ amount, rules }) => amount !== undefined && amount !== 0 && rules.includes(id),
  );
  const row = table?.rows?.[0];
  if (!figure?.amount || !row)
    throw new Error('found no figure that rests on a table, expected one in a record');
  figure.amount *= 1 + 1e-6;
  row[row.length - 1] = Number(row.at(-1)) + 1;

  await recheck(page, record);
  await expect(page.locator('#recheck .answer')).toContainText(
    `1 of ${Object.keys(record.figures).length} figures differ`,
  );
  const told = page.locator('#recheck tbody tr');
  await expect(told).toHaveCount(1);
  const [before, now] = [
    await told.locator('[data-label="Recorded"]').textContent(),
    await told.locator('[data-label="Now"]').textContent(),
  ];
  expect(before).not.toBe(now);
  const [, old, again] = /: (.*), now (.*)$/s.exec((await told.locator('.each').textContent()) ?? '') ?? [];
  expect(old).toBeDefined();
  expect(old).not.toBe(again);
});

test('the recheck page names the stop that holds a figure back, and says where a record has no rules of words', async ({
  page,
}) => {
  const record = exampleRecord();
  // As an older copy wrote it, of a home that leaks.
  record.version = 2;
  record.job.survey = { ...record.job.survey, leaks: 'leaks found' };
  await recheck(page, record);
  const row = (label: string) => page.locator('#recheck tbody tr').filter({ hasText: label });
  const bags = row('Bags to load');
  await expect(bags.locator('[data-label="Recorded"]')).toHaveText(
    record.figures['plan.bags_to_load']?.text ?? '',
  );
  await expect(bags.locator('[data-label="Now"]')).toHaveText('held back');
  await expect(bags.getByRole('link', { name: 'the stop caution.before.wet' })).toHaveAttribute(
    'href',
    /cautions\/before\/#wet$/,
  );
  const ready = row('The home is');
  await expect(ready.locator('[data-label="Because of"]')).toHaveText('its rules were not recorded');
  // Another copy would have named them.
  record.version = 3;
  await recheck(page, record);
  await expect(ready.locator('[data-label="Because of"]')).toHaveText('no rule behind it changed');
});
