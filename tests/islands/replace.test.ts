import { beforeEach, describe, expect, test } from 'vitest';
import { replace, toldOfReplaced } from '../../src/islands/jobs/replace.ts';
import type { JobStore } from '../../src/islands/jobs/store.ts';
import { alreadyHere } from '../../src/islands/jobs/words.ts';
import type { KeptJob } from '../../src/job/kept-job.ts';
import { FakeBrowser } from './fake-browser.ts';

const ID = 'k3m7p2q9x4w8h5n6';
const CAME = { id: ID, changed: '2026-11-20T08:00:00.000Z', entries: { name: 'Lot 9' } };

let browser: FakeBrowser;
let store: JobStore;
let here: KeptJob;

beforeEach(() => {
  browser = new FakeBrowser();
  store = browser.tab();
  here = store.add({ name: 'Lot 4' }, { id: ID, changed: '2026-11-19T08:00:00.000Z' });
});

/** What the next visit finds: names of jobs, and of those deleted lately. */
const atNextVisit = () => {
  const { jobs } = browser.tab().all();
  const names = (deleted: boolean) =>
    jobs.filter((job) => (job.deleted !== undefined) === deleted).map(({ entries }) => entries.name);
  return { jobs: names(false), deleted: names(true) };
};

/** From now on another text can take the place of one that is kept, and nothing new is. */
const fillUp = () => {
  browser.local.room = browser.local.letters + 20;
};

/** As the next job is kept, another tab changes the one here. */
const meanwhile = () => {
  const { local } = browser;
  const other = browser.tab();
  const setItem = local.setItem.bind(local);
  local.setItem = (key, text) => {
    setItem(key, text);
    local.setItem = setItem;
    other.put({ id: ID, entries: { name: 'Lot 4, corner' } }, here.revision);
  };
};

const refuse = () => {
  store = browser.tab({
    local: () => {
      throw Object.assign(new Error('no'), { name: 'SecurityError' });
    },
  });
  here = store.add({ name: 'Lot 4' }, { id: ID });
};

describe('a job that came takes the place of one here', () => {
  test.each<
    [
      title: string,
      before: () => void,
      told: string,
      next: { readonly jobs: readonly string[]; readonly deleted: readonly string[] },
    ]
  >([
    [
      'and that one stands among the deleted',
      () => {},
      'Lot 4 is replaced by Lot 9. What was here stands under “Deleted lately”.',
      { jobs: ['Lot 9'], deleted: ['Lot 4'] },
    ],
    [
      'as it is now, not as it was when it was asked',
      () => {
        store.put({ id: ID, entries: { name: 'Lot 4, front' } }, 1);
      },
      'Lot 4, front is replaced by Lot 9. What was here stands under “Deleted lately”.',
      { jobs: ['Lot 9'], deleted: ['Lot 4, front'] },
    ],
    [
      'not in a full store, which would keep the new one alone',
      fillUp,
      'Not replaced: Lot 4 stays as it was. It would not be kept under “Deleted lately”, since the browser’s store is full. Save it to a file and let the browser keep more for this site, or choose another answer.',
      { jobs: ['Lot 4'], deleted: [] },
    ],
    [
      'not where the browser keeps nothing',
      refuse,
      'Not replaced: Lot 4 stays as it was. It would not be kept under “Deleted lately”, since this browser refuses to keep anything for this site. Save it to a file and let the browser keep more for this site, or choose another answer.',
      { jobs: ['Lot 4'], deleted: [] },
    ],
    [
      'not as another tab changes it, and nothing is left aside',
      meanwhile,
      'Not replaced: Lot 4 was changed in another tab just now.',
      { jobs: ['Lot 4, corner'], deleted: [] },
    ],
    [
      'only while the page is open, where what stands in its place can’t be read',
      () => {
        browser.local.setItem(`heel-to-ridge job ${ID}`, '{"version":9}');
      },
      'Lot 4 is replaced by Lot 9. What was here stands under “Deleted lately”. Not kept: Lot 9, since what stands in its place can’t be read here, and is left as it is. Work goes on while this page is open: save to a file before you close it.',
      { jobs: [], deleted: ['Lot 4'] },
    ],
  ])('%s', (_, before, told, next) => {
    before();
    expect(toldOfReplaced(replace(store, here, CAME), CAME)).toBe(told);
    expect(atNextVisit()).toEqual(next);
  });

  test('where it is not replaced, this page lists it once, and none that is deleted', () => {
    fillUp();
    replace(store, here, CAME);
    expect(store.all().jobs.map(({ id, entries, deleted }) => [id, entries.name, deleted])).toEqual([
      [ID, 'Lot 4', undefined],
    ]);
  });

  test('both keep when they were last changed', () => {
    replace(store, here, CAME);
    expect(
      browser
        .tab()
        .all()
        .jobs.map(({ entries, changed }) => [entries.name, changed]),
    ).toEqual([
      ['Lot 9', '2026-11-20T08:00:00.000Z'],
      ['Lot 4', '2026-11-19T08:00:00.000Z'],
    ]);
  });

  test.each([
    ['both names are told where they differ', 'Lot 4', 'Lot 9 is on this phone already, as Lot 4'],
    ['one name is told where they are the same', 'Lot 9', 'Lot 9 is on this phone already'],
  ])('in the question %s', (_, name, told) => {
    expect(alreadyHere(CAME.entries, { name })).toBe(told);
  });

  test('of the same name, it is told once', () => {
    const same = { ...CAME, entries: { name: 'Lot 4', crew: 'Blue' } };
    expect(toldOfReplaced(replace(store, here, same), same)).toBe(
      'Lot 4 is replaced. What was here stands under “Deleted lately”.',
    );
  });
});
