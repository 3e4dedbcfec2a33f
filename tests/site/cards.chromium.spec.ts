import { statSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { everyPage } from './pages.ts';

// In Chromium alone: only it prints to PDF under test.

const cards = everyPage.filter((path) => /^\/cards\/(?!all\/).+/.test(path));
const papers = ['Letter', 'A4'] as const;
/** The smallest type of a step or a caution, in points, and that of a word in a drawing. */
const SMALLEST = { step: 10, label: 7 };

async function sheetsOf(page: Page, format: (typeof papers)[number]): Promise<number> {
  const pdf = await page.pdf({ format });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

test('there are cards to print', () => {
  expect(cards.length).toBeGreaterThan(0);
});

// One page for all: to open it anew takes longer than to look.
test('each card prints on one sheet of Letter and of A4, in type that can be read, a box at each step', async ({
  page,
}) => {
  // Long, and nothing in it can be left out where the machine is busy.
  test.slow();
  for (const path of cards)
    await test.step(path, async () => {
      await page.emulateMedia({ media: null });
      await page.goto(path);
      for (const paper of papers)
        expect
          .soft(
            await sheetsOf(page, paper),
            `sheets of ${path} on ${paper}: split the procedure, or say less`,
          )
          .toBe(1);
      await page.emulateMedia({ media: 'print' });
      const { type, label, boxes, steps, said, shown } = await page.locator('.card').evaluate((card) => {
        const points = (each: Element, scale = 1) =>
          Number.parseFloat(getComputedStyle(each).fontSize) * scale * (72 / 96);
        const scaleOf = (each: Element) => {
          const svg = each.closest('svg');
          return svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
        };
        const read = [...card.querySelectorAll('.columns p')];
        const listed = [...card.querySelectorAll('.columns > ol > li')];
        return {
          type: Math.min(...read.map((each) => points(each))),
          label: Math.min(
            ...[...card.querySelectorAll('svg text')].map((each) => points(each, scaleOf(each))),
          ),
          steps: listed.length,
          boxes: listed.filter((each) => getComputedStyle(each, '::before').borderTopStyle === 'solid')
            .length,
          said: card.querySelectorAll('.drawing').length,
          shown: [...card.querySelectorAll('.drawing svg')].filter(
            (each) => each.getBoundingClientRect().width > 150,
          ).length,
        };
      });
      expect.soft(type, path).toBeGreaterThanOrEqual(SMALLEST.step - 0.01);
      // A card without a drawing has no word in one: its smallest is endless.
      expect.soft(label, path).toBeGreaterThanOrEqual(SMALLEST.label);
      expect.soft(steps, path).toBeGreaterThan(0);
      expect.soft(boxes, path).toBe(steps);
      expect.soft(shown, path).toBe(said);
    });
});

test.describe('all cards in one go', () => {
  const bring = (page: Page): Promise<void> => page.getByRole('button', { name: /^Bring all/ }).click();

  test('the list of cards leads to a page that brings each card of the list, in its order, and prints it on a sheet of Letter and of A4', async ({
    page,
  }) => {
    await page.goto('/cards/');
    const listed = await page.locator('.list a strong').allTextContents();
    expect(listed).toHaveLength(cards.length);
    await page.getByRole('link', { name: /^All cards in one go/ }).click();
    await expect(page.locator('.last-checked').first()).toHaveText(/^checked/);
    await bring(page);
    await expect(page.getByRole('status').last()).toHaveText(/^All \d+ cards are here/);
    expect(await page.locator('.card h1').allTextContents()).toEqual(listed);
    for (const paper of papers) expect(await sheetsOf(page, paper), paper).toBe(cards.length);
    // As on the card's own page, and none as small as without script.
    const heads = await page.locator('.card .from').allTextContents();
    for (const head of heads)
      expect(head).toMatch(/rulebook \d{4}\.\d+, built \d{4}-\d\d-\d\d, checked \d{4}-\d\d-\d\d/);
    const sizes = await page
      .locator('.card')
      .evaluateAll((all) => all.map((each) => Number((each as HTMLElement).dataset.size)));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(SMALLEST.step);
    // Cut out of pages at other addresses.
    const links = await page
      .locator('.card a[href]')
      .evaluateAll((all) => all.map((each) => new URL((each as HTMLAnchorElement).href).pathname));
    expect(links.filter((path) => !everyPage.includes(path))).toEqual([]);
    expect(await page.locator('[id="step-1"]').count()).toBe(0);
    await page.evaluate(() => {
      Object.assign(window, { print: () => document.body.setAttribute('data-printed', '') });
    });
    await page.getByRole('button', { name: `Print all ${cards.length} cards` }).click();
    await expect(page.locator('body')).toHaveAttribute('data-printed', '');
    // Of a recalled rulebook nothing is worked by: the stop that says so would stand on the first sheet alone.
    await page.evaluate(() => document.documentElement.setAttribute('data-recalled', ''));
    await expect(page.locator('.card').first()).toBeHidden();
  });

  test('a card that does not come is named, none is ready to print, and another press brings all', async ({
    page,
  }) => {
    await page.route('**/cards/patching/', (route) => route.abort());
    await page.goto('/cards/all/');
    await bring(page);
    await expect(page.getByRole('status').last()).toHaveText(
      /^These did not come: Patch the hole\. Nothing is ready to print/,
    );
    await expect(page.locator('.card')).toHaveCount(0);
    await page.unroute('**/cards/patching/');
    await bring(page);
    await expect(page.locator('.card')).toHaveCount(cards.length);
  });
});

/** The cards with the most on them: where these fit, so do the others. */
const fullest = [...cards]
  .map((path) => ({ path, size: statSync(`dist${path}index.html`).size }))
  .sort((a, b) => b.size - a.size)
  .slice(0, 5);

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('the fullest cards print on one sheet of Letter and of A4', async ({ page }) => {
    expect(fullest).toHaveLength(5);
    for (const { path } of fullest) {
      await page.goto(path);
      for (const paper of papers) expect(await sheetsOf(page, paper), `${path} on ${paper}`).toBe(1);
    }
  });
});

