import type { Browser, Page } from '@playwright/test';
import { addressOf } from '../../src/calc/declare/address.ts';
import { entryAt, withEntry } from '../../src/calc/declare/entries.ts';
import { withSigns } from '../../src/quantity/signs.ts';
import { budgets } from './budgets.ts';
import { type Figure, median, type Part } from './figure.ts';
import { largestJob } from './largest-job.ts';
import { freshPhone, slowDown } from './slow-phone.ts';

const KEYS = 30;
/** Enough for the browser to have made its code fast. */
const WARM = 10;
/** Keys that no script of the site hears. */
const DEAF = 10;
const PROCESSOR = 6;
/** After so long without a change, in milliseconds, all that a key brings is there. */
const QUIET = 250;

/** What a page shows of some entries. */
interface Right {
  /** The answer in a line, as it stands above the plan and in the bar at the foot of a phone. */
  readonly answer: string;
  /** All words and figures of the plan, those of its drawings among them. */
  readonly whole: string;
}

/** What the page notes down of each key. */
interface Noted {
  /** Until the answer was right and painted. */
  readonly answers: number[];
  /** Until the last change to the plan that the key brought was painted. */
  readonly wholes: number[];
  readonly tasks: number[];
  /** When the newest key was given, until all that it brought is noted. */
  began: number | undefined;
  answered: boolean;
  /** From the key to the newest painted change. */
  last: number;
  /** Keys are kept from the site's scripts, to tell what the browser takes by itself. */
  deaf: boolean;
}

/** What stands on the planner's sheet, opened anew with some entries: by this a page that was typed in is judged. */
async function shownOf(page: Page): Promise<Right> {
  await page.locator('#plan .answer').first().waitFor();
  // What unfolds is let go of once the page runs; what follows the answer is drawn in its turn.
  await page.waitForFunction(
    () =>
      !document.querySelector('#plan details:not([open]) .working') &&
      !document.querySelector('.answers[aria-busy]'),
  );
  return page.evaluate(() => ({
    answer: document.querySelector('#plan .answer output')?.textContent ?? '',
    whole: document.getElementById('plan')?.textContent ?? '',
  }));
}

/** The density with one more digit behind it, and the whole entry. */
const denser = (entry: string): string => entry.replace(/^[\d.]+/, (digits) => `${digits}1`);

/**
 * How long after a key is the right answer on the screen, and how long until all of the sheet is right, on the planner's sheet with the
 * largest job? Each from the time that the browser gives the key to the first moment after the frame that shows it. What is right is
 * read from pages opened anew with the same entries.
 */
