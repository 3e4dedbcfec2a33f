import { type Copies, FETCH, RULEBOOK, RULEBOOK_BEFORE, SAY_VERSION, WHOLE } from '../../offline/names.ts';

/** Can this browser, on this host, keep a copy? Both must be asked for by https, or stand on the machine itself. */
export const canKeep = (): boolean => 'serviceWorker' in navigator && 'caches' in window;

/** How long a worker is waited for: one that was put to sleep wakes in less. */
const PATIENCE = 10_000;

/** Asks a worker for its version. */
const versionOf = (worker: ServiceWorker): Promise<string> =>
  new Promise((told, failed) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => told(String(data));
    setTimeout(() => failed(new Error('found no answer of the worker, expected its version')), PATIENCE);
    worker.postMessage(SAY_VERSION, [port2]);
  });

/** Tells a worker to fetch what its copy lacks, as after the browser threw it away; is it whole now? */
export const fetchAgain = (worker: ServiceWorker): Promise<boolean> =>
  new Promise((told) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => told(data === true);
    worker.postMessage(FETCH, [port2]);
  });

const kept = (copies: Copies, file: string, cacheName: string): Promise<Response | undefined> =>
  caches.match(new URL(file, copies.root).href, { cacheName });

/** Is every file of a worker's version on this phone? */
export const isWhole = async (worker: ServiceWorker, copies: Copies): Promise<boolean> =>
  (await kept(copies, WHOLE, copies.version(await versionOf(worker)))) !== undefined;

/** The rulebook of a worker's version. */
export const rulebookOf = async (worker: ServiceWorker, copies: Copies): Promise<string | undefined> =>
  (await kept(copies, RULEBOOK, copies.version(await versionOf(worker))))?.text();

/** The rulebook that the reader last knew, where a newer one took its place and the reader was not told yet. */
export const rulebookBefore = async (copies: Copies): Promise<string | undefined> =>
  (await kept(copies, RULEBOOK_BEFORE, copies.notes))?.text();

/** The reader was told. */
export async function forgetBefore(copies: Copies): Promise<void> {
  const notes = await caches.open(copies.notes);
  await notes.delete(new URL(RULEBOOK_BEFORE, copies.root).href);
}

/** Takes the copy off this phone, and the worker with it. What is kept of jobs is kept elsewhere. */
export async function clearCopy(copies: Copies): Promise<void> {
  const registration = await navigator.serviceWorker.getRegistration(copies.root);
  if (registration?.scope === copies.root) await registration.unregister();
  for (const name of await caches.keys())
    if (copies.isVersion(name) || name === copies.notes) await caches.delete(name);
}
