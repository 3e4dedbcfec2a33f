import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { largestJob } from '../bench/largest-job.ts';

// In Chromium alone: only it prints to PDF under test. What stands on each sheet is read back by pdftotext, of poppler-utils.

const reader = spawnSync('pdftotext', ['-v']).error === undefined;
if (!reader && process.env.CI) throw new Error('found no pdftotext, expected poppler-utils');
test.skip(!reader, 'pdftotext, of poppler-utils, is not installed');

/** What is printed, and on how many sheets at least and at most. Cards and the template have tests of their own. */
const printed: readonly [path: string, least: number, most: number][] = [
  ['/plan/', 3, 7],
  ['/plan/before/', 1, 5],
  ['/plan/hose-marks/', 5, 9],
  ['/plan/fill-log/', 1, 4],
  ['/plan/patches/', 1, 6],
  ['/plan/receipt/', 1, 1],
  ['/do/filling-through-roof-holes/', 1, 5],
  ['/do/patching/', 1, 5],
  ['/calculators/ceiling-load/', 1, 6],
  ['/calculators/edge-bays/', 1, 9],
  ['/calculators/gable-lanes/', 1, 4],
  // Its drawings take half a sheet each: where one took a whole, the sheet before it was left half empty.
  ['/calculators/patch-layers/', 1, 5],
  ['/rules/', 5, 60],
];

/** The width of Letter between its margins of 14 mm, in pixels of 96 to the inch. */
const LETTER_BETWEEN_MARGINS = Math.floor((8.5 - (2 * 14) / 25.4) * 96);

/** Words without what lines and columns put between them. */
const bare = (words: string): string => words.normalize('NFKC').replace(/[\s\u00ad]+/g, '');

async function sheetsOf(page: Page, format: 'Letter' | 'A4'): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  try {
    const file = join(folder, 'printed.pdf');
    writeFileSync(file, await page.pdf({ format }));
    const text = execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' });
    return text.split('\f').slice(0, -1).map(bare);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Pages whose first sheet held their title alone, since a caution at its foot was held to its step. */
for (const path of [
  '/do/filling-through-roof-holes/',
  '/trouble/bags-short-or-over/',
  '/safety/sharp-metal/',
])
  test(`${path} on Letter: no sheet but the last is left nearly empty`, async ({ page }) => {
    await page.goto(path);
    const sheets = await sheetsOf(page, 'Letter');
    // A sheet takes some 1,500 letters; one with a drawing at its foot fewer. The title alone has some 200.
    expect(Math.min(...sheets.slice(0, -1).map((sheet) => sheet.length))).toBeGreaterThan(500);
  });

/** Pages whose last sheet held the foot of the site alone. */
for (const path of ['/calculators/noise-dose/', '/trouble/ceiling-bows/', '/rules/ceiling.board.limit/'])
  test(`${path} on Letter: the foot of the site stands on the first sheet, and takes none for itself`, async ({
    page,
  }) => {
    await page.goto(path);
    const sheets = await sheetsOf(page, 'Letter');
    expect(sheets.map((sheet) => sheet.includes('Localcode,themaker’sinstructions'))).toEqual(
      sheets.map((_, place) => place === 0),
    );
    // The foot of each sheet has some 40 letters.
    expect(sheets.at(-1)?.length).toBeGreaterThan(400);
  });

for (const path of [
  '/do/patching/',
  '/do/filling-through-roof-holes/',
  '/calculators/patch-layers/',
  '/do/opening-the-gable/',
])
  test(`${path} on Letter: words of a drawing are of 7 pt or more`, async ({ page }) => {
    await page.setViewportSize({ width: LETTER_BETWEEN_MARGINS, height: 900 });
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    const least = await page.evaluate(() =>
      [...document.querySelectorAll<SVGSVGElement>('.drawing svg')]
        .filter((svg) => svg.getClientRects().length > 0)
        .map((svg) => {
          const { width, height } = svg.getBoundingClientRect();
          const scale = Math.min(width / svg.viewBox.baseVal.width, height / svg.viewBox.baseVal.height);
          return Math.min(
            ...[...svg.querySelectorAll('text')].map(
              (each) => Number.parseFloat(getComputedStyle(each).fontSize) * scale * (72 / 96),
            ),
          );
        }),
    );
    expect(least.length).toBeGreaterThan(0);
    expect(Math.min(...least)).toBeGreaterThanOrEqual(7);
  });

/** Its first words, up to a number: on paper that bears the number of its note. */
const begins = (words: string): string => bare(/^\D*/.exec(words)?.[0] ?? '').slice(0, 20);

for (const path of ['/do/filling-through-roof-holes/', '/do/lifting-the-edge/'])
  test(`${path} on Letter and A4: a step and what good looks like stand on one sheet`, async ({ page }) => {
    await page.goto(path);
    const steps = await page
      .locator('.prose > ol > li')
      .evaluateAll((all) =>
        all.map((each) => [...each.querySelectorAll('p')].map((p) => p.textContent ?? '')),
      );
    const pairs = steps.flatMap(([first, good]) =>
      first && good ? [[begins(first), begins(good)] as const] : [],
    );
    expect(pairs.length).toBeGreaterThan(5);
    for (const paper of ['Letter', 'A4'] as const) {
      const sheets = await sheetsOf(page, paper);
      const parted = pairs.filter(
        ([a, b]) => !sheets.some((sheet) => sheet.includes(a) && sheet.includes(b)),
      );
      expect(parted, paper).toEqual([]);
    }
  });

test('on paper a stop is white on black, as on the screen', async ({ page }) => {
  await page.goto('cautions/before/');
  await page.emulateMedia({ media: 'print' });
  const { ground, ink, exact } = await page
    .locator('.caution.stop')
    .first()
    .evaluate((stop) => {
      const style = getComputedStyle(stop);
      return { ground: style.backgroundColor, ink: style.color, exact: style.printColorAdjust };
    });
  // A browser leaves the ground of what it prints out, unless it is told not to.
  expect([ground, ink, exact]).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)', 'exact']);
});