export async function timeOfKeystroke(browser: Browser, at: string): Promise<Figure[]> {
  const phone = await freshPhone(browser);
  try {
    const typed = withSigns(String(entryAt(largestJob(), ['fill', 'density'])));
    // As the box shows it: what the page is asked for and what it shows are then the same words.
    const job = withEntry(largestJob(), ['fill', 'density'], typed);
    const right: Record<string, Right> = {};
    for (const entry of [typed, denser(typed)]) {
      const fresh = await phone.newPage();
      await fresh.goto(`${at}plan/#${addressOf(withEntry(job, ['fill', 'density'], entry))}`);
      await fresh.waitForFunction(
        (density) => document.querySelector<HTMLInputElement>('[name="fill.density"]')?.value === density,
        entry,
      );
      right[entry] = await shownOf(fresh);
      await fresh.close();
    }
    if (right[typed]?.answer === right[denser(typed)]?.answer)
      throw new Error('found one answer for two densities, expected two, or no key is seen to change it');
    const page = await phone.newPage();
    await page.goto(`${at}plan/#${addressOf(job)}`);
    const density = page.locator('[name="fill.density"]').first();
    await density.waitFor();
    const first = await shownOf(page);
    if (!/front/i.test(first.whole))
      throw new Error('found a plan of one row, expected the largest job, with two');
    await page.evaluate((wanted) => {
      const noted: Noted = {
        answers: [],
        wholes: [],
        tasks: [],
        began: undefined,
        answered: false,
        last: 0,
        deaf: false,
      };
      Object.assign(window, { noted });
      const plan = document.getElementById('plan');
      const box = document.querySelector<HTMLInputElement>('[name="fill.density"]');
      if (!plan || !box) return;
      const isRight = (): boolean => {
        const answer = wanted[box.value]?.answer;
        return ['#plan .answer output', '.short-answer'].every(
          (place) => document.querySelector(place)?.textContent === answer,
        );
      };
      const { scheduler } = globalThis as unknown as {
        scheduler: { postTask: (task: () => void, how: { priority: 'user-blocking' }) => void };
      };
      const oncePainted = (note: () => void): void => {
        requestAnimationFrame(() => {
          // A task is begun only once the frame is painted; this one before what the page itself put off until then.
          scheduler.postTask(note, { priority: 'user-blocking' });
        });
      };
      addEventListener(
        'input',
        (event) => {
          const from = event.timeStamp;
          if (noted.deaf) {
            event.stopImmediatePropagation();
            oncePainted(() => noted.answers.push(performance.now() - from));
            return;
          }
          noted.began = from;
          noted.answered = false;
        },
        true,
      );
      const look = (): void => {
        const from = noted.began;
        if (from === undefined) return;
        const answers = !noted.answered && isRight();
        if (answers) noted.answered = true;
        oncePainted(() => {
          noted.last = performance.now() - from;
          if (answers) noted.answers.push(noted.last);
        });
      };
      const all = { subtree: true, childList: true, characterData: true, attributes: true };
      new MutationObserver(look).observe(plan.parentElement ?? plan, all);
      new PerformanceObserver((list) => {
        noted.tasks.push(...list.getEntries().map(({ duration }) => duration));
      }).observe({ type: 'longtask' });
    }, right);
    const session = await slowDown(page, { processor: PROCESSOR });
    await session.send('Performance.enable');
    const caret = /^[\d.]+/.exec(typed)?.[0].length ?? 0;
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
          for (const list of [noted.answers, noted.wholes, noted.tasks]) list.length = 0;
        });
        before = await metrics();
      }
      // 1.5, 1.51, 1.5 and so on: each is a density, so that each key brings a new plan.
      await page.keyboard.press(key % 2 === 0 ? '1' : 'Backspace');
      // One key at a time: those that wait for another would be timed with it.
      await page.waitForTimeout(QUIET);
      await page.waitForFunction(
        ([wanted, entry]) => document.getElementById('plan')?.textContent === wanted[entry]?.whole,
        [right, key % 2 === 0 ? denser(typed) : typed] as const,
        { polling: 100 },
      );
      await page.waitForTimeout(QUIET);
      await page.evaluate(() => {
        const { noted } = window as unknown as { noted: Noted };
        noted.wholes.push(noted.last);
        noted.began = undefined;
      });
    }
    const after = await metrics();
    const { answers, wholes, tasks } = await page.evaluate(
      () => (window as unknown as { noted: Noted }).noted,
    );
    const aKey = (name: string): number => (1000 * ((after.get(name) ?? 0) - (before.get(name) ?? 0))) / KEYS;
    const [all, style, layout] = [aKey('TaskDuration'), aKey('RecalcStyleDuration'), aKey('LayoutDuration')];
    const parts: Part[] = [
      // The browser does not count what runs between tasks as scripts, so that they can't be told from paint.
      ['a key, scripts and paint', all - style - layout],
      ['layout', layout],
      ['style', style],
    ];
    await page.evaluate(() => {
      const { noted } = window as unknown as { noted: Noted };
      noted.deaf = true;
      for (const list of [noted.answers, noted.tasks]) list.length = 0;
    });
    for (let key = 0; key < DEAF; key++) {
      await page.keyboard.press(key % 2 === 0 ? '1' : 'Backspace');
      await page.waitForTimeout(2 * QUIET);
    }
    const own = await page.evaluate(() => (window as unknown as { noted: Noted }).noted);
    if (own.answers.length !== DEAF)
      throw new Error(
        `found ${own.answers.length} frames after ${DEAF} keys that no script hears, expected one for each`,
      );
    if (answers.length !== KEYS)
      throw new Error(`found ${answers.length} right answers after ${KEYS} keys, expected one for each`);
    const slow = `largest job, processor ${PROCESSOR} times as slow`;
    return [
      {
        what: `key in the density to the right answer painted, ${slow}`,
        unit: 'ms',
        found: median(answers),
        budget: budgets.keystroke,
        parts,
      },
      // Told, not bounded: what stands below the answer follows it in short tasks.
      { what: 'the same key, until all of the sheet is current', unit: 'ms', found: median(wholes), parts },
      {
        what: `longest task of those keys (${tasks.length} long tasks in ${KEYS} keys)`,
        unit: 'ms',
        // What is shorter than 50 ms a browser does not tell of.
        found: Math.max(0, ...tasks),
        budget: budgets.longTask,
      },
      // What no lighter script can take away: the letter itself, and the browser's own look through the form for what it could fill in.
      {
        what: 'such a key that no script hears, until its letter is painted',
        unit: 'ms',
        found: median(own.answers),
      },
      {
        what: `longest task of those (${own.tasks.length} long tasks in ${DEAF} keys)`,
        unit: 'ms',
        found: Math.max(0, ...own.tasks),
      },
    ];
  } finally {
    await phone.close();
  }
}
