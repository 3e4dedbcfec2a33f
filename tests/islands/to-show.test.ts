import { beforeEach, describe, expect, test } from 'vitest';
import type { JobStore } from '../../src/islands/jobs/store.ts';
import { type From, madeOf, type ToShow, toShow } from '../../src/islands/jobs/to-show.ts';
import { FakeBrowser } from './fake-browser.ts';

const HERE = 'k3m7p2q9x4w8h5n6';
const OPENED = 'b8c2d4f6g9h3j5k7';
const DELETED = 'd2e4f6g8h3j5k7m9';
const NOWHERE = 'z9y8x7w6v5u4t3s2';

let store: JobStore;
let empty: JobStore;

beforeEach(() => {
  store = new FakeBrowser().tab();
  empty = new FakeBrowser().tab();
  store.add({ name: 'Lot 4' }, { id: HERE });
  store.add({ name: 'Lot 8' }, { id: OPENED });
  store.add({ name: 'Lot 9' }, { id: DELETED, deleted: true });
  store.opened = OPENED;
});

/** What is shown, a kept job by its id alone. */
const found = (next: ToShow): unknown => (next.what === 'kept' ? ['kept', next.job.id] : next);

describe('which job a sheet shows', () => {
  test.each<[title: string, fragment: string, from: From, shows: unknown]>([
    ['at first the job that was opened last', '', 'example', ['kept', OPENED]],
    ['the one that the address names', `job=${HERE}`, 'example', ['kept', HERE]],
    ['the one that the address names, in place of another', `job=${HERE}`, 'kept', ['kept', HERE]],
    ['that it is not here, of an id that is nowhere', `job=${NOWHERE}`, 'example', { what: 'not here' }],
    ['that it is not here, of an id that was cut', 'job=K3M7-cut', 'example', { what: 'not here' }],
    ['that it is not here, of an id that was cut off', 'job=', 'example', { what: 'not here' }],
    [
      'that it is not here, of an id that was cut, while another is open',
      'job=k3m',
      'kept',
      { what: 'not here' },
    ],
    [
      'the entries of an address, whatever stands for its id',
      'job=K3M7-cut&name=Lot+7',
      'example',
      { what: 'address', entries: { name: 'Lot 7' } },
    ],
    ['what is open, at the place on the page that is called so', 'job', 'kept', { what: 'open' }],
    ['that it is not here, of one that was deleted', `job=${DELETED}`, 'example', { what: 'not here' }],
    [
      'the entries of an address, under no id',
      'name=Lot+7',
      'example',
      { what: 'address', entries: { name: 'Lot 7' } },
    ],
    [
      'the entries of an address, under its id where nobody has that',
      `job=${NOWHERE}&name=Lot+7`,
      'kept',
      { what: 'address', id: NOWHERE, entries: { name: 'Lot 7' } },
    ],
    [
      'the entries of an address, not under the id of a job that differs',
      `job=${HERE}&name=Lot+7`,
      'example',
      { what: 'address', entries: { name: 'Lot 7' } },
    ],
    ['the job here that has the same entries', `job=${HERE}&name=Lot+4`, 'example', ['kept', HERE]],
    [
      'the entries of an address, where the same are deleted here',
      `job=${DELETED}&name=Lot+9`,
      'example',
      { what: 'address', entries: { name: 'Lot 9' } },
    ],
    [
      'that entries can’t be read',
      'nmae=x',
      'kept',
      { what: 'unreadable', says: expect.stringContaining('nmae') },
    ],
    ['that a whole job came with a link', 'carried=1.p.x.00000000', 'kept', { what: 'carried' }],
    ['what is open, at a place on its page', 'main', 'kept', { what: 'open' }],
    ['what came with an address, at a place on its page', 'main', 'address', { what: 'open' }],
    ['the job opened last, where the example is at a place on its page', 'main', 'example', ['kept', OPENED]],
  ])('%s', (_, fragment, from, shows) => {
    expect(found(toShow(fragment, store, from))).toEqual(shows);
  });

  test.each<[title: string, fragment: string, from: From, shows: ToShow]>([
    ['the example, as it is', '', 'example', { what: 'as it is' }],
    ['the example at a place on its page, as it is', 'main', 'example', { what: 'as it is' }],
    ['that it is not here, of any id', `job=${HERE}`, 'example', { what: 'not here' }],
  ])('where none is kept: %s', (_, fragment, from, shows) => {
    expect(toShow(fragment, empty, from)).toEqual(shows);
  });
});

describe('what another tab made of the open job', () => {
  const theirs = { id: HERE, changed: '2026-11-26T10:42:00.000Z', entries: { name: 'Lot 4' } };
  const deleted = '2026-11-26T10:43:00.000Z';
  const open = { revision: 3, entries: { name: 'Lot 4' } };
  test.each<[title: string, more: Partial<Parameters<typeof madeOf>[1]>, made: ReturnType<typeof madeOf>]>([
    ['nothing, where this tab wrote it', { revision: 3, by: 'this' }, 'nothing'],
    [
      'nothing, where this tab wrote it and types on',
      { revision: 3, by: 'this', entries: { name: 'Lot' } },
      'nothing',
    ],
    ['nothing, where another wrote the same, and it was opened so', { revision: 3, by: 'other' }, 'nothing'],
    [
      'a change, where two wrote the same revision otherwise',
      { revision: 3, by: 'other', entries: { name: 'Lot 8' } },
      'changed',
    ],
    ['a change', { revision: 4, by: 'other', entries: { name: 'Lot 8' } }, 'changed'],
    ['the same once more, a revision on', { revision: 4, by: 'other' }, 'the same'],
    ['a deletion', { revision: 4, by: 'other', deleted }, 'deleted'],
    [
      'a deletion after a change',
      { revision: 5, by: 'other', deleted, entries: { name: 'Lot 8' } },
      'deleted',
    ],
  ])('%s', (_, more, made) => {
    expect(madeOf(open, { ...theirs, revision: 3, by: 'other', ...more }, 'this')).toBe(made);
  });
});