test('the fill log of a home of two sections and 76 ft is three sheets of Letter, and each of its hose cards one', async ({
  page,
}) => {
  await page.goto('/plan/');
  await page.setInputFiles('#open-job', {
    name: 'job.json',
    mimeType: 'application/json',
    buffer: Buffer.from(
      JSON.stringify({ format: 'heel-to-ridge job', version: 3, ...largestJob(76), name: 'Lot 9' }),
    ),
  });
  await expect(page.locator('.job-line')).toContainText('Lot 9');
  await page.goto('/plan/fill-log/');
  await expect(page.locator('.job-line')).toContainText('Lot 9');
  // Of ten openings: one under the sum, five, and four.
  expect(await sheetsOf(page, 'Letter')).toHaveLength(3);
  await page.goto('/plan/hose-marks/');
  await expect(page.locator('.job-line')).toContainText('Lot 9');
  // A sheet for what all share, and one for each opening, most of them beside a flue.
  for (const paper of ['Letter', 'A4'] as const) expect(await sheetsOf(page, paper), paper).toHaveLength(11);
});

for (const [path, least, most] of printed) {
  test(`${path} on Letter and A4: ${least} to ${most} sheets, every cell of its tables there, each caution on the sheet of what it stands before, each head of a table over a row`, async ({
    page,
  }) => {
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    const { cells, kept, heads } = await page.evaluate(() => {
      const seen = (each: Element): boolean =>
        each.getClientRects().length > 0 && getComputedStyle(each).visibility !== 'hidden';
      // Words that no number of a note stands in: on paper it does, in the document it does not.
      const pieces = (of: Element): string[] => {
        const walker = document.createTreeWalker(of, NodeFilter.SHOW_TEXT);
        const found: string[] = [];
        for (let node = walker.nextNode(); node; node = walker.nextNode())
          if ((node.textContent ?? '').trim().length > 7) found.push((node.textContent ?? '').trim());
        return found;
      };
      const cells = [...document.querySelectorAll<HTMLElement>('td, th')]
        .filter((each) => seen(each) && !each.closest('details') && !each.matches('.blank'))
        .map((each) => (each.textContent ?? '').trim());
      const kept = [...document.querySelectorAll<HTMLElement>('main .caution')]
        .filter(seen)
        .flatMap((caution) => {
          const next = caution.nextElementSibling;
          if (!(next instanceof HTMLElement) || next.matches('.caution') || !seen(next)) return [];
          const first = next.matches('ol, ul') ? next.firstElementChild : next;
          if (!(first instanceof HTMLElement) || first.matches('table, dl, figure')) return [];
          return [
            [(pieces(caution).at(-1) ?? '').slice(-30), (pieces(first)[0] ?? '').slice(0, 30)] as const,
          ];
        });
      const heads = [...document.querySelectorAll('table')].filter(seen).flatMap((table) => {
        const rows = [...table.tBodies].flatMap((each) => [...each.rows]).filter(seen);
        return table.tHead && rows.length > 0
          ? [[table.tHead.textContent ?? '', rows.map((each) => each.textContent ?? '')] as const]
          : [];
      });
      return { cells, kept, heads };
    });
    for (const paper of ['Letter', 'A4'] as const) {
      const sheets = await sheetsOf(page, paper);
      expect(sheets.length, `sheets of ${paper}`).toBeGreaterThanOrEqual(least);
      expect(sheets.length, `sheets of ${paper}`).toBeLessThanOrEqual(most);
      const all = sheets.join('');
      // A cell may run over two sheets, so that a heading that is told again stands in it; its first words don't.
      expect(cells.filter((each) => !all.includes(bare(each).slice(0, 40)))).toEqual([]);
      const parted = kept.filter(
        ([end, start]) => !sheets.some((sheet) => sheet.includes(bare(end)) && sheet.includes(bare(start))),
      );
      expect(parted, `parted on ${paper}`).toEqual([]);
      // A head is told again on each sheet that its table runs over.
      const orphaned = heads.filter(([head, rows]) =>
        sheets.some((sheet) => {
          const [, ...after] = sheet.split(bare(head));
          const last = after.at(-1);
          return last !== undefined && !rows.some((row) => last.includes(bare(row).slice(0, 12)));
        }),
      );
      expect(
        orphaned.map(([head]) => head),
        `heads without a row on ${paper}`,
      ).toEqual([]);
      for (const [place, sheet] of sheets.entries())
        expect(sheet, `sheet ${place + 1} of ${paper}`).toMatch(/rulebook\d{4}\.\d/i);
    }
  });
}

