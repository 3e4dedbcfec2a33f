import { answer } from './browser-store.ts';

/**
 * A second copy of every kept job, in IndexedDB. The first, in localStorage, is written before the key is let go and survives a closed or
 * crashed tab, but a browser hands it to the disk seconds later: when the whole browser is killed, what was typed last is gone. IndexedDB
 * hands each change over at once, but may drop one that is under way when the tab closes. Together they lose nothing.
 */
export interface SecondCopy {
  readonly put: (key: string, text: string) => void;
  readonly remove: (key: string) => void;
  readonly all: () => Promise<readonly (readonly [key: string, text: string])[]>;
}

const DATABASE = 'heel-to-ridge';
const JOBS = 'jobs';

/** The second copies of this browser. One that is refused stays silent: the first copy speaks for both. */
export function secondCopy(): SecondCopy {
  const opened = open();
  opened.catch(() => {});
  const change = (act: (jobs: IDBObjectStore) => void) => {
    opened
      .then((database) => {
        const transaction = database.transaction(JOBS, 'readwrite');
        act(transaction.objectStore(JOBS));
        // At once, where the browser can: it would else wait until this page has nothing to do, and a page that works out a roof at each key has.
        transaction.commit?.();
      })
      .catch(() => {});
  };
  return {
    put: (key, text) => change((jobs) => jobs.put(text, key)),
    remove: (key) => change((jobs) => jobs.delete(key)),
    all: async () => {
      try {
        const jobs = (await opened).transaction(JOBS).objectStore(JOBS);
        const [keys, texts] = await Promise.all([answer(jobs.getAllKeys()), answer(jobs.getAll())]);
        return keys.map((key, place) => [String(key), String(texts[place])] as const);
      } catch {
        return [];
      }
    },
  };
}

function open(): Promise<IDBDatabase> {
  return new Promise((done, failed) => {
    // Where a browser refuses its stores, the very name may throw; here that is a refusal like any other.
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(JOBS);
    request.onsuccess = () => {
      // A later version of the site may ask for another shape: this tab lets go.
      request.result.onversionchange = () => request.result.close();
      done(request.result);
    };
    request.onerror = () => failed(request.error);
  });
}
