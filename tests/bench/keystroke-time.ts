import type { Browser } from 'playwright-core';
import { addressOf } from '../../src/calc/declare/address.ts';
import { budgets } from './budgets.ts';
import { type Figure, median, type Part } from './figure.ts';
import { largestJob } from './largest-job.ts';
import { freshPhone, slowDown } from './slow-phone.ts';

const KEYS = 30;
/** Enough for the browser to have made its code fast. */
const WARM = 10;
const PROCESSOR = 6;

/** What the page notes down of each key. */
interface Noted {
  readonly times: number[];
  readonly tasks: number[];
}

/**
 * How long after a key is the new result on the screen, on the planner's sheet with the largest job? From the time that the browser
 * gives the key to the first moment after the frame that shows what changed.
 */
export async function timeOfKeystroke(browser: Browser, at: string): Promise<Figure[]> {
  const phone = await freshPhone(browser);
  try {
    const page = await phone.newPage();
    await page.goto(`${at}plan/#${addressOf(largestJob())}`);
    const plan = page.locator('#plan');
    const density = page.locator('[id="fill.density"], [name="fill.density"]').first();
    await density.waitFor();
    await plan.locator('.answer').first().waitFor();
    if (!/front/i.test((await plan.textContent()) ?? ''))
      throw new Error('found a plan of one row, expected the largest job, with two');
    await page.evaluate(() => {
      const noted: Noted = { times: [], tasks: [] };
      Object.assign(window, { noted });
      let began: number | undefined;
      document.addEventListener(
        'input',
        (event) => {
          began = event.timeStamp;
        },
        true,
      );
      const plan = document.getElementById('plan');
      if (!plan) return;
      new MutationObserver(() => {
        const from = began;
        if (from === undefined) return;
        began = undefined;
        requestAnimationFrame(() => {
          // A message is handled only once the frame is painted.
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => noted.times.push(performance.now() - from);
          port2.postMessage(undefined);
        });
      }).observe(plan, { subtree: true, childList: true, characterData: true, attributes: true });
      new PerformanceObserver((list) => {
        noted.tasks.push(...list.getEntries().map(({ duration }) => duration));
      }).observe({ type: 'longtask' });
    });
    const session = await slowDown(page, { processor: PROCESSOR });
    await session.send('Performance.enable');
    const value = await density.inputValue();
    const caret = /^[\d.]+/.exec(value)?.[0].length ?? 0;
    await density.evaluate((box, place) => {
      (box as HTMLInputElement).focus();
      (box as HTMLInputElement).setSelectionRange(place, place);
    }, caret);
    const metrics = async (): Promise<ReadonlyMap<string, number>> => {
      const { metrics: all } = await session.send('Performance.getMetrics');
      return new Map(all.map(({ name, value: seconds }) => [name, seconds]));
    };
    let before = await metrics();
    for (let key = 0; key < WARM + KEYS; key++) {
      if (key === WARM) {
        await page.evaluate(() => {
          const { noted } = window as unknown as { noted: Noted };
          noted.times.length = 0;
          noted.tasks.length = 0;
        });
        before = await metrics();
      }
      // 1.5, 1.51, 1.5 and so on: each is a density, so that each key brings a new plan.
      await page.keyboard.press(key % 2 === 0 ? '1' : 'Backspace');
      const keys = key < WARM ? key + 1 : key - WARM + 1;
      // One key at a time: those that wait for another would be timed with it.
      await page.waitForFunction(
        (many) => (window as unknown as { noted: Noted }).noted.times.length >= many,
        keys,
        { polling: 50 },
      );
      await page.waitForTimeout(100);
    }
    const after = await metrics();
    const { times, tasks } = await page.evaluate(() => (window as unknown as { noted: Noted }).noted);
    const aKey = (name: string): number => (1000 * ((after.get(name) ?? 0) - (before.get(name) ?? 0))) / KEYS;
    const [all, style, layout] = [aKey('TaskDuration'), aKey('RecalcStyleDuration'), aKey('LayoutDuration')];
    const parts: Part[] = [
      // The browser does not count what runs between tasks as scripts, so that they can't be told from paint.
      ['a key, scripts and paint', all - style - layout],
      ['layout', layout],
      ['style', style],
    ];
    if (times.length !== KEYS)
      throw new Error(`found ${times.length} new results after ${KEYS} keys, expected one for each`);
    return [
      {
        what: `key to painted result, largest job, processor ${PROCESSOR} times as slow`,
        unit: 'ms',
        found: median(times),
        budget: budgets.keystroke,
        parts,
      },
      {
        what: `longest task of those keys (${tasks.length} long tasks in ${KEYS} keys)`,
        unit: 'ms',
        // What is shorter than 50 ms a browser does not tell of.
        found: Math.max(0, ...tasks),
        budget: budgets.longTask,
      },
    ];
  } finally {
    await phone.close();
  }
}
