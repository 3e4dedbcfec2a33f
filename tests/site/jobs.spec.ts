import { readFileSync } from 'node:fs';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import decodeQR from 'qr/decode.js';
import { addressOf } from '../../src/calc/declare/address.ts';
import { ONCE } from './once.ts';

const answer = (page: Page) => page.locator('#plan .answer output');
const jobs = (page: Page) => page.locator('.jobs .job');
const line = (page: Page) => page.locator('.job-line');
const roofLength = (page: Page) => page.getByLabel('Length of the roof').first();
const example = JSON.parse(readFileSync('public/example-job.json', 'utf8'));
const ID = 'k3m7p2q9x4w8h5n6';

const asFile = (value: unknown) => ({
  name: 'jobs.json',
  mimeType: 'application/json',
  buffer: Buffer.from(typeof value === 'string' ? value : JSON.stringify(value)),
});

/** A job of its own, begun on the page of jobs; it opens, and the list is gone back to for more. */
async function begin(page: Page, name: string, how: 'example' | 'nothing' = 'example'): Promise<void> {
  await page.getByRole('textbox', { name: 'Address', exact: true }).last().fill(name);
  await page
    .getByRole('button', {
      name: how === 'example' ? 'Begin with the example’s entries' : 'Begin with nothing',
    })
    .click();
  await expect(page.locator('#field-name')).toHaveValue(name);
  await page.goto('/plan/jobs/');
  await expect(jobs(page).first()).toHaveText(name);
}

/** The example under a name of its own, opened from a file on the page of jobs: no page is left for it. */
async function keep(page: Page, name: string): Promise<void> {
  await page.setInputFiles('#open-jobs', asFile({ ...example, name }));
  await expect(jobs(page).first()).toHaveText(name);
}

/** The same, open on its sheet. */
async function keepOpen(page: Page, name: string): Promise<void> {
  await page.goto('/plan/jobs/');
  await keep(page, name);
  await jobs(page).first().click();
  await expect(line(page)).toContainText(`Open: ${name}. Kept on this phone.`);
}

const row = (page: Page, name: string) =>
  page.locator('.jobs > li').filter({ has: page.getByText(name, { exact: true }) });
const unfold = (page: Page, name: string) => row(page, name).locator('summary').click();

/** What a click hands over as a file; not every driver tells of downloads, so the page itself is asked. */
async function downloaded(page: Page, click: () => Promise<void>): Promise<string> {
  await page.evaluate(() => {
    const made = URL.createObjectURL;
    URL.createObjectURL = (blob) => {
      (blob as Blob).text().then((text) => Object.assign(window, { handedOver: text }));
      URL.createObjectURL = made;
      return made(blob);
    };
  });
  await click();
  const handedOver = () => page.evaluate(() => (window as { handedOver?: string }).handedOver);
  await expect.poll(handedOver).toBeDefined();
  const text = (await handedOver()) ?? '';
  await page.evaluate(() => Object.assign(window, { handedOver: undefined }));
  return text;
}

/** Every write to the browser's store fails from now on, as a full one does. */
const fill = (page: Page | BrowserContext) =>
  page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    indexedDB.open = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });

/** From now on the browser's store takes a few letters, and no job. */
const nearlyFill = (page: Page) =>
  page.addInitScript(() => {
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = function (key, text) {
      if (text.length > 1000) throw new DOMException('full', 'QuotaExceededError');
      setItem.call(this, key, text);
    };
    indexedDB.open = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });

/** From now on nothing that waits for a painted page has its turn. */
const holdPaint = (page: Page) =>
  page.evaluate(() => {
    window.requestAnimationFrame = () => 0;
    window.setTimeout = (() => 0) as unknown as typeof setTimeout;
  });

/** The browser refuses its stores outright. */
const refuse = (page: Page) =>
  page.addInitScript(() => {
    for (const name of ['localStorage', 'sessionStorage', 'indexedDB'])
      Object.defineProperty(window, name, {
        get: () => {
          throw new DOMException('refused', 'SecurityError');
        },
      });
  });

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('the page of jobs says what script is for, and what works without', ONCE, async ({ page }) => {
    await page.goto('/plan/jobs/');
    // What stands in noscript is passed over by the usual finders.
    const said = page.locator('main noscript');
    expect(await said.textContent()).toContain('Jobs are kept by the browser with script');
    expect(await said.innerHTML()).toMatch(/href="[^"]*plan\/"/);
    expect(await (await page.request.get('/plan/jobs/')).text()).toContain('<div id="jobs"></div>');
  });
});

