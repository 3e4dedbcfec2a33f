import type { Browser, Page } from '@playwright/test';
import { budgets } from './budgets.ts';
import { amount, type Figure, median, type Part } from './figure.ts';
import type { PackedServer } from './packed-server.ts';
import { freshPhone, poorLine, type Slow, slowDown } from './slow-phone.ts';

const TIMES = 5;
const WORDS = 'patch';

/** Types words into the search, and waits until the first find is painted, in milliseconds. */
const firstFind = (page: Page): Promise<number> =>
  page.evaluate(
    (words) =>
      new Promise<number>((found, failed) => {
        const box = document.getElementById('q') as HTMLInputElement;
        const list = document.getElementById('results') as HTMLElement;
        setTimeout(() => failed(new Error('found nothing after 60 s, expected a first find')), 60_000);
        const began = performance.now();
        const watch = new MutationObserver(() => {
          if (!list.querySelector('li')) return;
          watch.disconnect();
          requestAnimationFrame(() => {
            // A message is handled only once the frame is painted.
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => found(performance.now() - began);
            port2.postMessage(undefined);
          });
        });
        watch.observe(list, { childList: true, subtree: true });
        box.value = words;
        box.dispatchEvent(new Event('input', { bubbles: true }));
      }),
    WORDS,
  );

interface Found {
  readonly time: number;
  /** What was asked for in all, with its size on the line. */
  readonly asked: readonly Part[];
}

/** On a phone that has seen nothing of the site: the words are typed as soon as the page of the search stands, its index still on the way. */
async function cold(browser: Browser, server: PackedServer, slow: Slow): Promise<Found> {
  const phone = await freshPhone(browser);
  try {
    const page = await phone.newPage();
    await slowDown(page, slow);
    server.asked();
    await page.goto(`${server.at}search/`, { waitUntil: 'load' });
    const time = await firstFind(page);
    return { time, asked: server.asked() };
  } finally {
    await phone.close();
  }
}

/** On a phone that keeps the copy of the site, so that nothing is asked of the line. */
async function warm(browser: Browser, server: PackedServer): Promise<number[]> {
  const phone = await freshPhone(browser, 'allow');
  try {
    const page = await phone.newPage();
    await page.goto(`${server.at}search/`);
    await page.getByText('The whole site is saved here').waitFor({ timeout: 120_000 });
    const times: number[] = [];
    for (let time = 0; time < TIMES; time++) {
      const again = await phone.newPage();
      await again.goto(`${server.at}search/`, { waitUntil: 'load' });
      await slowDown(again, { processor: 1, line: poorLine });
      times.push(await firstFind(again));
      await again.close();
    }
    return times;
  } finally {
    await phone.close();
  }
}

/** How long after words are typed is the first find on the screen, on a poor line? */
export async function timeOfSearch(browser: Browser, server: PackedServer): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const latency of [poorLine.latency, 0]) {
    const all: Found[] = [];
    for (let time = 0; time < TIMES; time++)
      all.push(await cold(browser, server, { processor: 1, line: { ...poorLine, latency } }));
    const asked = [...(all[0]?.asked ?? [])].sort(([, a], [, b]) => b - a);
    const weight = asked.reduce((sum, [, bytes]) => sum + bytes, 0);
    figures.push({
      what: `search, first find, cold, 400 kbps, ${latency} ms (${asked.length} requests, ${amount(weight, 'B')})`,
      unit: 'ms',
      found: median(all.map(({ time }) => time)),
      budget: budgets.searchCold,
      parts: asked,
      partsIn: 'B',
    });
  }
  figures.push({
    what: 'search, first find, with the copy saved on the phone',
    unit: 'ms',
    found: median(await warm(browser, server)),
    budget: budgets.searchWarm,
  });
  return figures;
}
