import { MOST_WORDS, type Photograph, photographIn } from '../../job/photograph.ts';
import type { Picture } from '../../job/photographs-file.ts';
import { answer, type WhyNot, whyNot } from '../jobs/browser-store.ts';

/**
 * A database of its own beside that of the jobs: a new shape of one must never wait for a tab that holds the other. What is known of a
 * photograph stands apart from its picture, so that a list reads no pictures. A picture is kept as plain bytes, which every browser takes.
 */
const DATABASE = 'heel-to-ridge photographs';
const KNOWN = 'known';
const PICTURES = 'pictures';

/** The photographs that this browser keeps. Nothing of them is ever sent. */
class PhotographStore {
  readonly #open: () => Promise<IDBDatabase>;
  #opened: Promise<IDBDatabase> | undefined;
  /** A removal that is under way: what is asked meanwhile waits for it, or it would still find what goes. */
  #removing: Promise<void> = Promise.resolve();
  /** What the browser did not take: held while the page is open. */
  readonly #memory = new Map<string, Picture>();

  constructor(open: () => Promise<IDBDatabase> = openDatabase) {
    this.#open = open;
  }

  /** Every photograph of every job. What can't be read is left out, and left as it is. */
  async all(): Promise<readonly Photograph[]> {
    await this.#removing;
    return this.#all();
  }

  async #all(): Promise<readonly Photograph[]> {
    const held = [...this.#memory.values()].map(({ photograph }) => photograph);
    try {
      const store = (await this.#database()).transaction(KNOWN).objectStore(KNOWN);
      const kept = (await answer(store.getAll())).flatMap((each: unknown) => photographIn(each) ?? []);
      return [...kept.filter(({ id }) => !this.#memory.has(id)), ...held];
    } catch {
      return held;
    }
  }

  /** The photographs of one job. */
  async of(job: string): Promise<readonly Photograph[]> {
    return (await this.all()).filter((each) => each.job === job);
  }

  /** The picture of a photograph; undefined where it is gone. */
  async picture(id: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
    const held = this.#memory.get(id);
    if (held) return held.bytes;
    try {
      const store = (await this.#database()).transaction(PICTURES).objectStore(PICTURES);
      const found: unknown = await answer(store.get(id));
      return found instanceof ArrayBuffer ? new Uint8Array(found) : undefined;
    } catch {
      return undefined;
    }
  }

  /** Photographs with their pictures, for a file. */
  async pictures(photographs: readonly Photograph[]): Promise<readonly Picture[]> {
    const found: Picture[] = [];
    for (const photograph of photographs) {
      const bytes = await this.picture(photograph.id);
      if (bytes) found.push({ photograph, bytes });
    }
    return found;
  }

  /** Keeps a photograph; says why not, where only this page holds it. */
  async put({ photograph, bytes }: Picture): Promise<WhyNot | undefined> {
    const why = await this.#change((known, pictures) => {
      known.put(photograph, photograph.id);
      pictures.put(bytes.slice().buffer, photograph.id);
    });
    if (why === undefined) this.#memory.delete(photograph.id);
    else this.#memory.set(photograph.id, { photograph, bytes });
    return why;
  }

  /** Writes another line beside a photograph; says why not, where only this page holds it, or that the photograph is gone: it is not made anew. */
  async describe(photograph: Photograph, words: string): Promise<WhyNot | 'gone' | undefined> {
    const next = { ...photograph, words: words.slice(0, MOST_WORDS) };
    const { id } = next;
    const held = this.#memory.get(id);
    if (held) {
      this.#memory.set(id, { ...held, photograph: next });
      return undefined;
    }
    // Written before anything is asked: of a tab that closes now the words must stay.
    const why = await this.#change((known) => {
      known.put(next, id);
    });
    if (why === undefined) {
      if (await this.#hasPicture(id)) return undefined;
      // Removed in another tab: what was just written made a line of it anew, without a picture.
      await this.#removeNow([id]);
      return 'gone';
    }
    const bytes = await this.picture(id);
    if (bytes) this.#memory.set(id, { photograph: next, bytes });
    return why;
  }

  /** Lets go of photographs. */
  remove(ids: readonly string[]): Promise<void> {
    return this.#remove(async () => ids);
  }

  /** Lets go of all the photographs of a job that is gone for good. */
  removeJob(job: string): Promise<void> {
    return this.#remove(async () =>
      (await this.#all()).filter((each) => each.job === job).map(({ id }) => id),
    );
  }

  #remove(which: () => Promise<readonly string[]>): Promise<void> {
    this.#removing = this.#removing.then(async () => this.#removeNow(await which()));
    return this.#removing;
  }

  async #removeNow(ids: readonly string[]): Promise<void> {
    for (const id of ids) this.#memory.delete(id);
    if (ids.length > 0)
      await this.#change((known, pictures) => {
        for (const id of ids) {
          known.delete(id);
          pictures.delete(id);
        }
      });
  }

  /** Is a photograph held by this page alone? */
  isUnkept(id: string): boolean {
    return this.#memory.has(id);
  }

  /** Why nothing would be kept at all; undefined where the browser opens its store. */
  async trouble(): Promise<WhyNot | undefined> {
    try {
      await this.#database();
      return undefined;
    } catch (error) {
      return whyNot(error);
    }
  }

  #database(): Promise<IDBDatabase> {
    // One that was refused is asked for again: room may have been made.
    this.#opened ??= this.#open().catch((error: unknown) => {
      this.#opened = undefined;
      throw error;
    });
    return this.#opened;
  }

  /** Is the picture of a photograph kept? A store that can't be asked is no reason to let go of it. */
  async #hasPicture(id: string): Promise<boolean> {
    try {
      const store = (await this.#database()).transaction(PICTURES).objectStore(PICTURES);
      return (await answer(store.getKey(id))) !== undefined;
    } catch {
      return true;
    }
  }

  /** Changes both stores, or neither. */
  async #change(act: (known: IDBObjectStore, pictures: IDBObjectStore) => void): Promise<WhyNot | undefined> {
    try {
      const transaction = (await this.#database()).transaction([KNOWN, PICTURES], 'readwrite');
      const over = new Promise<void>((done, failed) => {
        transaction.oncomplete = () => done();
        transaction.onabort = () => failed(transaction.error);
      });
      // What fails before it is begun is told once, where it is caught below.
      over.catch(() => {});
      // At once where the browser can: of a tab that closes now, only what was committed is kept.
      act(transaction.objectStore(KNOWN), transaction.objectStore(PICTURES));
      transaction.commit?.();
      await over;
      return undefined;
    } catch (error) {
      return whyNot(error);
    }
  }
}

/** Where a browser refuses its stores, the very name may throw; here that is a refusal like any other. */
function openDatabase(): Promise<IDBDatabase> {
  return new Promise((done, failed) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore(KNOWN);
      request.result.createObjectStore(PICTURES);
    };
    request.onsuccess = () => {
      request.result.onversionchange = () => request.result.close();
      done(request.result);
    };
    request.onerror = () => failed(request.error);
  });
}

let ofThisPage: PhotographStore | undefined;

/** The photographs of this page; only where a browser runs it. */
export function photographStore(): PhotographStore {
  ofThisPage ??= new PhotographStore();
  return ofThisPage;
}
