import { type Copies, pageNote, SERVES } from '../names.ts';
import { keyOf } from './fetch-whole.ts';
import { filesAsked } from './file-asked.ts';
import type { FetchEvent } from './scope.ts';

/** Stands for "none of the copy": a page that came from the host is served by the host. */
const HOST = 'host';

/** Shown for what is not there. */
const NO_SUCH_PAGE = '404.html';

/** Answers what pages ask, each from the version that it was begun with. */
export class Server {
  readonly #copies: Copies;
  readonly #version: string;
  /** What was asked of the notes already. */
  readonly #begunWith = new Map<string, string>();

  constructor(copies: Copies, version: string) {
    this.#copies = copies;
    this.#version = version;
  }

  /** Is this for the copy to answer? What a page wants from the host itself it asks for without any cache. */
  takes({ method, cache, url }: Request): boolean {
    return method === 'GET' && cache !== 'no-store' && url.startsWith(this.#copies.root);
  }

  async answer(event: FetchEvent): Promise<Response> {
    const { request, clientId, resultingClientId } = event;
    const navigates = request.mode === 'navigate';
    const version = navigates ? this.#version : await this.begunWith(clientId);
    const kept = version === HOST ? undefined : await this.#kept(request.url, version);
    if (resultingClientId) {
      const begun = navigates && !kept ? HOST : version;
      this.#begunWith.set(resultingClientId, begun);
      event.waitUntil(this.note(resultingClientId, begun));
    }
    if (kept) return kept;
    try {
      return await fetch(request);
    } catch (error) {
      const page = navigates ? await this.#file(NO_SUCH_PAGE, version) : undefined;
      if (!page) throw error;
      return new Response(page.body, { status: 404, headers: page.headers });
    }
  }

  /** This version serves from now on; gives the one that did before, undefined for the first. */
  async takeOver(): Promise<string | undefined> {
    const notes = await caches.open(this.#copies.notes);
    const before = await (await notes.match(this.#key(SERVES)))?.text();
    await notes.put(this.#key(SERVES), new Response(this.#version));
    return before;
  }

  /** Is it noted which version a page was begun with? */
  async isNoted(page: string): Promise<boolean> {
    return (await caches.match(this.#note(page), { cacheName: this.#copies.notes })) !== undefined;
  }

  /** The version that a page was begun with; this one where nothing else is noted. */
  async begunWith(page: string): Promise<string> {
    const known = this.#begunWith.get(page);
    if (known !== undefined) return known;
    const note = await caches.match(this.#note(page), { cacheName: this.#copies.notes });
    const version = note ? await note.text() : this.#version;
    this.#begunWith.set(page, version);
    return version;
  }

  /** Notes which version a page was begun with: it must hold when this worker is long gone. */
  async note(page: string, version: string): Promise<void> {
    const notes = await caches.open(this.#copies.notes);
    await notes.put(this.#note(page), new Response(version));
  }

  /**
   * Lets go of the notes of pages that are closed, and of the versions that no page needs any more; only where none is on its way, which
   * would look like one of them.
   */
  async tidy(open: readonly string[], onItsWay: () => boolean): Promise<void> {
    if (onItsWay()) return;
    const notes = await caches.open(this.#copies.notes);
    // A worker whose time is over has no say.
    if ((await (await notes.match(this.#key(SERVES)))?.text()) !== this.#version) return;
    const needed = new Set([this.#version]);
    const living = new Set(open.map((page) => this.#note(page)));
    for (const { url } of await notes.keys()) {
      if (!url.startsWith(this.#note(''))) continue;
      if (living.has(url)) needed.add((await (await notes.match(url))?.text()) ?? '');
      else await notes.delete(url);
    }
    const keep = new Set([...needed].map(this.#copies.version));
    for (const name of await caches.keys())
      if (this.#copies.isVersion(name) && !keep.has(name) && !onItsWay()) await caches.delete(name);
  }

  #key(note: string): string {
    return new URL(note, this.#copies.root).href;
  }

  #note(page: string): string {
    return this.#key(pageNote(page));
  }

  async #kept(url: string, version: string): Promise<Response | undefined> {
    const name = this.#copies.version(version);
    // A copy that was cleared is not made anew by asking for it.
    if (!(await caches.has(name))) return undefined;
    const { file, folder } = filesAsked(url, this.#copies.root);
    const found = await this.#file(file, version);
    if (found || folder === undefined || !(await this.#file(folder, version))) return found;
    const to = new URL(url);
    to.pathname += '/';
    return Response.redirect(to.href, 301);
  }

  async #file(file: string, version: string): Promise<Response | undefined> {
    return await caches.match(keyOf(file, this.#copies.root), { cacheName: this.#copies.version(version) });
  }
}
