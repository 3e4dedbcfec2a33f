import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { newJobId } from '../../job/job-id.ts';
import { MOST_OF_PICTURES, MOST_PHOTOGRAPHS, type Photograph } from '../../job/photograph.ts';
import type { Picture } from '../../job/photographs-file.ts';
import type { WhyNot } from '../jobs/browser-store.ts';
import { inOrder } from './list.ts';
import { shrink } from './shrink.ts';
import { photographStore } from './store.ts';

export interface PhotographsState {
  /** In the order of the list; undefined until the page has looked. */
  readonly photographs: readonly Photograph[] | undefined;
  /** The addresses of their pictures, within this page. */
  readonly addresses: ReadonlyMap<string, string>;
  /** Why something is not kept. */
  readonly trouble: WhyNot | undefined;
  /** What happened last, in words. */
  readonly told: string;
  readonly tell: (words: string) => void;
  /** The photograph that was taken off last, which can be put back. */
  readonly removed: Picture | undefined;
  readonly take: (entry: string, files: readonly File[]) => Promise<void>;
  readonly describe: (photograph: Photograph, words: string) => void;
  readonly remove: (photograph: Photograph) => Promise<void>;
  readonly putBack: () => Promise<void>;
  /** Looks again at what is kept. */
  readonly look: () => Promise<void>;
}

/**
 * The photographs of the open job.
 * @param id the job's id, where it has one
 * @param ownJob makes the open job one that this phone keeps, and gives its id
 */
export function usePhotographs(
  id: string | undefined,
  ownJob: () => string | undefined,
  nameOfEntry: (entry: string) => string,
): PhotographsState {
  const [photographs, setPhotographs] = useState<readonly Photograph[] | undefined>();
  const [trouble, setTrouble] = useState<WhyNot | undefined>();
  const [told, tell] = useState('');
  const [removed, setRemoved] = useState<Picture | undefined>();
  const now = useRef(id);
  now.current = id;

  const look = useCallback(async () => {
    const store = photographStore();
    const job = now.current;
    const found = job === undefined ? [] : await store.of(job);
    const why = await store.trouble();
    // Another job may have been opened meanwhile.
    if (now.current !== job) return;
    setPhotographs(inOrder(found));
    setTrouble((before) =>
      why !== undefined
        ? why
        : found.some((each) => store.isUnkept(each.id))
          ? (before ?? 'full')
          : undefined,
    );
  }, []);
  useEffect(() => {
    look();
    setRemoved(undefined);
    const seen = () => document.visibilityState === 'visible' && look();
    document.addEventListener('visibilitychange', seen);
    addEventListener('pageshow', look);
    return () => {
      document.removeEventListener('visibilitychange', seen);
      removeEventListener('pageshow', look);
    };
  }, [id, look]);

  const take = async (entry: string, files: readonly File[]) => {
    const job = ownJob();
    if (files.length === 0 || job === undefined) return;
    now.current = job;
    setRemoved(undefined);
    const wrong: string[] = [];
    let kept = 0;
    const before = await photographStore().of(job);
    let size = before.reduce((sum, each) => sum + each.bytes, 0);
    for (const [place, file] of files.entries()) {
      if (before.length + kept >= MOST_PHOTOGRAPHS || size > MOST_OF_PICTURES) {
        wrong.push(
          `A job has ${MOST_PHOTOGRAPHS} photographs at most, and so much as a file of it holds; this one is full.`,
        );
        break;
      }
      if (files.length > 1) tell(`Working on ${place + 1} of ${files.length}.`);
      const shrunk = await shrink(file, new Date());
      if (!shrunk.ok) {
        wrong.push(shrunk.says);
        continue;
      }
      const { bytes, width, height, taken } = shrunk;
      const photograph = {
        id: newJobId(),
        job,
        entry,
        words: '',
        taken: taken.toISOString(),
        width,
        height,
        bytes: bytes.length,
      };
      const why = await photographStore().put({ photograph, bytes });
      if (why !== undefined) setTrouble(why);
      kept += 1;
      size += bytes.length;
    }
    await look();
    tell(
      [
        kept > 0 ? `${counted(kept)} of “${nameOfEntry(entry)}” added.` : '',
        wrong.length > 0 ? `Not added: ${wrong.join(' ')}` : '',
      ]
        .filter(Boolean)
        .join(' '),
    );
  };

  return {
    photographs,
    addresses: useAddresses(photographs),
    trouble,
    told,
    tell,
    removed,
    take,
    describe: (photograph, words) => {
      setPhotographs((before) =>
        before?.map((each) => (each.id === photograph.id ? { ...each, words } : each)),
      );
      photographStore()
        .describe(photograph, words)
        .then((why) => {
          if (why === 'gone') {
            tell('This photograph was removed in another tab.');
            look();
          } else if (why !== undefined) setTrouble(why);
        });
    },
    remove: async (photograph) => {
      const store = photographStore();
      const bytes = await store.picture(photograph.id);
      await store.remove([photograph.id]);
      setRemoved(bytes ? { photograph, bytes } : undefined);
      tell(`Removed: a photograph of “${nameOfEntry(photograph.entry)}”.`);
      await look();
    },
    putBack: async () => {
      if (!removed) return;
      const why = await photographStore().put(removed);
      setRemoved(undefined);
      if (why !== undefined) setTrouble(why);
      tell('The photograph is back.');
      await look();
    },
    look,
  };
}

const counted = (photographs: number): string =>
  photographs === 1 ? '1 photograph' : `${photographs} photographs`;

/** An address within this page for each picture, made when it is first shown and let go when it no longer is. */
function useAddresses(photographs: readonly Photograph[] | undefined): ReadonlyMap<string, string> {
  const [addresses, setAddresses] = useState<ReadonlyMap<string, string>>(new Map());
  const held = useRef(new Map<string, string>());
  useEffect(() => {
    let over = false;
    const wanted = new Set((photographs ?? []).map(({ id }) => id));
    const show = async () => {
      for (const [id, address] of held.current)
        if (!wanted.has(id)) {
          URL.revokeObjectURL(address);
          held.current.delete(id);
        }
      for (const id of wanted) {
        if (held.current.has(id)) continue;
        const bytes = await photographStore().picture(id);
        if (over) return;
        if (bytes) held.current.set(id, URL.createObjectURL(new Blob([bytes], { type: 'image/jpeg' })));
        setAddresses(new Map(held.current));
      }
    };
    show();
    return () => {
      over = true;
    };
  }, [photographs]);
  return addresses;
}
