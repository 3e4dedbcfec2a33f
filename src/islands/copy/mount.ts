import { type Copies, copiesOf, TAKE_OVER, WORKER } from '../../offline/names.ts';
import { dayOf } from '../../rulebook/day.ts';
import { file } from '../links.ts';
import type { Changed } from './changed.ts';
import { type Memory, memoryOf } from './memory.ts';
import { ask, noNotice, notice } from './notice.ts';
import { askRecalled, showRecall, whyRecalled } from './recall.ts';
import {
  canKeep,
  clearCopy,
  fetchAgain,
  forgetBefore,
  isWhole,
  rulebookBefore,
  rulebookOf,
} from './saved.ts';

/** A page that stays open asks again after so long, when it is looked at. */
const HOUR = 3_600_000;

/** Brings the foot of the page to life: what the copy is of, when the host was last asked, and what may be done about it. */
export function mountCopy(): void {
  const foot = document.getElementById('copy');
  if (foot) new CopyOfThePage(foot).start();
}

class CopyOfThePage {
  private readonly foot: HTMLElement;
  private readonly copies: Copies;
  private readonly memory: Memory;
  private registration: ServiceWorkerRegistration | undefined;
  /** This page is about to open anew, as its reader asked. */
  private changingOver = false;

  constructor(foot: HTMLElement) {
    this.foot = foot;
    this.copies = copiesOf(new URL(file(''), location.href).href);
    this.memory = memoryOf(this.copies.root);
  }

  start(): void {
    this.showKnown();
    this.onClick('check', () => void this.askHost(true));
    this.onClick('clear', () => this.askToClear());
    this.onClick('save', () => {
      this.memory.declined = undefined;
      void this.keep();
    });
    this.foot.querySelector('.buttons')?.removeAttribute('hidden');
    const later = () => {
      const last = Date.parse(this.memory.checked ?? '');
      if (document.visibilityState === 'visible' && !(Date.now() - last < HOUR)) void this.askHost(false);
    };
    addEventListener('online', () => void this.askHost(false));
    document.addEventListener('visibilitychange', later);
    // The page itself comes first, on a line that is slow.
    const begin = async () => {
      await this.keep();
      await this.askHost(false);
    };
    if (document.readyState === 'complete') void begin();
    else addEventListener('load', () => void begin(), { once: true });
  }

  private get state(): Element | null {
    return this.foot.querySelector('.copy-state');
  }

  private button(name: string): HTMLElement | null {
    return this.foot.querySelector(`[data-copy="${name}"]`);
  }

  private get rulebook(): string {
    return this.foot.dataset.rulebook ?? '';
  }

  private onClick(name: string, act: () => void): void {
    this.button(name)?.addEventListener('click', () => {
      // What was asked for is said aloud, and nothing at each page that opens.
      this.state?.setAttribute('role', 'status');
      act();
    });
  }

  private say(words: string): void {
    const { state } = this;
    if (state && state.textContent !== words) state.textContent = words;
  }

  /** What is known without asking anyone. */
  private showKnown(): void {
    const { checked, declined, recall } = this.memory;
    const day = checked === undefined ? undefined : new Date(checked);
    for (const place of document.querySelectorAll<HTMLElement>('.last-checked')) {
      const short = place.dataset.short !== undefined;
      if (day && !Number.isNaN(day.getTime()))
        place.textContent = short
          ? `checked ${dayOf(day)}`
          : `This phone last checked for changes on ${dayOf(day)} at ${clockOf(day)}.`;
    }
    for (const [name, shown] of [
      ['clear', declined === undefined],
      ['save', declined !== undefined],
    ] as const)
      this.button(name)?.toggleAttribute('hidden', !shown);
    showRecall(this.rulebook, whyRecalled(recall, this.rulebook));
  }

  /** Asks the host which versions are recalled, and whether there is a newer copy. */
  private async askHost(asked: boolean): Promise<void> {
    if (asked) this.say('Asking …');
    const said = await askRecalled(this.copies.root);
    if (said === undefined) {
      if (asked) this.say('The host could not be reached. What is saved here goes on working.');
      return;
    }
    this.memory.recall = said;
    this.memory.checked = new Date().toISOString();
    this.showKnown();
    try {
      await this.registration?.update();
    } catch {
      // The host went away meanwhile, or a worker is being fetched already.
    }
    if (asked) await this.showState('Asked just now. ');
  }

