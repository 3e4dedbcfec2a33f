import { JobStore, type Places } from '../../src/islands/jobs/store.ts';

/** A store of texts, as far as it is asked, with room for so many letters. */
export class FakeStorage {
  readonly #held = new Map<string, string>();
  room = Number.POSITIVE_INFINITY;
  get length(): number {
    return this.#held.size;
  }
  get letters(): number {
    return [...this.#held].reduce((sum, [key, text]) => sum + key.length + text.length, 0);
  }
  key(place: number): string | null {
    return [...this.#held.keys()][place] ?? null;
  }
  getItem(key: string): string | null {
    return this.#held.get(key) ?? null;
  }
  setItem(key: string, text: string): void {
    const before = this.#held.get(key);
    const after = this.letters + text.length + (before === undefined ? key.length : -before.length);
    if (after > this.room) throw Object.assign(new Error('full'), { name: 'QuotaExceededError' });
    this.#held.set(key, text);
  }
  removeItem(key: string): void {
    this.#held.delete(key);
  }
}

/** A browser as far as a store of jobs asks it; its tabs share what it keeps. */
export class FakeBrowser {
  local = new FakeStorage();
  readonly copies = new Map<string, string>();
  /** The jobs whose photographs were let go. */
  readonly letGo: string[] = [];
  clock = new Date('2026-11-26T10:42:00.000Z');

  tab(more: Partial<Places> = {}): JobStore {
    const session = new FakeStorage() as unknown as Storage;
    return new JobStore({
      local: () => this.local as unknown as Storage,
      session: () => session,
      second: {
        put: (key, text) => this.copies.set(key, text),
        remove: (key) => this.copies.delete(key),
        all: async () => [...this.copies],
      },
      letGo: (id) => this.letGo.push(id),
      now: () => this.clock,
      ...more,
    });
  }
}