for (const path of [
  '/plan/',
  '/calculators/hose-marks/',
  '/calculators/edge-bays/',
  '/sources/cfr-24-3280/',
  // Of eleven columns: where they found no room, the browser set all of the page at two thirds of its size.
  '/plan/ways-in/',
  '/calculators/gable-lanes/',
  '/calculators/gable-lanes/example/',
])
  test(`${path} on Letter: no word of a table is broken, and no table is wider than the sheet`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: LETTER_BETWEEN_MARGINS, height: 900 });
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    const { read, broken, wide } = await page.evaluate(() => {
      const tables = [...document.querySelectorAll('table')].filter(
        (each) => each.getClientRects().length > 0,
      );
      let read = 0;
      const broken: string[] = [];
      for (const table of tables) {
        const walker = document.createTreeWalker(table, NodeFilter.SHOW_TEXT);
        for (let node = walker.nextNode(); node; node = walker.nextNode())
          for (const word of (node.textContent ?? '').matchAll(/[\p{L}\d]+/gu)) {
            const range = document.createRange();
            range.setStart(node, word.index);
            range.setEnd(node, word.index + word[0].length);
            // A word that begins a line also touches the end of the one before it, with nothing.
            const inked = [...range.getClientRects()].filter(({ width }) => width > 0);
            const lines = new Set(inked.map(({ top }) => Math.round(top)));
            read += inked.length;
            if (lines.size > 1) broken.push(word[0]);
          }
      }
      const wide = tables
        .map((each) => each.getBoundingClientRect().right)
        .filter((right) => right > document.documentElement.clientWidth + 1);
      return { read, broken, wide };
    });
    expect(read).toBeGreaterThan(20);
    expect({ broken, wide }).toEqual({ broken: [], wide: [] });
  });

