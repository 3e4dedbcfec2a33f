/** The part of a service worker's own interface that is used here: the types of a page do not have it, and both can't be had at once. */
export interface WorkerScope {
  readonly registration: {
    readonly scope: string;
    readonly installing: unknown;
    readonly waiting: unknown;
  };
  readonly clients: {
    readonly matchAll: (which: {
      readonly type: 'all';
      readonly includeUncontrolled: true;
    }) => Promise<readonly { readonly id: string }[]>;
    readonly claim: () => Promise<void>;
  };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: <K extends keyof WorkerEvents>(
    name: K,
    listen: (event: WorkerEvents[K]) => void,
  ) => void;
}

interface Extendable {
  readonly waitUntil: (done: Promise<unknown>) => void;
}

export interface FetchEvent extends Extendable {
  readonly request: Request;
  readonly clientId: string;
  /** The page that a navigation makes; not every browser tells. */
  readonly resultingClientId?: string;
  readonly respondWith: (answer: Promise<Response>) => void;
}

interface WorkerEvents {
  readonly install: Extendable;
  readonly activate: Extendable;
  readonly fetch: FetchEvent;
  readonly message: Extendable & { readonly data: unknown; readonly ports: readonly MessagePort[] };
}

/** What this version consists of; the build writes it before the worker's own lines. */
export interface CopyList {
  /** The sum of the list. */
  readonly version: string;
  /** Each file with the sum of what it holds. */
  readonly files: Readonly<Record<string, string>>;
}

/** As the worker has it: with the parcels that its files also come in. */
export interface CopyInParcels extends CopyList {
  /** Asked for by themselves, before any parcel. */
  readonly first: readonly string[];
  /** Each parcel's place, and how many files are in it: the first takes the list from its beginning, each other one goes on from there. */
  readonly parcels: readonly (readonly [place: string, many: number])[];
}