test.describe('several jobs', () => {
  test('are begun, copied, renamed, opened, and each keeps its own entries', ONCE, async ({ page }) => {
    await page.goto('/plan/jobs/');
    await expect(page.getByText('This phone keeps no job yet.')).toBeVisible();
    await begin(page, '3 Teasel Row');
    await begin(page, '9 Sorrel Court', 'nothing');
    await unfold(page, '3 Teasel Row');
    await row(page, '3 Teasel Row')
      .getByRole('button', { name: /^Copy (?!the link)/ })
      .click();
    await expect(jobs(page)).toHaveText(['3 Teasel Row (copy)', '9 Sorrel Court', '3 Teasel Row']);
    await expect(jobs(page).first()).toBeFocused();
    await unfold(page, '3 Teasel Row (copy)');
    const box = row(page, '3 Teasel Row (copy)').getByLabel('Address');
    await box.fill('5 Teasel Row');
    await box.press('Enter');
    await expect(page.getByText('Renamed: 5 Teasel Row.')).toBeVisible();
    await expect(jobs(page).first()).toHaveText('5 Teasel Row');
    // Pressed with the address that it has, which is no change of the job.
    const rename = page.getByRole('button', { name: 'Rename 5 Teasel Row' });
    for (const typed of [undefined, ' 5  Teasel Row']) {
      if (typed) await row(page, '5 Teasel Row').getByLabel('Address').fill(typed);
      await rename.click();
      await expect(page.getByText('Not renamed: 5 Teasel Row is its address already.')).toBeVisible();
      await expect(jobs(page).first()).toBeFocused();
      await rename.focus();
    }

    await jobs(page).first().click();
    await expect(line(page)).toContainText('Open: 5 Teasel Row. Kept on this phone.');
    await roofLength(page).fill('50 ft');
    await expect(answer(page)).toContainText('4 holes');
    await page.getByRole('link', { name: 'All jobs on this phone' }).click();
    await jobs(page)
      .filter({ hasText: /^3 Teasel Row$/ })
      .click();
    await expect(line(page)).toContainText('Open: 3 Teasel Row.');
    await expect(answer(page)).toContainText('5 holes');
    await page.getByRole('link', { name: 'All jobs on this phone' }).click();
    await jobs(page).filter({ hasText: '9 Sorrel Court' }).click();
    await expect(page.locator('.problems')).toContainText('Length of the roof');
  });

  test('what was typed in the moment of leaving is kept', ONCE, async ({ page }) => {
    await keepOpen(page, '3 Teasel Row');
    await holdPaint(page);
    await roofLength(page).fill('50 ft');
    await expect(answer(page)).toContainText('4 holes');
    await page.goto('/plan/jobs/');
    await jobs(page).click();
    await expect(roofLength(page)).toHaveValue('50 ft');
  });

  test('an address of another job is followed while a change waits to be kept', ONCE, async ({ page }) => {
    await keepOpen(page, '9 Sorrel Court');
    const another = new URL(page.url()).hash;
    await keepOpen(page, '3 Teasel Row');
    await holdPaint(page);
    await roofLength(page).fill('30 ft');
    await page.evaluate((hash) => {
      location.hash = hash;
    }, another);
    await expect(line(page)).toContainText('Open: 9 Sorrel Court.');
    await page.goto('/plan/jobs/');
    await jobs(page).filter({ hasText: '3 Teasel Row' }).click();
    await expect(roofLength(page)).toHaveValue('30 ft');
  });

  test('a deletion is undone at once, and still after the page was left', ONCE, async ({ page }) => {
    await page.goto('/plan/jobs/');
    await keep(page, '3 Teasel Row');
    await unfold(page, '3 Teasel Row');
    await page.getByRole('button', { name: 'Delete' }).click();
    await expect(jobs(page)).toHaveCount(0);
    const undo = page.getByRole('button', { name: 'Undo: bring 3 Teasel Row back' });
    await expect(undo).toBeFocused();
    await undo.press('Enter');
    await expect(jobs(page)).toHaveText(['3 Teasel Row']);
    await expect(jobs(page)).toBeFocused();

    await unfold(page, '3 Teasel Row');
    await page.getByRole('button', { name: 'Delete' }).click();
    await page.goto('/plan/');
    await expect(line(page)).toContainText('The example job is open');
    await page.goto('/plan/jobs/');
    await page.getByRole('button', { name: 'Bring 3 Teasel Row back' }).click();
    await expect(jobs(page)).toHaveText(['3 Teasel Row']);
    await expect(page.getByRole('heading', { name: 'Deleted lately' })).toHaveCount(0);
  });

  test('the one job that was kept before there were several is one of them now', ONCE, async ({ page }) => {
    const text = readFileSync('tests/job/fixtures/single-kept/larkspur-lane.json', 'utf8');
    await page.goto('/data/');
    await page.evaluate((kept) => localStorage.setItem('heel-to-ridge job', kept), text);
    await page.goto('/plan/');
    await expect(line(page)).toContainText('Open: 14 Larkspur Lane. Kept on this phone.');
    await page.goto('/plan/jobs/');
    await expect(jobs(page)).toHaveText(['14 Larkspur Lane']);
    expect(await page.evaluate(() => localStorage.getItem('heel-to-ridge job'))).toBeNull();
  });

  test('one that a newer copy of the site kept is left as it is, and told', ONCE, async ({ page }) => {
    const text = readFileSync('tests/job/fixtures/kept-1/larkspur-lane.json', 'utf8');
    const newer = text.replace('{"version":1', '{"version":2');
    await page.goto('/data/');
    await page.evaluate(([id, kept]) => localStorage.setItem(`heel-to-ridge job ${id}`, kept), [
      ID,
      newer,
    ] as const);
    await page.goto('/plan/jobs/');
    await expect(page.getByText('made by a newer copy of this site')).toBeVisible();
    expect(
      await downloaded(page, () => page.getByRole('button', { name: 'Save it to a file' }).click()),
    ).toBe(newer);
    expect(await page.evaluate((id) => localStorage.getItem(`heel-to-ridge job ${id}`), ID)).toBe(newer);
    // A copy of the site that knows its form opens that file.
    await page.setInputFiles('#open-jobs', asFile(text));
    await expect(page.getByText('Opened. 1 job kept.')).toBeVisible();
    await expect(jobs(page)).toHaveText(['14 Larkspur Lane']);
  });

  test('a copy is for another home: it is not ready, and has no bags in', ONCE, async ({ page }) => {
    await page.goto('/plan/jobs/');
    await keep(page, '3 Teasel Row');
    await unfold(page, '3 Teasel Row');
    await row(page, '3 Teasel Row')
      .getByRole('button', { name: /^Copy (?!the link)/ })
      .click();
    await expect(page.getByText('Of the first home alone, and not copied: the survey, the')).toBeVisible();
    await jobs(page).filter({ hasText: '(copy)' }).click();
    await expect(answer(page)).toContainText('5 holes');
    // The next sheet is opened as a hand does it, before this one may have begun to run.
    const sheet = (name: string) =>
      page
        .getByRole('navigation', { name: 'Sheets of this job' })
        .getByRole('link', { name, exact: true })
        .click();
    await sheet('Before the fill');
    const verdict = page.locator('#plan').getByText('not looked at everywhere');
    await expect(verdict.first()).toBeVisible();
    await sheet('Fill log');
    await expect(page.locator('.answer output')).toContainText('0 bags in');

    // The first was begun with the example's survey: of another home, it is none.
    await page.goto('/plan/jobs/');
    await jobs(page)
      .filter({ hasText: /^3 Teasel Row$/ })
      .click();
    await sheet('Before the fill');
    await expect(verdict.first()).toBeVisible();
    await expect(page.locator('#field-survey-pests')).toHaveValue('');
    await page.locator('#field-survey-roof_surface').selectOption('worn');
    await page.reload();
    await expect(page.locator('#field-survey-roof_surface')).toHaveValue('worn');
    await expect(page.locator('#field-survey-pests')).toHaveValue('');
  });
});