test('the paper to sign parts each item from the clause that asks for it, and says the unit of what is left blank', async ({
  page,
}) => {
  await page.goto('/plan/receipt/');
  await expect(page.locator('main')).toContainText('Still missing');
  expect((await page.locator('main').textContent())?.split('Still missing')).toHaveLength(2);
  const [sheet = ''] = await sheetsOf(page, 'Letter');
  expect(sheet).toContain('Installer(16CFR460.17;IECC2021R303.1.1)');
  expect(sheet).toContain('Roofcavity');
  expect(sheet).toMatch(/Installeddensity\(IECC2021R303\.1\.1\)(tobewritten)?lb\/ft3/);
});

test('the notes of a page say once how a value stands', async ({ page }) => {
  await page.goto('/calculators/patch-layers/');
  const all = (await sheetsOf(page, 'Letter')).join('');
  expect(all).toContain('commonpractice,nosource');
  expect(all).not.toMatch(/practicecommonpractice|derivedworkedout|memoryfrommemory/);
});

for (const path of ['/know/how-these-roofs-are-built/', '/calculators/roof-heat/example/'])
  test(`${path} on Letter: no line of the notes, nor of what went into a step, ends between an R and its number`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: LETTER_BETWEEN_MARGINS, height: 900 });
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    const { read, broken } = await page.evaluate(() => {
      let read = 0;
      const broken: string[] = [];
      for (const each of document.querySelectorAll('.numbers .value, .working .inputs a.rule')) {
        const walker = document.createTreeWalker(each, NodeFilter.SHOW_TEXT);
        for (let node = walker.nextNode(); node; node = walker.nextNode())
          for (const amount of (node.textContent ?? '').matchAll(/R-[\d.]+/g)) {
            const range = document.createRange();
            range.setStart(node, amount.index);
            range.setEnd(node, amount.index + amount[0].length);
            const inked = [...range.getClientRects()].filter(({ width }) => width > 0);
            read += inked.length;
            if (new Set(inked.map(({ top }) => Math.round(top))).size > 1) broken.push(amount[0]);
          }
      }
      return { read, broken };
    });
    expect(read).toBeGreaterThan(0);
    expect(broken).toEqual([]);
  });

test('a value that stands in a caution alone has its note on a sheet of a job, with value and source', async ({
  page,
}) => {
  await page.goto('/plan/patches/');
  const all = (await sheetsOf(page, 'Letter')).join('');
  // patch.sealant.coldest-surface, which only the caution about cold surfaces names.
  expect(all).toMatch(/Coldestsurfaceformembraneandsealant:between40and50°F,frommemory/);
  expect(all).not.toMatch(/:,/);
});

test.describe('on paper stands what was typed', () => {
  test('each entry of a calculator as typed, none that was left empty, and the working that was unfolded', async ({
    page,
  }) => {
    await page.goto('/calculators/edge-bays/');
    await page.getByLabel('Length of the roof').fill('61 ft 3 in');
    await page.getByLabel('First truss').fill('');
    await page.getByLabel('Edges that are lifted').selectOption('both edges');
    await page.locator('summary', { hasText: 'Volume of all bays' }).first().click();
    const sheets = await sheetsOf(page, 'Letter');
    const all = sheets.join('');
    expect(sheets[0]).toContain('Lengthoftheroof61ft3in');
    expect(sheets[0]).toContain('Edgesthatareliftedbothedges');
    // Of the example it is typed.
    expect(all).not.toContain('Firsttruss');
    expect(all).not.toContain('Addatruss');
    const shown = async (open: boolean): Promise<string> =>
      bare(
        (await page.locator(`details${open ? '[open]' : ':not([open])'} > summary`).allTextContents()).join(
          '\n',
        ),
      );
    expect(all).toContain(await shown(true));
    expect(await shown(false)).not.toBe('');
    expect(all).not.toContain((await shown(false)).slice(0, 40));
  });

  test('a long name of a job whole, on each sheet of the job; the receipt alone asks for no more than itself', async ({
    page,
  }) => {
    const name = 'The third home behind the old sawmill, Harrow Valley Road 1402, space 17 by the creek';
    await page.goto('/plan/');
    await page.getByLabel('Job', { exact: true }).fill(name);
    await page.getByLabel('Job', { exact: true }).blur();
    await expect(page.locator('.job-line')).toContainText('Kept on this phone');
    expect((await sheetsOf(page, 'Letter'))[0]).toContain(`Job${bare(name)}`);
    for (const path of ['/plan/before/', '/plan/heat/', '/plan/patches/', '/plan/ways-in/']) {
      await page.goto(path);
      await expect(page.locator('.job-line')).toContainText(name);
      expect((await sheetsOf(page, 'A4'))[0], path).toContain(bare(name));
    }
    await page.goto('/plan/receipt/');
    await expect(page.locator('.job-line')).toContainText(name);
    const receipt = await sheetsOf(page, 'Letter');
    expect(receipt).toHaveLength(1);
    // Its notes do not print, so nothing bears the number of one.
    expect(receipt[0]).toContain('bymorethan10%(16CFR460.8)');
  });
});

