import { copiesOf, FETCH, RULEBOOK, RULEBOOK_BEFORE, SAY_VERSION, TAKE_OVER } from '../names.ts';
import { fetchWhole, keyOf } from './fetch-whole.ts';
import type { CopyInParcels, WorkerScope } from './scope.ts';
import { Server } from './serve.ts';

/** Written before these lines by the build. */
declare const COPY: CopyInParcels;

// Keeps the site for use without a network. A version is fetched whole before it is offered, waits until a page says that it may take over,
// or until no page of the version before is open; and never serves a page that was begun with another.
const scope = self as unknown as WorkerScope;
const copies = copiesOf(scope.registration.scope);
const server = new Server(copies, COPY.version);

const openPages = async (): Promise<readonly string[]> =>
  (await scope.clients.matchAll({ type: 'all', includeUncontrolled: true })).map(({ id }) => id);

/** Is another version being fetched, or waiting? */
const onItsWay = (): boolean => !!scope.registration.installing || !!scope.registration.waiting;

async function takeOver(): Promise<void> {
  const open = await openPages();
  const before = await server.takeOver();
  if (before !== undefined && before !== COPY.version) {
    // Pages of which the browser did not tell as they were begun: they were begun with the version before.
    for (const page of open) if (!(await server.isNoted(page))) await server.note(page, before);
    await keepRulebookOf(copies.version(before));
  }
  // The page that brought the first version is of that version too: it need not be opened again to be kept.
  if (before === undefined) await scope.clients.claim();
}

/** The reader is to be told what changed since the rulebook that the reader last knew, however many versions lie between. */
async function keepRulebookOf(cache: string): Promise<void> {
  const notes = await caches.open(copies.notes);
  const known = keyOf(RULEBOOK_BEFORE, copies.root);
  if (await notes.match(known)) return;
  const rulebook = await caches.match(keyOf(RULEBOOK, copies.root), { cacheName: cache });
  if (rulebook) await notes.put(known, rulebook);
}

scope.addEventListener('install', (event) => event.waitUntil(fetchWhole(COPY, copies)));
scope.addEventListener('activate', (event) => event.waitUntil(takeOver()));
scope.addEventListener('fetch', (event) => {
  if (!server.takes(event.request)) return;
  event.respondWith(server.answer(event));
});
scope.addEventListener('message', (event) => {
  if (event.data === TAKE_OVER) event.waitUntil(scope.skipWaiting());
  if (event.data === SAY_VERSION) {
    event.ports[0]?.postMessage(COPY.version);
    // Every page asks this once it stands: by then the page that it took the place of is closed.
    event.waitUntil(openPages().then((open) => server.tidy(open, onItsWay)));
  }
  // A browser that is short of room may have thrown the files away and kept the worker.
  if (event.data === FETCH)
    event.waitUntil(
      fetchWhole(COPY, copies).then(
        () => event.ports[0]?.postMessage(true),
        () => event.ports[0]?.postMessage(false),
      ),
    );
});