test.describe('files', () => {
  test('one job, and all of them, go out and come back with id and time', async ({ page, browser }) => {
    await page.goto('/plan/jobs/');
    await keep(page, '3 Teasel Row');
    await keep(page, '9 Sorrel Court');
    const all = await downloaded(page, () => page.getByRole('button', { name: 'Save all jobs' }).click());
    await unfold(page, '3 Teasel Row');
    const one = await downloaded(page, () =>
      row(page, '3 Teasel Row').getByRole('button', { name: 'Save to a file' }).click(),
    );
    expect(JSON.parse(all).jobs[1]).toEqual(JSON.parse(one));

    const elsewhere = await browser.newContext();
    const other = await elsewhere.newPage();
    await other.goto(new URL('/plan/jobs/', page.url()).href);
    await other.setInputFiles('#open-jobs', asFile(one));
    await expect(other.getByText('Opened. 1 job kept.')).toBeVisible();
    await other.setInputFiles('#open-jobs', asFile(all));
    await expect(other.getByText('Opened. 1 job kept. 1 job here already, the same.')).toBeVisible();
    await expect(jobs(other)).toHaveText(['9 Sorrel Court', '3 Teasel Row']);
    expect(await downloaded(other, () => other.getByRole('button', { name: 'Save all jobs' }).click())).toBe(
      all,
    );
    await elsewhere.close();
  });

  test('a file with a job that is here, and differs, asks: keep both, or replace', ONCE, async ({ page }) => {
    await page.goto('/plan/jobs/');
    await page.setInputFiles('#open-jobs', asFile({ ...example, id: ID }));
    await expect(jobs(page)).toHaveText(['14 Larkspur Lane']);
    const changed = { ...example, id: ID, home: { ...example.home, length: '50 ft' } };
    await page.setInputFiles('#open-jobs', asFile(changed));
    await expect(
      page.getByRole('heading', { name: '14 Larkspur Lane is on this phone already' }),
    ).toBeFocused();
    await page.getByRole('button', { name: 'Keep both' }).click();
    await expect(jobs(page)).toHaveCount(2);

    await page.setInputFiles('#open-jobs', asFile(changed));
    await page.getByRole('button', { name: 'Replace the one here' }).click();
    await expect(jobs(page)).toHaveCount(2);
    await expect(page.getByRole('button', { name: 'Bring 14 Larkspur Lane back' })).toBeVisible();
    await page.goto(`/plan/#job=${ID}`);
    await expect(answer(page)).toContainText('4 holes');
  });
});