test('on Letter and A4 the card of each opening is one sheet, and the stop about a flue stands on the cards of the opening beside it and of the one that blows behind it', async ({
  page,
}) => {
  await page.goto('/plan/hose-marks/');
  for (const format of ['Letter', 'A4'] as const) {
    const sheets = await sheetsOf(page, format);
    const headed = sheets.map((words) => /Opening(\d),14LarkspurLane/.exec(words)?.[1]);
    expect(headed.slice(headed.indexOf('1')), format).toEqual(['1', '2', '3', '4', '5']);
    const stopped = headed.filter((_, place) => sheets[place]?.includes('ringkeptopenaboutahotflue'));
    expect(stopped, format).toEqual(['4', '5']);
  }
});

test('each sheet of a job bears its name and the day of the print at its head, and the notes of the hose cards stand before the first card', async ({
  page,
}) => {
  await page.goto('/plan/');
  const name = 'Lot "9" \\ Mill';
  await page.getByLabel('Job', { exact: true }).fill(name);
  await page.getByLabel('Job', { exact: true }).blur();
  await expect(page.locator('.job-line')).toContainText('Kept on this phone');
  const day = await page.evaluate(() => {
    const now = new Date();
    return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
      .map((n) => String(n).padStart(2, '0'))
      .join('-');
  });
  for (const sheet of await sheetsOf(page, 'Letter')) expect(sheet).toContain(`${bare(name)},printed${day}`);
  await page.goto('/plan/hose-marks/');
  await expect(page.locator('.job-line')).toContainText(name);
  const sheets = await sheetsOf(page, 'Letter');
  const noted = sheets.findIndex((sheet) => sheet.includes('Numbersonthissheet'));
  const first = sheets.findIndex((sheet) => sheet.includes('Opening1,'));
  expect(noted).toBeGreaterThanOrEqual(0);
  expect(noted).toBeLessThan(first);
  // A card stands on the last, and nothing behind it.
  expect(sheets.at(-1)).toContain('Opening5,');
});

test('on paper the values of rules on a sheet of a job are numbered, and its end tells where each is from; the screen stays as it was', async ({
  page,
}) => {
  await page.goto('/plan/');
  // Of 29 CFR 1926.501, and of common practice: two of the sheet, told as the rulebook does.
  const all = (await sheetsOf(page, 'Letter')).join('');
  expect(all).toContain('Numbersonthissheet');
  expect(all).toMatch(/Heightfromwhichfallprotectionisdue:atleast6ft,reprint,29CFRpart1926/);
  expect(all).toMatch(/Clearanceofacombustionflue:atleast2in,reprint,DOEStandardWorkSpecifications/);
  await expect(page.locator('.numbers')).toHaveCount(0);
  await expect(page.locator('#job [data-note]')).toHaveCount(0);
  // The number beside a value is that of its note.
  const told = await page.evaluate(() => {
    dispatchEvent(new Event('beforeprint'));
    const notes = [...document.querySelectorAll('.numbers li a')].map((link) => link.getAttribute('href'));
    const links = [...document.querySelectorAll<HTMLElement>('#job a.rule[data-note]')];
    const led = links.map((link) => [link.getAttribute('href'), notes[Number(link.dataset.note) - 1]]);
    dispatchEvent(new Event('afterprint'));
    return { notes: new Set(notes).size === notes.length && notes.length, led };
  });
  expect(told.notes).toBeGreaterThan(3);
  expect(told.led.length).toBeGreaterThanOrEqual(told.notes || 1);
  for (const [to, note] of told.led)
    expect(new URL(note ?? '', page.url()).href).toBe(new URL(to ?? '', page.url()).href);
});
