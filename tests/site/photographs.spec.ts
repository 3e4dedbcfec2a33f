import { expect, type Page, test } from '@playwright/test';
import { strFromU8, unzipSync } from 'fflate';
import { MOST_PHOTOGRAPHS } from '../../src/job/photograph.ts';
import { jpegOf, MAKE, turned } from './jpeg.ts';
import { ONCE } from './once.ts';

const line = (page: Page) => page.locator('.job-line');
const shown = (page: Page) => page.locator('figure.photograph');
const answer = (page: Page) => page.locator('.answer output');
const entry = (page: Page, id: string) => page.locator(`#photograph-${id}`);

const asFile = (buffer: Buffer, name = 'picture.jpg', mimeType = 'image/jpeg') => ({
  name,
  mimeType,
  buffer,
});

async function open(page: Page): Promise<void> {
  await page.goto('/plan/photographs/');
  await expect(page.locator('#take-roof-before')).toBeAttached();
}

/** What a click hands over as a file; not every driver tells of downloads, so the page itself is asked. */
async function handedOver(page: Page, click: () => Promise<void>): Promise<Buffer> {
  await page.evaluate(() => {
    const made = URL.createObjectURL;
    URL.createObjectURL = (blob) => {
      if ((blob as Blob).type === 'application/zip')
        (blob as Blob)
          .arrayBuffer()
          .then((bytes) => Object.assign(window, { handed: [...new Uint8Array(bytes)] }));
      return made(blob);
    };
  });
  await click();
  const handed = () => page.evaluate(() => (window as { handed?: number[] }).handed);
  await expect.poll(async () => (await handed())?.length ?? 0).toBeGreaterThan(0);
  return Buffer.from((await handed()) ?? []);
}

/** What a store of photographs holds first goes, or becomes as many, without the page that shows it. */
const behindThePage = (
  page: Page,
  store: 'known' | 'pictures',
  first: 'goes' | { readonly asMany: number },
): Promise<void> =>
  page.evaluate(
    async ([name, change]) => {
      const answer = <T>(request: IDBRequest<T>) =>
        new Promise<T>((done, failed) => {
          request.onsuccess = () => done(request.result);
          request.onerror = () => failed(request.error);
        });
      const database = await answer(indexedDB.open('heel-to-ridge photographs'));
      const kept = database.transaction(name, 'readwrite').objectStore(name);
      const [[key], [value]] = [await answer(kept.getAllKeys()), await answer(kept.getAll())];
      if (key === undefined) throw new Error(`found nothing in ${name}, expected a photograph`);
      if (change === 'goes') await answer(kept.delete(key));
      else
        for (let more = 1; more < change.asMany; more++) {
          const id = `copy${String(more).padStart(12, '0')}`;
          await answer(kept.put({ ...value, id }, id));
        }
    },
    [store, first] as const,
  );

/** The size of the first picture shown, and its colours near the middle of top, bottom, left and right. */
const looksLike = (page: Page) =>
  shown(page)
    .first()
    .locator('img')
    .evaluate(async (image: HTMLImageElement) => {
      await image.decode();
      const { naturalWidth: width, naturalHeight: height } = image;
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [width, height];
      const pen = canvas.getContext('2d');
      pen?.drawImage(image, 0, 0);
      const at = (x: number, y: number) => {
        const [red = 0, , blue = 0] = pen?.getImageData(x * width, y * height, 1, 1).data ?? [];
        return red > 200 && blue < 60 ? 'red' : blue > 200 && red < 60 ? 'blue' : `${red}, ${blue}`;
      };
      return {
        width,
        height,
        top: at(0.5, 0.1),
        bottom: at(0.5, 0.9),
        left: at(0.1, 0.5),
        right: at(0.9, 0.5),
      };
    });

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test(
    'the list stands alone, each entry with its step, and nothing that can’t be used',
    ONCE,
    async ({ page }) => {
      await page.goto('/plan/photographs/');
      await expect(entry(page, 'roof-before')).toContainText('First visit and survey, step 9');
      await expect(page.locator('.photographs > li')).toHaveCount(32);
      // Not every driver turns script off: what is sent is asked.
      expect(await (await page.request.get('/plan/photographs/')).text()).not.toMatch(
        /type="file"|class="acts"/,
      );
    },
  );
});