test(
  'what is typed while a file waits for its answer stands among the deleted once it is replaced',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/jobs/');
    await page.setInputFiles('#open-jobs', asFile({ ...example, id: ID }));
    await jobs(page).click();
    await expect(line(page)).toContainText('Open: 14 Larkspur Lane.');
    const theirs = { ...example, id: ID, home: { ...example.home, length: '50 ft' } };
    await page.setInputFiles('#open-job', asFile(theirs));
    await expect(page.getByRole('button', { name: 'Replace the one here' })).toBeVisible();
    await roofLength(page).fill('30 ft');
    await page.getByRole('button', { name: 'Replace the one here' }).click();
    await expect(roofLength(page)).toHaveValue('50 ft');
    await page.goto('/plan/jobs/');
    await page.getByRole('button', { name: 'Bring 14 Larkspur Lane back' }).click();
    // Both bear the same name; the one that came back was changed before.
    await jobs(page).last().click();
    await expect(roofLength(page)).toHaveValue('30 ft');
  },
);

test('a second file leaves the question of the first where it was', ONCE, async ({ page }) => {
  await page.goto('/plan/jobs/');
  await page.setInputFiles('#open-jobs', asFile({ ...example, id: ID }));
  const theirs = { ...example, id: ID, home: { ...example.home, length: '50 ft' } };
  await page.setInputFiles('#open-jobs', asFile(theirs));
  const question = page.getByRole('heading', { name: '14 Larkspur Lane is on this phone already' });
  await expect(question).toBeVisible();
  await keep(page, '9 Sorrel Court');
  await expect(question).toBeVisible();
  // The same file once more asks the same, once.
  await page.setInputFiles('#open-jobs', asFile(theirs));
  await page.getByRole('button', { name: 'Keep both' }).click();
  await expect(question).toHaveCount(0);
  await expect(jobs(page)).toHaveCount(3);
});

