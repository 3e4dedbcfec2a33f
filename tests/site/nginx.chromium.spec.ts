import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { extname, join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { filesIn } from '../../src/built/files.ts';
import { ASKED_ANEW, headersFor, KEPT_FOR_GOOD } from '../../src/built/hosting/headers.ts';
import { heldStyles, sumOf } from './held-style.ts';
import { findNginx, type Nginx, startNginx } from './nginx.ts';

const nginx = findNginx();
// Without it the recipe goes untried, which is said; where tests guard a landing it is asked for.
if (!nginx && process.env.CI) throw new Error('found no nginx, expected nginx-light, or NGINX_PATH set');

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly bytes: Buffer;
}

/** Asks as a browser does, and gives what came over the wire, still packed. */
const ask = (url: string, more: Readonly<Record<string, string>> = {}): Promise<Answer> =>
  new Promise((answered, failed) => {
    request(url, { headers: more }, (answer) => {
      const pieces: Buffer[] = [];
      answer.on('data', (piece: Buffer) => pieces.push(piece));
      answer.on('end', () =>
        answered({ status: answer.statusCode ?? 0, headers: answer.headers, bytes: Buffer.concat(pieces) }),
      );
    })
      .on('error', failed)
      .end();
  });

const headers = headersFor(heldStyles(readFileSync('dist/index.html', 'utf8')).map(sumOf).join());
const PACKED = { 'accept-encoding': 'gzip' };
const files = filesIn('dist');
const first = (pattern: RegExp): string => files.find((name) => pattern.test(name)) ?? '';
// What every page has: the smallest ones go in one packet as they are.
const script = first(/^_astro\/page\..*\.js$/);
const style = first(/^_astro\/site\..*\.css$/);
const fragment = first(/^pagefind\/fragment\//);

test.describe('the recipe for nginx', () => {
  test.skip(!nginx, 'no nginx on this machine: the recipe for it goes untried');
  test.describe.configure({ mode: 'default' });
  let server: Nginx;
  test.beforeAll(async () => {
    server = await startNginx(nginx ?? '');
  });
  test.afterAll(() => server?.close());

  for (const [what, path, type, keeps] of [
    ['the front page', '', /^text\/html; charset=utf-8$/, ASKED_ANEW],
    ['a procedure', 'do/patching/', /^text\/html; charset=utf-8$/, ASKED_ANEW],
    ['a file of data', 'data/rulebook.json', /^application\/json/, ASKED_ANEW],
    ['a picture', 'mark.svg', /^image\/svg\+xml/, ASKED_ANEW],
    ['a script', script, /javascript/, KEPT_FOR_GOOD],
    ['the worker that keeps a copy', 'worker.js', /javascript/, ASKED_ANEW],
    ['the manifest', 'site.webmanifest', /^application\/manifest\+json$/, ASKED_ANEW],
    ['a spreadsheet', 'data/rulebook.csv', /^text\/csv; charset=utf-8$/, ASKED_ANEW],
    ['the list of recalled versions', 'data/recall.json', /^application\/json/, ASKED_ANEW],
    ['a style sheet', style, /^text\/css/, KEPT_FOR_GOOD],
    ['the program of search', 'pagefind/pagefind.js', /javascript/, ASKED_ANEW],
    ['a piece of search', fragment, /./, KEPT_FOR_GOOD],
    ['what is not there', 'do/no/such/page/', /^text\/html/, undefined],
  ] as const)
    test(`${what} comes with every header, its kind, and how long it may be kept`, async () => {
      const answer = await ask(server.at + path);
      expect(answer.status).toBe(keeps === undefined ? 404 : 200);
      for (const [name, value] of headers) expect(answer.headers[name.toLowerCase()], name).toBe(value);
      expect(answer.headers['content-type']).toMatch(type);
      expect(answer.headers['cache-control']).toBe(keeps);
      expect(answer.headers['set-cookie']).toBeUndefined();
      expect(answer.headers.server).toBe('nginx');
    });

  /**
   * The kind that each ending has by the register of media types (IANA; text/csv by RFC 7111, application/yaml by RFC 9512, application/manifest+json by
   * the W3C's "Web Application Manifest"); scripts are either of the two that RFC 9239 names. Recipes are plain text, to be read; what only the search's own program
   * reads is no kind in particular.
   */
  const kinds: Readonly<Record<string, RegExp>> = {
    html: /^text\/html; charset=utf-8$/,
    css: /^text\/css; charset=utf-8$/,
    js: /^(application|text)\/javascript; charset=utf-8$/,
    json: /^application\/json$/,
    svg: /^image\/svg\+xml$/,
    png: /^image\/png$/,
    csv: /^text\/csv; charset=utf-8$/,
    txt: /^text\/plain; charset=utf-8$/,
    conf: /^text\/plain; charset=utf-8$/,
    sh: /^text\/plain; charset=utf-8$/,
    pf_fragment: /^text\/plain; charset=utf-8$/,
    yaml: /^application\/yaml$/,
    webmanifest: /^application\/manifest\+json$/,
    ...Object.fromEntries(
      ['pagefind', 'pf_meta', 'pf_index', 'pf_filter'].map((ending) => [
        ending,
        /^application\/octet-stream$/,
      ]),
    ),
  };

  test('every ending that the site has comes as what it is', async () => {
    const byEnding = new Map(files.map((file) => [extname(file).slice(1), file]));
    expect([...byEnding.keys()].filter((ending) => !Object.hasOwn(kinds, ending))).toEqual([]);
    for (const [ending, file] of byEnding)
      expect((await ask(server.at + file)).headers['content-type'], file).toMatch(kinds[ending] ?? /^$/);
  });

  test('what was packed beforehand is sent as it is, under its own kind', async () => {
    execFileSync(process.execPath, ['src/cli/publish-gz.ts', server.root], { stdio: 'pipe' });
    const beside = filesIn(server.root).filter((file) => file.endsWith('.gz'));
    const byEnding = new Map(beside.map((file) => [extname(file.replace(/\.gz$/, '')).slice(1), file]));
    for (const ending of ['html', 'css', 'js', 'json', 'csv', 'conf', 'sh'])
      expect([...byEnding.keys()], ending).toContain(ending);
    for (const [ending, file] of byEnding) {
      const answer = await ask(server.at + file.replace(/\.gz$/, ''), PACKED);
      expect(answer.headers['content-encoding'], file).toBe('gzip');
      expect(answer.headers['content-type'], file).toMatch(kinds[ending] ?? /^$/);
      expect(answer.bytes.equals(readFileSync(join(server.root, file))), file).toBe(true);
    }
    for (const file of beside) rmSync(join(server.root, file));
  });

  for (const [what, path] of [
    ['a page', 'do/patching/'],
    ['a file of data', 'data/rulebook.json'],
    ['a spreadsheet', 'data/rulebook.csv'],
    ['a script', script],
    ['a style sheet', style],
  ] as const)
    test(`${what} goes packed over the wire, and holds the same`, async () => {
      const [plain, packed] = [await ask(server.at + path), await ask(server.at + path, PACKED)];
      expect(packed.headers['content-encoding']).toBe('gzip');
      expect(packed.headers.vary).toBe('Accept-Encoding');
      expect(plain.headers['content-encoding']).toBeUndefined();
      expect(packed.bytes.length).toBeLessThan(plain.bytes.length);
      expect(gunzipSync(packed.bytes).equals(plain.bytes)).toBe(true);
    });

  test('a packed file that stands beside another is sent as it is', async () => {
    const made = gzipSync('<p>Ready made</p>');
    writeFileSync(join(server.root, 'terms/index.html.gz'), made);
    expect((await ask(`${server.at}terms/`, PACKED)).bytes.equals(made)).toBe(true);
  });

  test('a page that is the same is not sent again; one whose value changed is, though its size is what it was', async () => {
    const url = `${server.at}do/patching/`;
    for (const more of [{}, PACKED]) {
      const { etag, 'last-modified': day } = (await ask(url, more)).headers;
      const again = await ask(url, {
        ...more,
        'if-none-match': String(etag),
        'if-modified-since': String(day),
      });
      expect(again.status).toBe(304);
      expect(again.bytes).toHaveLength(0);
      expect(again.headers['cache-control']).toBe(ASKED_ANEW);
    }
    const { etag } = (await ask(url)).headers;
    const file = join(server.root, 'do/patching/index.html');
    const text = readFileSync(file, 'utf8');
    const day = statSync(file).mtime.getTime() / 1000;
    writeFileSync(file, text.replace('6 in', '7 in'));
    utimesSync(file, day + 2, day + 2);
    expect((await ask(url, { 'if-none-match': String(etag) })).status).toBe(200);
  });

  test('a folder asked for without its slash leads to the one with it, on the same host', async () => {
    const answer = await ask(`${server.at}do/patching`);
    expect([answer.status, answer.headers.location]).toEqual([301, '/do/patching/']);
  });

  test('nothing outside the site is sent', async () => {
    for (const path of ['../heel-to-ridge.conf', '%2e%2e/heel-to-ridge.conf', '_astro/'])
      expect((await ask(server.at + path)).status, path).toBeGreaterThanOrEqual(400);
  });

  test('pages, calculators, the planner and search work under the policy, and nothing is against it', async ({
    page,
  }) => {
    const wrong: string[] = [];
    page.on('console', (said) => {
      if (/Content Security Policy|Refused/i.test(said.text())) wrong.push(said.text());
    });
    page.on('pageerror', (error) => wrong.push(error.message));
    await page.addInitScript(() =>
      document.addEventListener('securitypolicyviolation', (event) =>
        console.error(`Content Security Policy: ${event.violatedDirective} ${event.blockedURI}`),
      ),
    );
    await page.goto(`${server.at}plan/`);
    await page.getByLabel('Length of the roof').first().fill('50 ft');
    await expect(page).toHaveURL(/#job=/);
    await page.locator('#job a.rule').locator('visible=true').first().click();
    await expect(page.getByRole('dialog')).toBeVisible();
    await page.goto(`${server.at}calculators/patch-kit/`);
    const before = await page.locator('.answers').textContent();
    await page.getByLabel('Holes').fill('7');
    await expect(page.locator('.answers')).not.toHaveText(before ?? '');
    for (const path of [
      '',
      'cards/patching/',
      'plan/fill-log/',
      'plan/patch-template/',
      'rules/',
      'recheck/',
    ])
      await page.goto(server.at + path);
    await page.goto(`${server.at}search/?q=purlin`);
    await expect(page.locator('#results a').first()).toBeVisible({ timeout: 15_000 });
    expect(wrong).toEqual([]);
  });

  test('the policy is in force: a script that stands in the page does not run', async ({ page }) => {
    const told: string[] = [];
    page.on('console', (said) => told.push(said.text()));
    await page.goto(server.at);
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.ran = true';
      document.body.append(script);
      return 'ran' in window;
    });
    expect(ran).toBe(false);
    expect(told.join()).toMatch(/Content Security Policy/);
  });
});
