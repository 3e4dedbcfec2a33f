import { beforeEach, describe, expect, test } from 'vitest';
import type { JobStore } from '../../src/islands/jobs/store.ts';
import { takeIn, toldOf } from '../../src/islands/jobs/take-in.ts';
import type { OpenedJob } from '../../src/job/job-file.ts';
import { FakeBrowser } from './fake-browser.ts';

const ID = 'k3m7p2q9x4w8h5n6';
const OTHER = 'b8c2d4f6g9h3j5k7';
/** A nearly full store takes a job that has a name alone, and not one that has these letters too. */
const LONG = 'x'.repeat(2000);

const HELD =
  'Not kept: 1 job, since the browser’s store is full. Work goes on while this page is open: save to a file before you close it.';

let browser: FakeBrowser;
let store: JobStore;

beforeEach(() => {
  browser = new FakeBrowser();
  store = browser.tab();
});

const nearlyFull = () => {
  browser.local.room = browser.local.letters + 1000;
};

describe('what is told of jobs that came', () => {
  test.each<[title: string, before: () => void, came: readonly OpenedJob[], told: readonly string[]]>([
    ['none', () => {}, [], []],
    ['a new one', () => {}, [{ id: ID, entries: { name: 'Lot 4' } }], ['1 job kept.']],
    [
      'two without an id',
      () => {},
      [{ entries: { name: 'Lot 4' } }, { entries: { name: 'Lot 4' } }],
      ['2 jobs kept.'],
    ],
    [
      'one that is here, the same, and one that is here and differs',
      () => {
        store.add({ name: 'Lot 4' }, { id: ID });
        store.add({ name: 'Lot 8' }, { id: OTHER });
      },
      [
        { id: ID, entries: { name: 'Lot 4' } },
        { id: OTHER, entries: { name: 'Lot 9' } },
      ],
      ['1 job here already, the same.', '1 job here already, and different: choose below.'],
    ],
    [
      'one that a nearly full store takes, and one that it does not',
      nearlyFull,
      [{ entries: { name: 'Lot 4' } }, { entries: { name: 'Lot 8', notes: LONG } }],
      [HELD, '1 job kept.'],
    ],
    [
      'one that came before, and was not kept then',
      () => {
        nearlyFull();
        store.add({ name: 'Lot 8', notes: LONG }, { id: ID });
      },
      [{ id: ID, entries: { name: 'Lot 8', notes: LONG } }],
      [HELD],
    ],
    [
      'one that was deleted, and in a full store is back while the page is open',
      () => {
        store.add({ name: 'Lot 4' }, { id: ID });
        store.mark(ID, true);
        browser.local.room = 0;
      },
      [{ id: ID, entries: { name: 'Lot 4' } }],
      [HELD],
    ],
  ])('%s', (_, before, came, told) => {
    before();
    expect(toldOf(takeIn(store, came))).toEqual(told);
  });
});

describe('what is here after jobs came', () => {
  test('one that differs stands as it was, and waits for a word', () => {
    const here = store.add({ name: 'Lot 4' }, { id: ID });
    const job = { id: ID, entries: { name: 'Lot 9' } };
    expect(takeIn(store, [job])).toMatchObject({ differing: [{ job, here }], last: undefined });
    expect(store.get(ID)?.entries).toEqual({ name: 'Lot 4' });
  });

  test('one that was deleted, and comes the same, is brought back', () => {
    store.add({ name: 'Lot 4' }, { id: ID });
    store.mark(ID, true);
    expect(takeIn(store, [{ id: ID, entries: { name: 'Lot 4' } }])).toMatchObject({ known: 1, last: ID });
    expect(browser.tab().get(ID)?.deleted).toBeUndefined();
  });

  test('the last of several is the one to go on with', () => {
    const came = [{ entries: { name: 'Lot 4' } }, { id: ID, entries: { name: 'Lot 8' } }];
    expect(takeIn(store, came).last).toBe(ID);
  });
});
