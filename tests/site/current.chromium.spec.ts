import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { type Entries, withEntry } from '../../src/calc/declare/entries.ts';
import { readFields, sentence } from '../../src/calc/declare/read-fields.ts';
import { resistanceDrawing } from '../../src/drawings/resistance-across.ts';
import { roofPlan } from '../../src/drawings/roof-plan.ts';
import { sectionDrawing } from '../../src/drawings/section.ts';
import { sectionSheet } from '../../src/drawings/section-sheet.ts';
import { toSvg } from '../../src/drawings/svg.ts';
import { rulePage } from '../../src/islands/links.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import { workJob } from '../../src/job/work.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

// In Chromium alone: only it prints to PDF under test. What is drawn again a moment after the answer must come, and come right.

const {
  format: _format,
  version: _version,
  ...example
} = JSON.parse(readFileSync('public/example-job.json', 'utf8')) as Record<string, unknown>;

/** Every drawing of the plan as text, by the class of its layout, in the order of the page. */
function drawingsOf(entries: Entries): Readonly<Record<'wide' | 'narrow', readonly string[]>> {
  const rules = openRulebook(theProject().data);
  const job = readFields(jobFields, entries);
  const worked = job.ok ? workJob(job.value, rules) : job;
  if (!worked.ok) throw new Error(worked.problems.map(sentence).join(' '));
  const plan = worked.value;
  const layout = (size: 'wide' | 'narrow'): string[] => {
    const sheet = sectionSheet(plan, size);
    const resistance = resistanceDrawing(plan, rules, sheet);
    return [
      toSvg(
        roofPlan(plan, rules, size === 'wide' ? 'across the sheet' : 'down the sheet'),
        `roof-${size}`,
        rulePage,
      ),
      toSvg(sectionDrawing(plan, sheet, `section-${size}`), `section-${size}`, rulePage),
      ...(resistance ? [toSvg(resistance, `resistance-${size}`, rulePage)] : []),
    ];
  };
  return { wide: layout('wide'), narrow: layout('narrow') };
}

const answer = (page: Page) => page.locator('#plan .answer output');

/** The drawings of a layout as the page holds them, and some texts as a page would hold them, told alike: attributes by name, addresses whole. */
const toldAlike = (page: Page, size: 'wide' | 'narrow', texts: readonly string[]) =>
  page.evaluate(
    ([size, texts]) => {
      const told = (element: Element): unknown => [
        element.localName,
        [...element.attributes]
          .map(({ name, value }) =>
            [name, name === 'href' ? new URL(value, location.href).href : value].join('='),
          )
          .sort(),
        [...element.childNodes].map((node) => (node instanceof Element ? told(node) : node.textContent)),
      ];
      const read = (text: string): Element => {
        const box = document.createElement('div');
        box.innerHTML = text;
        return box.firstElementChild ?? box;
      };
      return {
        found: [...document.querySelectorAll(`.drawing .${size} > svg`)].map(told),
        expected: texts.map((text) => told(read(text))),
      };
    },
    [size, texts] as const,
  );

test('after every kind of change each drawing is what it would be if it were drawn anew', async ({
  page,
}) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  let entries: Entries = example;
  const change = async (way: string, value: string) => {
    entries = withEntry(entries, way.split('.'), value);
    const box = page.locator(`[name="${way}"]`);
    if ((await box.evaluate((each) => each.localName)) === 'select') await box.selectOption(value);
    else await box.fill(value);
  };
  const isCurrent = async (what: string) => {
    const drawn = drawingsOf(entries);
    for (const size of ['wide', 'narrow'] as const) {
      await expect(async () => {
        const { found, expected } = await toldAlike(page, size, drawn[size]);
        expect(found, `${size}, after ${what}`).toEqual(expected);
      }).toPass({ timeout: 10_000 });
    }
    await expect(page.locator('#plan')).not.toHaveAttribute('aria-busy');
  };
  await isCurrent('nothing');
  await change('fill.density', '1.71 lb/ft3');
  await isCurrent('another density: words alone');
  await change('home.length', '50 ft');
  await isCurrent('a shorter roof: fewer holes, trusses and seams');
  await change('home.length', '76 ft');
  await isCurrent('a longer roof: more of each');
  await change('roof.obstacles.0.what', 'skylight');
  await isCurrent('a square in place of a circle');
  await page.getByRole('button', { name: 'Remove vent, flue or skylight 1' }).click();
  const roof = entries.roof as { readonly obstacles: readonly unknown[] };
  entries = withEntry(entries, ['roof', 'obstacles'], roof.obstacles.slice(1));
  await isCurrent('one obstacle less');
  await change('old.depth', '0 in');
  await isCurrent('no old layer');
  await change('old.depth', '3 in');
  await isCurrent('an old layer again');
});

/** Types into the length of the roof, and gives what stands there in the same moment, before anything else has its turn. */
const typeLength = (page: Page, value: string, then: 'nothing' | 'beforeprint' = 'nothing') =>
  page.evaluate(
    async ([text, then]) => {
      const box = document.querySelector<HTMLInputElement>('[name="home.length"]');
      const plan = document.getElementById('plan');
      if (!box || !plan) throw new Error('found no form with a plan, expected both');
      box.value = text;
      box.dispatchEvent(new Event('input', { bubbles: true }));
      // The answer is drawn when this task's own promises are kept.
      for (let turn = 0; turn < 5; turn++) await Promise.resolve();
      if (then === 'beforeprint') dispatchEvent(new Event('beforeprint'));
      return {
        answer: plan.querySelector('.answer output')?.textContent ?? '',
        rows: plan.querySelectorAll('tbody th').length,
        drawing: plan.querySelector('.drawing .wide desc')?.textContent ?? '',
        busy: plan.getAttribute('aria-busy'),
      };
    },
    [value, then] as const,
  );