test(
  'one that was brought back is not let go of, though the browser lost word of that',
  ONCE,
  async ({ page }) => {
    await keepOpen(page, '3 Teasel Row');
    await page.goto('/plan/jobs/');
    await expect(jobs(page)).toHaveCount(1);
    // What a killed browser may leave: the first copy says deleted, long ago, and the second, a change later, says kept.
    await page.evaluate(async () => {
      const key = Object.keys(localStorage).find((each) => /^heel-to-ridge job \w/.test(each)) ?? '';
      const kept = JSON.parse(localStorage.getItem(key) ?? '');
      const open = indexedDB.open('heel-to-ridge');
      await new Promise((done) => {
        open.onsuccess = done;
      });
      const writing = open.result.transaction('jobs', 'readwrite');
      writing.objectStore('jobs').put(JSON.stringify({ ...kept, revision: kept.revision + 2 }), key);
      await new Promise((done) => {
        writing.oncomplete = done;
      });
      open.result.close();
      localStorage.setItem(
        key,
        JSON.stringify({ ...kept, revision: kept.revision + 1, deleted: '2020-01-01T00:00:00Z' }),
      );
    });
    await page.reload();
    await expect(jobs(page)).toHaveText(['3 Teasel Row']);
  },
);

test('what was told of one job goes as an address opens another', ONCE, async ({ page }) => {
  await page.goto(`/plan/#job=${ID}`);
  const told = page.getByText('The job of this address is not kept on this phone.');
  await expect(told).toBeVisible();
  await page.evaluate(() => {
    location.hash = 'name=9+Sorrel+Court';
  });
  await expect(line(page)).toContainText('9 Sorrel Court');
  await expect(told).toHaveCount(0);
});

test.describe('files that are none', () => {
  const told: readonly [what: string, text: string, says: RegExp][] = [
    ['no JSON', '{', /Not opened\..*not JSON/],
    ['another program’s', '{"format":"x"}', /Not opened\..*the format "x"/],
    [
      'a newer copy’s',
      JSON.stringify({ ...example, version: 99 }),
      /version \d+, made by a newer copy.*update this copy first/,
    ],
    ['with mischief in it', JSON.stringify({ ...example, '<img src=x onerror=alert(1)>': 1 }), /unknown key/],
    ['far too long', 'x'.repeat(10_100_000), /10100000 characters/],
  ];
  test('each is told in a sentence, and nothing is kept', ONCE, async ({ page }) => {
    for (const [what, text, says] of told)
      await test.step(what, async () => {
        await page.goto('/plan/jobs/');
        await expect(page.getByText('This phone keeps no job yet.')).toBeVisible();
        await page.setInputFiles('#open-jobs', asFile(text));
        await expect(page.getByText(says)).toBeVisible();
        await expect(jobs(page)).toHaveCount(0);
      });
  });
});

