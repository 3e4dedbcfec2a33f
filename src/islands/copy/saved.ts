import { type Copies, FETCH, RULEBOOK, RULEBOOK_BEFORE, SAY_VERSION, WHOLE } from '../../offline/names.ts';

/** Can this browser, on this host, keep a copy? Both must be asked for by https, or stand on the machine itself. */
export const canKeep = (): boolean => 'serviceWorker' in navigator && 'caches' in window;

/** How long a worker is waited for: one that was put to sleep wakes in less. */
const PATIENCE = 10_000;

/** Says something to a worker, and gives what it answers; where it may be asleep, it is waited for no longer than is said. */
const answerOf = (worker: ServiceWorker, says: string, patience?: number): Promise<unknown> =>
  new Promise((told, failed) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => told(data);
    if (patience)
      setTimeout(
        () => failed(new Error(`found no answer of the worker to "${says}", expected one`)),
        patience,
      );
    worker.postMessage(says, [port2]);
  });

const versionOf = async (worker: ServiceWorker): Promise<string> =>
  String(await answerOf(worker, SAY_VERSION, PATIENCE));

/** Tells a worker to fetch what its copy lacks, as after the browser threw it away; is it whole now? */
export const fetchAgain = async (worker: ServiceWorker): Promise<boolean> =>
  (await answerOf(worker, FETCH)) === true;

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