test('the answer is there at once; what follows it is told to be of before until it is of now', async ({
  page,
}) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  const typed = await typeLength(page, '50 ft');
  expect(typed.answer).toMatch(/^4\s+holes/);
  expect(typed.rows).toBe(5);
  expect(typed.busy).toBe('true');
  await expect(page.locator('#plan')).not.toHaveAttribute('aria-busy');
  await expect(page.locator('#plan tbody th')).toHaveCount(4);
  await expect(page.locator('.drawing .wide desc').first()).toContainText('A roof of 50 ft');
});

test('what is printed in the moment after a key is of now, whole', async ({ page }) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  const printed = await typeLength(page, '50 ft', 'beforeprint');
  expect(printed).toMatchObject({ rows: 4, busy: null });
  expect(printed.drawing).toContain('A roof of 50 ft');
});

test('paper holds the new figures, though nothing was painted since the key', async ({ page }) => {
  test.skip(
    spawnSync('pdftotext', ['-v']).error !== undefined,
    'pdftotext, of poppler-utils, is not installed',
  );
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  await page.evaluate(() => {
    // From here on no later task of the page has its turn.
    window.requestAnimationFrame = () => 0;
    window.setTimeout = (() => 0) as unknown as typeof window.setTimeout;
  });
  const { drawing, busy } = await typeLength(page, '50 ft');
  expect(drawing).toContain('A roof of 66 ft');
  expect(busy).toBe('true');
  const folder = mkdtempSync(join(tmpdir(), 'current-'));
  try {
    const file = join(folder, 'printed.pdf');
    writeFileSync(file, await page.pdf({ format: 'A4' }));
    const text = execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' });
    expect(text).toContain('50 ft');
    expect(text).not.toContain('66 ft');
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('what stays of before for longer than a blink is seen to be; then nothing says so any more', async ({
  page,
}) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  await page.evaluate(() => {
    // What is to follow the answer waits until it is let go on.
    const { requestAnimationFrame: paint, setTimeout: later } = window;
    let held: (() => void) | undefined;
    window.requestAnimationFrame = (work) => {
      held = () => paint(work);
      return 0;
    };
    // 100 ms is the wait of a page that paints nothing.
    window.setTimeout = ((work: () => void, time: number) =>
      time === 100 ? 0 : later(work, time)) as unknown as typeof window.setTimeout;
    addEventListener('go on', () => {
      window.requestAnimationFrame = paint;
      window.setTimeout = later;
      held?.();
    });
  });
  const plan = page.locator('#plan');
  expect((await typeLength(page, '50 ft')).busy).toBe('true');
  await expect(plan).toHaveClass(/of-before/);
  await expect(plan).toHaveCSS('box-shadow', /-8px 0px 0px/);
  await page.evaluate(() => dispatchEvent(new Event('go on')));
  await expect(plan).not.toHaveClass(/of-before/);
  await expect(plan).not.toHaveAttribute('aria-busy');
  await expect(page.locator('#plan tbody th')).toHaveCount(4);
});

test('a screen that is made narrow after a key shows the new drawing in its other layout', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  await page.locator('[name="home.length"]').fill('50 ft');
  await page.setViewportSize({ width: 360, height: 740 });
  const narrow = page.locator('.drawing .narrow svg').first();
  await expect(narrow).toBeVisible();
  await expect(page.locator('.drawing .wide svg').first()).toBeHidden();
  await expect(narrow.locator('desc')).toContainText('A roof of 50 ft');
  await expect(narrow.getByText('50 ft', { exact: true }).first()).toBeVisible();
});

test('a letter that is typed has its own box laid out, and not the page', async ({ page }) => {
  await page.goto('/plan/');
  await expect(answer(page)).toContainText('5 holes');
  const box = page.locator('[name="home.length"]');
  await box.focus();
  await page.evaluate(() => {
    // Nothing of the site hears the letter: what is laid out is what the browser lays out by itself.
    addEventListener('input', (event) => event.stopImmediatePropagation(), true);
  });
  await page.keyboard.press('End');
  // What the page still draws of its own beginning is not laid out for the letter.
  await page.evaluate(() => new Promise<void>((idle) => requestIdleCallback(() => idle())));
  const session = await page.context().newCDPSession(page);
  const laidOut: boolean[] = [];
  session.on('Tracing.dataCollected', ({ value }) => {
    for (const { name, args } of value as unknown as {
      name: string;
      args: { beginData?: { partialLayout: boolean } };
    }[])
      if (name === 'Layout' && args.beginData) laidOut.push(args.beginData.partialLayout);
  });
  const traced = new Promise((done) => session.once('Tracing.tracingComplete', done));
  await session.send('Tracing.start', { categories: 'devtools.timeline', transferMode: 'ReportEvents' });
  await page.keyboard.type('0');
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(drawn)));
  await session.send('Tracing.end');
  await traced;
  expect(laidOut.length).toBeGreaterThan(0);
  expect(laidOut).not.toContain(false);
});