test('a photograph is made small, turned the right way up, kept without what the camera wrote, and stays with its job', async ({
  page,
}) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  await open(page);
  await expect(line(page)).toContainText('The example job is open');
  const wide = await jpegOf(page, { width: 2400, height: 1200 });
  await page.setInputFiles('#take-roof-before', asFile(turned(wide)));
  await expect(
    page.getByText('1 photograph of “The roof from the ladder, all of it and close up” added.'),
  ).toBeVisible();
  await expect(line(page)).toContainText('Kept on this phone');
  await expect(answer(page)).toHaveText(/^1 photograph, \d+ kB$/);
  await expect(shown(page)).toHaveCount(1);
  // Lying on its side it was red on the left; turned by a quarter to the right, red is above.
  expect(await looksLike(page)).toMatchObject({ width: 800, height: 1600, top: 'red', bottom: 'blue' });

  await page.getByLabel('Words for photograph 1').fill('North side, "rust" <b>');
  await page.reload();
  await expect(page.getByLabel('Words for photograph 1')).toHaveValue('North side, "rust" <b>');
  expect(await looksLike(page)).toMatchObject({ width: 800, height: 1600 });

  const file = await handedOver(page, () =>
    page.getByRole('button', { name: 'Save the job with its' }).click(),
  );
  const files = unzipSync(file);
  const [picture = ''] = Object.keys(files).filter((name) => name.endsWith('.jpg'));
  const bytes = Buffer.from(files[picture] ?? []);
  expect(turned(wide).includes(MAKE)).toBe(true);
  expect(bytes.includes(MAKE)).toBe(false);
  expect(bytes.includes('Exif')).toBe(false);
  expect(JSON.parse(strFromU8(files['job.json'] ?? new Uint8Array())).name).toBe('14 Larkspur Lane');
  expect(errors).toEqual([]);
});