  /** Keeps a copy on this phone, unless the reader wants none, and follows what becomes of newer ones. */
  private async keep(): Promise<void> {
    if (this.memory.declined !== undefined) {
      this.say('The saved copy was cleared; the site needs a network.');
      return this.showKnown();
    }
    this.showKnown();
    if (!canKeep()) return this.say('No copy is saved: this browser, or this address, does not allow it.');
    const hadWorker = navigator.serviceWorker.controller !== null;
    try {
      this.registration = await navigator.serviceWorker.register(new URL(WORKER, this.copies.root), {
        scope: this.copies.root,
        updateViaCache: 'none',
      });
    } catch {
      // Without a network, what is here already is all there is to follow.
      this.registration = await navigator.serviceWorker
        .getRegistration(this.copies.root)
        .catch(() => undefined);
    }
    const registration = this.registration;
    if (!registration) return this.say('No copy is saved: this browser, or this address, does not allow it.');
    const follow = (): void => {
      const worker = registration.installing;
      worker?.addEventListener('statechange', () => void this.showState('', worker.state === 'redundant'));
      void this.showState();
    };
    registration.addEventListener('updatefound', follow);
    if (hadWorker)
      navigator.serviceWorker.addEventListener('controllerchange', () => {
        if (!this.changingOver)
          notice(
            'Another page changed over to the new copy. This one is still of the copy before, all of it.',
            [],
            [{ name: 'Open this page anew', act: () => location.reload() }],
          );
      });
    follow();
    if (hadWorker && !registration.waiting) await this.tellWhatChanged(registration);
  }

  /** Says how the copy stands, and offers a newer one. */
  private async showState(first = '', failed = false): Promise<void> {
    const say = (words: string) => this.say(first + words);
    const { active, waiting, installing } = this.registration ?? {};
    try {
      if (installing)
        return say(
          active ? 'A newer copy is being fetched.' : 'A copy for use without a network is being saved.',
        );
      if (!active)
        return say(failed ? 'The copy could not be saved whole. It is tried again at your next visit.' : '');
      if (waiting) return await this.offer(active, waiting);
      if (failed) return say('A newer copy could not be fetched whole. The one saved here stays as it is.');
      const whole = (await isWhole(active, this.copies)) || (await fetchAgain(active));
      say(
        whole
          ? 'The whole site is saved here, and works without a network.'
          : 'The copy is not whole. It is tried again at your next visit.',
      );
    } catch {
      say('The state of the saved copy is not known.');
    }
  }

  private async offer(active: ServiceWorker, waiting: ServiceWorker): Promise<void> {
    const changed = await changedOf(
      await rulebookOf(active, this.copies),
      await rulebookOf(waiting, this.copies),
    );
    this.say('A newer copy is saved here, and waits.');
    notice(
      `A new copy is ready: ${changed.says}. This page stays as it is until you change over; what you typed is kept.`,
      changed.safety,
      [{ name: 'Change over', act: () => this.changeOver(waiting) }],
    );
  }

  private changeOver(waiting: ServiceWorker): void {
    this.changingOver = true;
    const open = () => {
      if (waiting.state === 'activated') location.reload();
    };
    waiting.addEventListener('statechange', open);
    waiting.postMessage(TAKE_OVER);
    open();
  }

  /** A newer copy may have taken over while no page was open: what it changed is told all the same. */
  private async tellWhatChanged({ active }: ServiceWorkerRegistration): Promise<void> {
    try {
      const before = active ? await rulebookBefore(this.copies) : undefined;
      if (!active || before === undefined) return;
      const changed = await changedOf(before, await rulebookOf(active, this.copies));
      const seen = async () => {
        await forgetBefore(this.copies).catch(() => {});
        noNotice();
      };
      notice(`This copy is newer than the one you used before: ${changed.says}.`, changed.safety, [
        { name: 'Got it', plain: true, act: () => void seen() },
      ]);
    } catch {
      // What can't be told now is told on the next page.
    }
  }

  private askToClear(): void {
    const clear = async () => {
      this.memory.declined = 'yes';
      this.registration = undefined;
      noNotice();
      await clearCopy(this.copies).catch(() => {});
      this.showKnown();
      this.button('save')?.focus();
      this.say('The saved copy was cleared; the site needs a network.');
    };
    ask(
      'Clear the saved copy of this site? It then opens with a network only. Your jobs stay on this phone.',
      { name: 'Clear it', act: () => void clear() },
      'Leave it',
    );
  }
}

/** Comparing takes more code than all else here, and is seldom asked for: it is fetched then. */
async function changedOf(before: string | undefined, after: string | undefined): Promise<Changed> {
  const notKnown: Changed = { says: 'what it changed is not known', safety: [] };
  if (before === undefined || after === undefined) return notKnown;
  try {
    const { changedBetween } = await import('./changed.ts');
    return changedBetween(before, after);
  } catch {
    return notKnown;
  }
}

const two = (number: number): string => String(number).padStart(2, '0');

/** By the clock of the phone. */
const clockOf = (date: Date): string => `${two(date.getHours())}:${two(date.getMinutes())}`;