test.describe('a link', () => {
  test('and its QR code carry the whole job to another phone, which is asked first', async ({
    page,
    browser,
  }) => {
    const requests: string[] = [];
    await page.goto('/plan/');
    await roofLength(page).fill('50 ft');
    await expect(answer(page)).toContainText('4 holes');
    await page.getByText('Send this job on').click();
    // Whoever sends the link leaves a copy where the message is kept.
    await expect(page.locator('.hand-on')).toContainText('the message or mail that you send it in keeps one');
    await page.getByRole('button', { name: 'Make a link' }).click();
    const link = await page.getByLabel('Link to 14 Larkspur Lane').inputValue();
    expect(link).toMatch(/\/plan\/jobs\/#carried=1\.[dp]\.[\w-]+\.[0-9a-f]{8}$/);

    await page.getByRole('button', { name: 'Draw a QR code' }).click();
    const code = page.getByRole('img', { name: 'QR code of the link to 14 Larkspur Lane' });
    await expect(code).toBeVisible();
    expect(decoded(await code.locator('path').getAttribute('d'), await code.getAttribute('viewBox'))).toBe(
      link,
    );

    const elsewhere = await browser.newContext();
    const other = await elsewhere.newPage();
    other.on('request', (request) => requests.push(request.url()));
    await other.goto(link);
    await expect(other.getByRole('heading', { name: 'A job came with this link' })).toBeFocused();
    await expect(jobs(other)).toHaveCount(0);
    expect(new URL(other.url()).hash).toBe('');
    await other.getByRole('button', { name: 'Keep it on this phone' }).click();
    await expect(jobs(other)).toHaveText(['14 Larkspur Lane']);
    await jobs(other).click();
    await expect(answer(other)).toContainText('4 holes');
    expect(requests.filter((url) => url.includes('carried'))).toEqual([]);

    // The same link again: there is nothing to keep.
    await other.goto(link);
    await expect(other.getByText('The two are the same')).toBeVisible();
    await elsewhere.close();
  });

  test('is plain where the browser can’t pack, and opens as well', ONCE, async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'CompressionStream', { value: undefined });
    });
    await page.goto('/plan/');
    await page.getByText('Send this job on').click();
    await page.getByRole('button', { name: 'Make a link' }).click();
    const link = await page.getByLabel('Link to 14 Larkspur Lane').inputValue();
    expect(link).toContain('#carried=1.p.');
    await page.getByRole('button', { name: 'Draw a QR code' }).click();
    await expect(page.getByText('too large for one QR code')).toBeVisible();
    await page.goto(link);
    await page.getByRole('button', { name: 'Keep it on this phone' }).click();
    await expect(jobs(page)).toHaveText(['14 Larkspur Lane']);
  });

  test('that is cut off, newer, or mischief is told in a sentence', ONCE, async ({ page }) => {
    const link = readFileSync('tests/job/fixtures/link-1/packed.txt', 'utf8').trim();
    const told: readonly [fragment: string, says: RegExp][] = [
      [link.slice(0, 900), /cut off or wrongly copied/],
      [link.replace('1.d.', '2.d.'), /made by a newer copy/],
      [`${link.slice(0, 300)}AAAA${link.slice(304)}`, /letters that differ/],
      ['carried=<img src=x onerror=alert(1)>', /no known form/],
    ];
    for (const [fragment, says] of told) {
      await page.goto('/data/');
      await page.goto(`/plan/jobs/#${fragment}`);
      await expect(page.getByText(says)).toBeVisible();
      await expect(jobs(page)).toHaveCount(0);
    }
    await page.goto('/data/');
    await page.goto(`/plan/heat/#${link}`);
    await expect(page.getByRole('heading', { name: 'A job came with this link' })).toBeVisible();
  });

  test('to a job that is not on this phone says so', ONCE, async ({ page }) => {
    await page.goto(`/plan/#job=${ID}`);
    await expect(page.getByText('is not kept on this phone')).toBeVisible();
    await expect(answer(page)).toContainText('5 holes');
  });
});