/** Where a job opens: the list of jobs has the same links, to the job that was open before. */
const opened = /\/plan\/(?:[?#].*)?$/;

test(
  'several for one entry; one removed comes back; each job has its own; a copy has none',
  ONCE,
  async ({ page }) => {
    await open(page);
    const one = await jpegOf(page, { width: 60, height: 40 });
    await page.setInputFiles('#choose-patches', [asFile(one), asFile(one, 'b.jpg'), asFile(one, 'c.jpg')]);
    await expect(entry(page, 'patches').locator('h3')).toContainText('(3)');
    expect(await looksLike(page)).toMatchObject({ width: 60, height: 40, left: 'red', right: 'blue' });
    await page.getByRole('button', { name: 'Remove photograph 2' }).click();
    await expect(shown(page)).toHaveCount(2);
    const undo = page.getByRole('button', { name: 'Undo: put the photograph back' });
    await expect(undo).toBeFocused();
    await expect(entry(page, 'patches').getByRole('button', { name: /^Undo/ })).toHaveCount(1);
    await undo.press('Enter');
    await expect(shown(page)).toHaveCount(3);
    await expect(entry(page, 'patches').locator('h3')).toBeFocused();

    await page.getByRole('link', { name: 'All jobs on this phone' }).click();
    const row = page.locator('.jobs > li').filter({ hasText: '14 Larkspur Lane' }).first();
    await expect(row).toContainText(/3 photographs, \d+ kB/);
    await row.locator('summary').click();
    await row.getByRole('button', { name: /^Copy (?!the link)/ }).click();
    await expect(
      page.getByText('not copied: the survey').filter({ hasText: 'the photographs.' }),
    ).toBeVisible();
    await page.getByRole('link', { name: '14 Larkspur Lane (copy)' }).click();
    await page.waitForURL(opened);
    await page
      .getByRole('navigation', { name: 'Sheets of this job' })
      .getByRole('link', { name: 'Photographs' })
      .click();
    await expect(answer(page)).toHaveText('no photographs');
    await expect(shown(page)).toHaveCount(0);
  },
);

test('a job and its photographs go out in one file and come back elsewhere, once', async ({
  page,
  browser,
}) => {
  await open(page);
  const one = await jpegOf(page, { width: 60, height: 40 });
  await page.setInputFiles('#take-full', asFile(one));
  await page.setInputFiles('#take-anything-else', asFile(one));
  await expect(shown(page)).toHaveCount(2);
  const buffer = await handedOver(page, () =>
    page.getByRole('button', { name: /^Save the job with its 2 photographs, \d+ kB$/ }).click(),
  );
  const zip = { name: 'job.zip', mimeType: 'application/zip', buffer };

  const elsewhere = await browser.newContext();
  const other = await elsewhere.newPage();
  await other.goto(new URL('/plan/jobs/', page.url()).href);
  await other.setInputFiles('#open-jobs', zip);
  await expect(other.getByText('Opened. 1 job kept. 2 photographs came with it.')).toBeVisible();
  await other.setInputFiles('#open-jobs', zip);
  await expect(other.getByText('1 job here already, the same. 2 photographs here already.')).toBeVisible();
  await other.locator('.jobs .job').first().click();
  await other.waitForURL(opened);
  await other
    .getByRole('navigation', { name: 'Sheets of this job' })
    .getByRole('link', { name: 'Photographs' })
    .click();
  await expect(shown(other)).toHaveCount(2);
  expect(await looksLike(other)).toMatchObject({ width: 60, height: 40, left: 'red' });

  for (const [name, harmed, says] of [
    ['cut.zip', buffer.subarray(0, buffer.length - 40), 'no whole zip'],
    ['other.zip', Buffer.from('PK\x03\x04 and no more'), 'no whole zip'],
  ] as const) {
    await other.setInputFiles('#open-job', {
      name,
      mimeType: 'application/zip',
      buffer: Buffer.from(harmed),
    });
    await expect(other.getByText(says)).toBeVisible();
  }
  await elsewhere.close();
});

test(
  'words typed in one tab don’t bring back a photograph that another removed',
  ONCE,
  async ({ page, context }) => {
    await open(page);
    await page.setInputFiles('#take-full', asFile(await jpegOf(page, { width: 60, height: 40 })));
    await expect(shown(page)).toHaveCount(1);
    const other = await context.newPage();
    await other.goto(page.url());
    await other.getByRole('button', { name: 'Remove photograph 1' }).click();
    await expect(shown(other)).toHaveCount(0);
    await page.getByLabel('Words for photograph 1').fill('typed too late');
    await expect(page.getByText('This photograph was removed in another tab.')).toBeVisible();
    await expect(shown(page)).toHaveCount(0);
    await page.reload();
    await expect(answer(page)).toHaveText('no photographs');
  },
);

test(
  'a picture that the browser no longer gives is told where a file is saved, on both pages',
  ONCE,
  async ({ page }) => {
    await open(page);
    const one = await jpegOf(page, { width: 60, height: 40 });
    await page.setInputFiles('#choose-patches', [asFile(one), asFile(one, 'b.jpg')]);
    await expect(shown(page)).toHaveCount(2);
    await behindThePage(page, 'pictures', 'goes');
    const told = page.getByText(/^Of 2 photographs, \d+ kB, 1 can’t be read in this browser any more/);
    const file = await handedOver(page, () =>
      page.getByRole('button', { name: 'Save the job with its' }).click(),
    );
    expect(Object.keys(unzipSync(file)).filter((name) => name.endsWith('.jpg'))).toHaveLength(1);
    await expect(told).toBeVisible();
    await page.getByRole('link', { name: 'All jobs on this phone' }).click();
    const row = page.locator('.jobs > li').filter({ hasText: '14 Larkspur Lane' }).first();
    await row.locator('summary').click();
    await row.getByRole('button', { name: /^Save with its/ }).click();
    await expect(told).toBeVisible();
  },
);

test('a job takes no more photographs than a file of it may hold, and says so', ONCE, async ({ page }) => {
  await open(page);
  const one = await jpegOf(page, { width: 60, height: 40 });
  await page.setInputFiles('#choose-patches', asFile(one));
  await expect(shown(page)).toHaveCount(1);
  await behindThePage(page, 'known', { asMany: MOST_PHOTOGRAPHS });
  await page.setInputFiles('#choose-patches', asFile(one));
  // A busy machine takes its time to read a thousand of them.
  await expect(page.getByText(`Not added: A job has ${MOST_PHOTOGRAPHS} photographs at most`)).toBeVisible({
    timeout: 30_000,
  });
});

test('a job that is gone for good takes its photographs with it', ONCE, async ({ page }) => {
  await open(page);
  await page.setInputFiles('#take-full', asFile(await jpegOf(page, { width: 60, height: 40 })));
  await expect(shown(page)).toHaveCount(1);
  await page.goto('/plan/jobs/');
  await page.locator('.jobs summary').first().click();
  await page.getByRole('button', { name: /^Delete / }).click();
  await expect(page.getByText(/deleted .*, with 1 photograph, \d+ kB/)).toBeVisible();
  await page.evaluate(() => {
    for (const key of Object.keys(localStorage).filter((each) => each.startsWith('heel-to-ridge job '))) {
      const kept = JSON.parse(localStorage.getItem(key) ?? '{}');
      localStorage.setItem(key, JSON.stringify({ ...kept, deleted: '2020-01-01T00:00:00.000Z' }));
    }
  });
  await page.reload();
  await expect(page.getByText('This phone keeps no job yet.')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Photographs of no job' })).toHaveCount(0);
  const left = () =>
    page.evaluate(
      () =>
        new Promise<number>((done, failed) => {
          const request = indexedDB.open('heel-to-ridge photographs');
          request.onerror = () => failed(request.error);
          request.onsuccess = () => {
            const count = request.result.transaction('pictures').objectStore('pictures').count();
            count.onsuccess = () => done(count.result);
          };
        }),
    );
  await expect.poll(left).toBe(0);
});

test(
  'photographs of no job are removed for good, and the focus stays with what is said of it',
  ONCE,
  async ({ page }) => {
    await open(page);
    await page.setInputFiles('#take-full', asFile(await jpegOf(page, { width: 60, height: 40 })));
    await expect(shown(page)).toHaveCount(1);
    // A page that holds no job lets go of the stores.
    await page.goto('/terms/');
    await page.evaluate(async () => {
      localStorage.clear();
      for (const { name = '' } of await indexedDB.databases())
        if (!name.endsWith('photographs'))
          await new Promise((done, failed) => {
            const request = indexedDB.deleteDatabase(name);
            request.onsuccess = done;
            request.onerror = failed;
            request.onblocked = failed;
          });
    });
    await page.goto('/plan/jobs/');
    await page.getByRole('button', { name: 'Remove them for good' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'Photographs of no job' })).toHaveCount(0);
    await expect(page.locator(':focus')).toHaveText(/^Removed for good: 1 photograph/);
  },
);

test(
  'what is no picture, is empty or is far too large is told, and the rest is taken',
  ONCE,
  async ({ page }) => {
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    await page.addInitScript(() => {
      const size = Object.getOwnPropertyDescriptor(Blob.prototype, 'size')?.get;
      Object.defineProperty(Blob.prototype, 'size', {
        get(this: File) {
          return this.name === 'huge.jpg' ? 3e9 : size?.call(this);
        },
      });
    });
    await open(page);
    const one = await jpegOf(page, { width: 60, height: 40 });
    await page.setInputFiles('#take-faults', [
      asFile(Buffer.from('<script>alert(1)</script>'), 'words.jpg'),
      asFile(Buffer.alloc(0), 'empty.jpg'),
      asFile(one, 'huge.jpg'),
      asFile(one.subarray(0, 60), 'half.jpg'),
      asFile(
        Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="0" height="0"/>'),
        'a.svg',
        'image/svg+xml',
      ),
      asFile(one, 'good.jpg'),
    ]);
    const status = page.getByRole('status').filter({ hasText: 'Not added' });
    await expect(status).toContainText('1 photograph of');
    await expect(status).toContainText('words.jpg: found no picture that this browser can show');
    await expect(status).toContainText('empty.jpg: found an empty file');
    await expect(status).toContainText('huge.jpg: found 3000.0 MB; expected a picture of 60.0 MB at most');
    await expect(status).toContainText('half.jpg');
    await expect(status).toContainText('a.svg');
    await expect(shown(page)).toHaveCount(1);
    expect(errors).toEqual([]);
  },
);

test.describe('where nothing can be kept', () => {
  test('a store that is refused is told, the photograph stays while the page is open, and a file is offered', async ({
    page,
  }) => {
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('no', 'SecurityError');
      };
    });
    await open(page);
    await page.setInputFiles('#take-full', asFile(await jpegOf(page, { width: 60, height: 40 })));
    await expect(shown(page)).toHaveCount(1);
    await expect(page.getByRole('alert')).toContainText('this browser refuses to keep anything');
    await page.getByLabel('Words for photograph 1').fill('held');
    const file = unzipSync(
      await handedOver(page, () => page.getByRole('button', { name: 'Save the job with its' }).click()),
    );
    expect(strFromU8(file['photographs.json'] ?? new Uint8Array())).toContain('"words": "held"');
    expect(errors).toEqual([]);
  });

  test('a store that fills up while photographs are taken is told too', async ({ page }) => {
    await open(page);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await page.setInputFiles('#take-full', asFile(await jpegOf(page, { width: 60, height: 40 })));
    await expect(shown(page)).toHaveCount(1);
    await expect(page.getByRole('alert')).toContainText('the browser’s store is full');
  });

  test('words that are not kept are told, and stand in the file all the same', ONCE, async ({ page }) => {
    await open(page);
    await page.setInputFiles('#take-full', asFile(await jpegOf(page, { width: 60, height: 40 })));
    await expect(shown(page)).toHaveCount(1);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await page.getByLabel('Words for photograph 1').fill('held');
    await expect(page.getByRole('alert')).toContainText('New photographs and words are not kept');
    // Whoever looks at another app and comes back finds them still.
    await page.evaluate(() => dispatchEvent(new Event('pageshow')));
    await expect(page.getByLabel('Words for photograph 1')).toHaveValue('held');
    const file = unzipSync(
      await handedOver(page, () => page.getByRole('button', { name: 'Save the job with its' }).click()),
    );
    expect(strFromU8(file['photographs.json'] ?? new Uint8Array())).toContain('"words": "held"');
  });
});