test('a card with twice as many steps is seen to run over', async ({ page }) => {
  await page.goto(cards[0] ?? '');
  await page
    .locator('.card .columns')
    .evaluate((columns) => columns.append(...[...columns.children].map((each) => each.cloneNode(true))));
  expect(await sheetsOf(page, 'Letter')).toBeGreaterThan(1);
});

/** Pages whose numbers stand again at their end; the questions of the lessons have their sources beside their answers. */
const written = everyPage.filter((path) => /^\/(do|trouble|safety|know|cards)\/.+/.test(path));

test('each number of a page bears the number of its note, and the note leads to the same rule', async ({
  page,
}) => {
  await page.goto('/');
  // Written by the build, so the page needs no opening: its words are read.
  const found = await page.evaluate(async (paths) => {
    const parser = new DOMParser();
    return await Promise.all(
      paths.map(async (path) => {
        const read = parser.parseFromString(await (await fetch(path)).text(), 'text/html');
        const notes = [...read.querySelectorAll('.numbers li a, ol.notes li a')].map((each) =>
          each.getAttribute('href'),
        );
        const values = [
          ...read.querySelectorAll<HTMLElement>(':is(.prose, .card .columns) a.rule:not(.drawing *)'),
        ];
        const first = [...new Set(values.map((each) => Number(each.dataset.note)))];
        return {
          path,
          count: values.length,
          wrong: values
            .filter((each) => notes[Number(each.dataset.note) - 1] !== each.getAttribute('href'))
            .map((each) => `${each.textContent} has note ${each.dataset.note}`),
          order: first.join() === notes.map((_, place) => place + 1).join(),
        };
      }),
    );
  }, written);
  expect(found.map(({ path }) => path)).toEqual(written);
  for (const { path, wrong, order } of found) {
    expect(wrong, path).toEqual([]);
    expect(order, `${path}: notes in the order of the page`).toBe(true);
  }
  expect(found.reduce((all, { count }) => all + count, 0)).toBeGreaterThan(0);
});

/** As a browser tells what it draws: `"1"`, or the attribute that holds it. */
const ON_THE_LINE = /^"\u202f\[" ?(?:"1"|attr\(data-note\)) ?"\]"$|^"\u202f\[1\]"$/;

for (const [path, screen, sheet] of [
  ['/do/patching/', 'none', '.prose'],
  // A card is read on the screen as it is printed.
  ['/cards/patching/', ON_THE_LINE, '.card'],
] as const)
  test(`${path}: the number of a note stands at its value in brackets on the line, where it is read as no exponent`, async ({
    page,
  }) => {
    await page.goto(path);
    const mark = () =>
      page
        .locator(`${sheet} a.rule[data-note]`)
        .first()
        .evaluate((each) => {
          const { content, verticalAlign } = getComputedStyle(each, '::after');
          return { content, verticalAlign };
        });
    expect(await mark()).toEqual({
      content: screen === 'none' ? 'none' : expect.stringMatching(screen),
      verticalAlign: 'baseline',
    });
    await page.emulateMedia({ media: 'print' });
    expect(await mark()).toEqual({ content: expect.stringMatching(ON_THE_LINE), verticalAlign: 'baseline' });
    // The list of the notes shows the same form.
    const note = await page
      .locator('.numbers li, ol.notes li')
      .first()
      .evaluate((each) => getComputedStyle(each, '::before').content);
    expect(note).toMatch(/^"\["/);
  });