test.describe('where nothing can be kept', () => {
  test('a full store is told, work goes on from sheet to sheet, a file is offered', async ({ page }) => {
    await fill(page);
    await page.goto('/plan/');
    await roofLength(page).fill('50 ft');
    await expect(answer(page)).toContainText('4 holes');
    await expect(line(page).getByRole('status')).toContainText('Not kept: the browser’s store is full.');
    const file = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save this job to a file' }).click(),
    );
    expect(JSON.parse(file).home.length).toBe('50 ft');
    await page
      .getByRole('navigation', { name: 'Sheets of this job' })
      .getByRole('link', { name: 'Fill log' })
      .click();
    await expect(page.getByRole('region', { name: /^Hole \d/ })).toHaveCount(4);
    await expect(line(page)).toContainText('not kept on this phone');
  });

  test(
    'a nearly full store is told of a job that comes, among the jobs and on its sheet',
    ONCE,
    async ({ page }) => {
      await nearlyFill(page);
      await page.goto('/plan/jobs/');
      await page.setInputFiles('#open-jobs', asFile(example));
      await expect(page.getByRole('status').filter({ hasText: 'Opened.' })).toContainText(
        'Opened. Not kept: 1 job, since the browser’s store is full. Work goes on while this page is open',
      );
      await expect(row(page, '14 Larkspur Lane')).toContainText('Not kept: the browser’s store is full.');
      await page.goto('/plan/');
      await page.setInputFiles('#open-job', asFile(example));
      await expect(line(page).getByRole('status')).toContainText('Not kept: the browser’s store is full.');
    },
  );

  test('a full store replaces no job, since it would not keep the one here', ONCE, async ({ page }) => {
    await page.goto('/plan/jobs/');
    await page.setInputFiles('#open-jobs', asFile({ ...example, id: ID }));
    await expect(jobs(page)).toHaveText(['14 Larkspur Lane']);
    // What stands in its place can still be changed for another.
    await page.evaluate(() => {
      const { setItem } = Storage.prototype;
      Storage.prototype.setItem = function (key, text) {
        if (this.getItem(key) === null) throw new DOMException('full', 'QuotaExceededError');
        setItem.call(this, key, text);
      };
    });
    await page.setInputFiles('#open-jobs', asFile({ ...example, id: ID, name: '9 Sorrel Court' }));
    const question = page.getByRole('heading', {
      name: '9 Sorrel Court is on this phone already, as 14 Larkspur Lane',
    });
    await expect(question).toBeFocused();
    await page.getByRole('button', { name: 'Replace the one here' }).click();
    await expect(page.getByText('Not replaced: 14 Larkspur Lane stays as it was.')).toBeVisible();
    await expect(question).toBeVisible();
    await page.reload();
    await expect(jobs(page)).toHaveText(['14 Larkspur Lane']);
  });

  test('a store that is refused outright is told, on the sheets and among the jobs', async ({ page }) => {
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    await refuse(page);
    await page.goto('/plan/');
    await roofLength(page).fill('50 ft');
    await expect(answer(page)).toContainText('4 holes');
    await expect(line(page)).toContainText('this browser refuses to keep anything');
    await page.goto('/plan/jobs/');
    await expect(page.getByRole('alert')).toContainText('Nothing new is kept: this browser refuses');
    // Held by no store, it is not in the list of a page gone back to: it goes along in the address it opens at.
    await page.getByRole('textbox', { name: 'Address', exact: true }).last().fill('3 Teasel Row');
    await page.getByRole('button', { name: 'Begin with the example’s entries' }).click();
    await expect(line(page)).toContainText('3 Teasel Row');
    await expect(answer(page)).toContainText('5 holes');
    expect(errors).toEqual([]);
  });
});

test.describe('two tabs on one job', () => {
  async function two(context: BrowserContext): Promise<[Page, Page]> {
    const first = await context.newPage();
    await keepOpen(first, '3 Teasel Row');
    const second = await context.newPage();
    await second.goto(first.url());
    await expect(line(second)).toContainText('Open: 3 Teasel Row');
    await roofLength(first).fill('50 ft');
    await expect(line(second)).toContainText('was changed in another tab');
    return [first, second];
  }

  test('the second says so, and takes the change when told to', async ({ context }) => {
    const [first, second] = await two(context);
    await expect(answer(second)).toContainText('5 holes');
    await second.getByRole('button', { name: 'Take the change' }).click();
    await expect(answer(second)).toContainText('4 holes');
    await roofLength(second).fill('30 ft');
    await expect(line(first)).toContainText('was changed in another tab');
  });

  test('or keeps its own as a copy, also when somebody just types on', ONCE, async ({ context }) => {
    const [first, second] = await two(context);
    await second
      .getByLabel('Width of the cavity')
      .or(second.getByLabel('Length of the roof'))
      .last()
      .fill('30 ft');
    await expect(line(second)).toContainText('kept as a copy: 3 Teasel Row (copy)');
    await expect(answer(first)).toContainText('4 holes');
    await second.getByRole('link', { name: 'All jobs on this phone' }).click();
    await expect(jobs(second)).toHaveText(['3 Teasel Row (copy)', '3 Teasel Row']);

    const third = await context.newPage();
    await third.goto(first.url());
    // A tab that opens the job after the change has nothing to ask.
    await expect(line(third)).toContainText('Open: 3 Teasel Row');
    await roofLength(first).fill('52 ft');
    await third.getByRole('button', { name: 'Keep mine as a copy' }).click();
    await expect(line(third)).toContainText('Open: 3 Teasel Row (copy 2). Kept on this phone.');
  });

  test('what is not kept yet as another tab changes the job is kept as a copy', ONCE, async ({ context }) => {
    const [first, second] = await two(context);
    await second.getByRole('button', { name: 'Take the change' }).click();
    await holdPaint(second);
    await roofLength(second).fill('30 ft');
    await roofLength(first).fill('52 ft');
    await expect(line(second)).toContainText('kept as a copy: 3 Teasel Row (copy)');
    await second.getByRole('link', { name: 'All jobs on this phone' }).click();
    await expect(jobs(second)).toHaveText(['3 Teasel Row (copy)', '3 Teasel Row']);
    await jobs(second).last().click();
    await expect(roofLength(second)).toHaveValue('52 ft');
  });

  test('one that was deleted in another tab can be brought back', async ({ context }) => {
    const [first, second] = await two(context);
    await second.getByRole('button', { name: 'Take the change' }).click();
    await second.getByRole('link', { name: 'All jobs on this phone' }).click();
    await unfold(second, '3 Teasel Row');
    await second.getByRole('button', { name: 'Delete' }).click();
    await expect(line(first)).toContainText('was deleted in another tab');
    await first.getByRole('button', { name: 'Bring it back' }).click();
    await expect(jobs(second)).toHaveText(['3 Teasel Row']);
  });
});

