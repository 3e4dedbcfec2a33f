/** Why the browser does not keep something. */
export type WhyNot = 'full' | 'refused' | 'unreadable';

/**
 * Why did a store of the browser take nothing? Browsers name the error of a full one each in its own way, but all with "quota" in it.
 * @example whyNot(new DOMException('no room', 'QuotaExceededError')) // => 'full'
 */
export const whyNot = (error: unknown): WhyNot =>
  error instanceof Error && /quota/i.test(error.name) ? 'full' : 'refused';

/** What a request to the browser's database comes back with. */
export const answer = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