test('an address with any entries does no harm, and is told', ONCE, async ({ page }) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  const fragments = [
    'job=x',
    'job.0.x=1&name=y',
    `job=${ID}&home.length=50+ft`,
    'nmae=x',
    'roof.obstacles=7',
    addressOf({ name: '<script>alert(1)</script>', home: { length: 'NaN ft' } }),
    '%E0%A4%A',
    '&&&===',
  ];
  for (const fragment of fragments) {
    await page.goto('/data/');
    await page.goto(`/plan/#${fragment}`);
    await expect(line(page)).toBeVisible();
    await expect(page.locator('#plan')).not.toContainText(/NaN(?! ft)|undefined/);
  }
  expect(errors).toEqual([]);
});

/** What another reads from the code: its path painted, four dots a module. */
function decoded(path: string | null, viewBox: string | null): string {
  const size = Number(viewBox?.split(' ')[2]);
  const scale = 4;
  const data = new Uint8ClampedArray(size * scale * size * scale * 4).fill(255);
  for (const [, x, y] of (path ?? '').matchAll(/M(\d+) (\d+)h/g)) {
    for (let down = 0; down < scale; down += 1)
      for (let right = 0; right < scale; right += 1) {
        const at = ((Number(y) * scale + down) * size * scale + Number(x) * scale + right) * 4;
        data.fill(0, at, at + 3);
      }
  }
  return decodeQR({ width: size * scale, height: size * scale, data });
}

test(
  'the way to the head of the page leaves the job open that came by its address',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/jobs/');
    await keep(page, 'Kept before');
    const { format: _, version: __, ...entries } = example;
    await page.goto(`/plan/#${addressOf({ ...entries, name: 'By its address' })}`);
    await page.reload();
    await expect(page.locator('#field-name')).toHaveValue('By its address');
    await page.getByRole('link', { name: 'To the page' }).press('Enter');
    await expect(page).toHaveURL(/By(\+|%20)its/);
    await expect(page.locator('#field-name')).toHaveValue('By its address');
  },
);

test(
  'every button of a job is called after it, and what is left gives the focus on',
  ONCE,
  async ({ page }) => {
    await page.goto('/plan/jobs/');
    for (const name of ['Lot 1', 'Lot 2']) await begin(page, name, 'nothing');
    await page.locator('.jobs details').evaluateAll((all) => {
      for (const each of all) (each as HTMLDetailsElement).open = true;
    });
    const rows = page.locator('.jobs > li');
    for (const name of ['Lot 1', 'Lot 2']) {
      const buttons = rows.filter({ hasText: name }).getByRole('button');
      expect(await buttons.count()).toBe(await buttons.and(page.getByRole('button', { name })).count());
      await expect(page.getByRole('textbox', { name: `Address of ${name}`, exact: true })).toHaveCount(1);
    }

    await page.getByRole('button', { name: 'Make a link to Lot 2' }).click();
    const link = await page.getByLabel('Link to Lot 2').inputValue();
    await page.evaluate((to) => {
      location.hash = new URL(to).hash;
    }, link);
    await page.getByRole('button', { name: 'Leave what is here' }).click();
    await expect(page.getByRole('status').filter({ hasText: 'Lot 2 is left.' })).toBeFocused();
  },
);
