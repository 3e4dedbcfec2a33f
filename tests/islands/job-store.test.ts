import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { addressOf } from '../../src/calc/declare/address.ts';
import type { Fields } from '../../src/calc/declare/field.ts';
import { addressOfUnkept, inAddress, mostEntries, sameEntries } from '../../src/islands/jobs/addresses.ts';
import type { JobStore, Places } from '../../src/islands/jobs/store.ts';
import { copied, fileNameOf, nameOf, said } from '../../src/islands/jobs/words.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import { ofThisHome } from '../../src/job/still-examples.ts';
import { exampleEntries } from '../job/entries.ts';
import { FakeBrowser, FakeStorage } from './fake-browser.ts';

let browser: FakeBrowser;
const tab = (more?: Partial<Places>): JobStore => browser.tab(more);

beforeEach(() => {
  browser = new FakeBrowser();
});

const names = (store: JobStore): string[] => store.all().jobs.map(({ entries }) => nameOf(entries));

describe('the jobs that a browser keeps', () => {
  test('a change is there for the next tab, one revision on', () => {
    const one = tab();
    const job = one.add({ name: 'A' });
    expect(one.put({ id: job.id, entries: { name: 'B' } }, job.revision)).toMatchObject({
      state: 'kept',
      job: { revision: 2, changed: '2026-11-26T10:42:00.000Z' },
    });
    expect(tab().get(job.id)?.entries).toEqual({ name: 'B' });
  });

  test('the newest change stands first', () => {
    const store = tab();
    for (const [name, minute] of [
      ['first', 1],
      ['last', 9],
      ['middle', 5],
    ] as const) {
      browser.clock = new Date(`2026-11-26T10:0${minute}:00.000Z`);
      store.add({ name });
    }
    expect(names(store)).toEqual(['last', 'middle', 'first']);
  });

  test('a tab that was overtaken writes nothing', () => {
    const one = tab();
    const two = tab();
    const { id } = one.add({ name: 'A' });
    one.put({ id, entries: { name: 'of one' } }, 1);
    const put = two.put({ id, entries: { name: 'of two' } }, 1);
    expect(put).toMatchObject({ state: 'overtaken', by: { entries: { name: 'of one' }, by: one.tab } });
    expect(one.get(id)?.entries).toEqual({ name: 'of one' });
  });

  test('an id that is taken is not taken again', () => {
    const store = tab();
    const first = store.add({ name: 'A' }, { id: 'k3m7p2q9x4w8h5n6' });
    const second = store.add({ name: 'B' }, { id: 'k3m7p2q9x4w8h5n6' });
    expect(first.id).toBe('k3m7p2q9x4w8h5n6');
    expect(second.id).not.toBe(first.id);
    expect(names(store).sort()).toEqual(['A', 'B']);
  });

  test('a deleted job keeps its last change, comes back, and is gone after seven days, with its photographs', () => {
    const store = tab();
    const { id, changed } = store.add({ name: 'A' });
    browser.clock = new Date('2026-11-26T12:00:00.000Z');
    expect(store.mark(id, true)).toMatchObject({ deleted: browser.clock.toISOString(), changed });
    expect(store.mark(id, false)).toMatchObject({ deleted: undefined, changed });
    store.mark(id, true);
    browser.clock = new Date('2026-12-03T11:59:00.000Z');
    store.purgeOld();
    expect(store.get(id)).toBeDefined();
    expect(browser.letGo).toEqual([]);
    browser.clock = new Date('2026-12-03T12:01:00.000Z');
    store.purgeOld();
    expect(store.get(id)).toBeUndefined();
    expect([...browser.copies.keys()].filter((key) => key.includes(id))).toEqual([]);
    expect(browser.letGo).toEqual([id]);
  });

  test('each tab goes back to the job that it had open; a new tab to the last one opened', () => {
    const [one, two] = [tab(), tab()];
    one.opened = 'k3m7p2q9x4w8h5n6';
    two.opened = 'b8c2d4f6g9h3j5k7';
    expect([one.opened, two.opened, tab().opened]).toEqual([
      'k3m7p2q9x4w8h5n6',
      'b8c2d4f6g9h3j5k7',
      'b8c2d4f6g9h3j5k7',
    ]);
    one.opened = undefined;
    expect(one.opened).toBeUndefined();
  });
});

describe('after the browser was killed', () => {
  test('what only the second copy holds comes back, and which job was open', async () => {
    const before = tab();
    const { id } = before.add({ name: 'A' });
    before.put({ id, entries: { name: 'typed last' } }, 1);
    before.opened = id;
    browser.local = new FakeStorage();
    const after = tab();
    expect(await after.recover()).toEqual([id]);
    expect(after.get(id)?.entries).toEqual({ name: 'typed last' });
    expect(after.opened).toBe(id);
  });

  test('an older second copy changes nothing, nor one that can’t be read', async () => {
    const store = tab();
    const { id } = store.add({ name: 'A' });
    const older = browser.copies.get(`heel-to-ridge job ${id}`) ?? '';
    store.put({ id, entries: { name: 'B' } }, 1);
    browser.copies.set(`heel-to-ridge job ${id}`, older);
    browser.copies.set('heel-to-ridge job b8c2d4f6g9h3j5k7', '{"version":1}');
    browser.copies.set('heel-to-ridge opened job', 'x');
    expect(await store.recover()).toEqual([]);
    expect(store.get(id)?.entries).toEqual({ name: 'B' });
  });

  test('a second copy of the same revision changes nothing: what was typed here stays', async () => {
    const store = tab();
    const { id } = store.add({ name: 'typed here' });
    const place = `heel-to-ridge job ${id}`;
    browser.copies.set(place, (browser.copies.get(place) ?? '').replace('typed here', 'typed there'));
    expect(await store.recover()).toEqual([]);
    expect(store.get(id)?.entries).toEqual({ name: 'typed here' });
  });

  test('an older second copy is not written over what a newer copy of the site kept', async () => {
    const { id } = tab().add({ name: 'A' });
    const place = `heel-to-ridge job ${id}`;
    const newer = '{"version":9,"revision":50}';
    browser.local.setItem(place, newer);
    const older = browser.copies.get(place);
    const store = tab();
    expect(await store.recover()).toEqual([]);
    expect([browser.local.getItem(place), browser.copies.get(place)]).toEqual([newer, older]);
  });
});

describe('where nothing can be kept', () => {
  test('a full store is told; the page goes on with what it holds', () => {
    const store = tab();
    const { id } = store.add({ name: 'A' });
    browser.local.room = 0;
    expect(store.trouble()).toBe('full');
    expect(store.put({ id, entries: { name: 'B' } }, 1)).toMatchObject({ state: 'unkept', why: 'full' });
    expect(store.put({ id, entries: { name: 'C' } }, 2)).toMatchObject({ state: 'unkept' });
    expect([store.get(id)?.entries, names(store), store.whyUnkept(id)]).toEqual([
      { name: 'C' },
      ['C'],
      'full',
    ]);
    browser.local.room = Number.POSITIVE_INFINITY;
    expect(store.put({ id, entries: { name: 'D' } }, 3)).toMatchObject({ state: 'kept' });
    expect([store.whyUnkept(id), tab().get(id)?.entries]).toEqual([undefined, { name: 'D' }]);
  });

  test('a store with room for a few letters refuses nothing, and says of each job why it is not kept', () => {
    const store = tab();
    const small = store.add({ name: 'A' });
    browser.local.room = browser.local.letters + 500;
    const large = store.add(exampleEntries);
    expect([store.trouble(), store.whyUnkept(small.id), store.whyUnkept(large.id)]).toEqual([
      undefined,
      undefined,
      'full',
    ]);
  });

  test('a store that is refused outright too', async () => {
    const refuse = () => {
      throw Object.assign(new Error('no'), { name: 'SecurityError' });
    };
    const store = tab({ local: refuse, session: refuse });
    expect(store.trouble()).toBe('refused');
    const { id } = store.add({ name: 'A' });
    expect([names(store), store.whyUnkept(id)]).toEqual([['A'], 'refused']);
    store.opened = id;
    store.takeSingle();
    store.mark(id, true);
    store.purge(id);
    expect(names(store)).toEqual([]);
    expect(await store.recover()).toEqual([]);
  });
});

describe('what stands in a place and is no job', () => {
  test.each([
    ['no JSON', '{'],
    ['of a newer copy', '{"version":2}'],
    ['nothing', ''],
    ['half of one', '{"version":1,"revision":3,"by":"x","job":{"format":"heel-to-ridge job"'],
  ])('%s: it is told, and left as it is', (_, text) => {
    browser.local.setItem('heel-to-ridge job k3m7p2q9x4w8h5n6', text);
    const store = tab();
    expect(store.all().jobs).toEqual([]);
    expect(store.all().unreadable).toMatchObject([
      { text, says: expect.stringMatching(/found .+; expected/) },
    ]);
    store.purgeOld();
    expect(browser.local.getItem('heel-to-ridge job k3m7p2q9x4w8h5n6')).toBe(text);
  });

  test('of a newer copy: a tab of an older one holds its change while it is open, and writes nothing over it', () => {
    const store = tab();
    const job = store.add(exampleEntries);
    const place = `heel-to-ridge job ${job.id}`;
    const newer = '{"version":9,"revision":5}';
    browser.local.setItem(place, newer);
    browser.copies.set(place, newer);
    const put = store.put({ id: job.id, entries: { ...exampleEntries, name: 'Typed on' } }, job.revision);
    expect(put).toMatchObject({ state: 'unkept', why: 'unreadable' });
    expect(store.whyUnkept(job.id)).toBe('unreadable');
    expect([browser.local.getItem(place), browser.copies.get(place)]).toEqual([newer, newer]);
    expect(store.get(job.id)?.entries).toMatchObject({ name: 'Typed on' });
  });

  test('a file of the job that can’t be read comes in under a new id', () => {
    const place = 'heel-to-ridge job k3m7p2q9x4w8h5n6';
    browser.local.setItem(place, '{"version":9}');
    const added = tab().add(exampleEntries, { id: 'k3m7p2q9x4w8h5n6' });
    expect(added.id).not.toBe('k3m7p2q9x4w8h5n6');
    expect(browser.local.getItem(place)).toBe('{"version":9}');
  });

  test('a job in the place of another', () => {
    const kept = readFileSync('tests/job/fixtures/kept-1/larkspur-lane.json', 'utf8').trim();
    browser.local.setItem('heel-to-ridge job b8c2d4f6g9h3j5k7', kept);
    expect(tab().all()).toMatchObject({
      jobs: [],
      unreadable: [{ says: expect.stringContaining('the id of another job') }],
    });
  });

  test('whatever the text, nothing is thrown', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        browser.local.setItem('heel-to-ridge job k3m7p2q9x4w8h5n6', text);
        browser.local.setItem('heel-to-ridge job', text);
        browser.local.setItem('heel-to-ridge opened job', text);
        const store = tab();
        store.takeSingle();
        store.all();
        return store.get('k3m7p2q9x4w8h5n6') === undefined && typeof store.opened !== 'object';
      }),
      { numRuns: 2000 },
    );
  });
});

describe('the one job of before', () => {
  const text = readFileSync('tests/job/fixtures/single-kept/larkspur-lane.json', 'utf8');
  test('becomes one of several, once', () => {
    browser.local.setItem('heel-to-ridge job', text);
    const store = tab();
    store.takeSingle();
    store.takeSingle();
    expect(names(store)).toEqual(['14 Larkspur Lane']);
    expect(store.all().jobs[0]?.entries).toEqual(JSON.parse(text));
    expect([store.opened, browser.local.getItem('heel-to-ridge job')]).toEqual([
      store.all().jobs[0]?.id,
      null,
    ]);
  });

  test('stays where it is while the store is full', () => {
    browser.local.setItem('heel-to-ridge job', text);
    browser.local.room = 0;
    tab().takeSingle();
    expect(browser.local.getItem('heel-to-ridge job')).toBe(text);
  });
});

describe('words and addresses', () => {
  test.each<[title: string, fragment: string, holds: ReturnType<typeof inAddress>]>([
    ['nothing', '', { names: false }],
    ['a job by its id', 'job=k3m7p2q9', { id: 'k3m7p2q9', names: true }],
    [
      'a job by its id, with entries',
      'job=k3m7p2q9&name=A',
      { id: 'k3m7p2q9', names: true, entries: { name: 'A' } },
    ],
    [
      'a job by its id, in letters that a mail wrote otherwise',
      '%6Aob=k3m7p2q9',
      { id: 'k3m7p2q9', names: true },
    ],
    ['a job by what is no id', 'job=x', { names: true }],
    ['a job by what is no id, with entries', 'name=A&job=x', { names: true, entries: { name: 'A' } }],
    ['a job by nothing', 'job=', { names: true }],
    ['a place on the page', 'job', { names: false }],
    ['what is no entry', 'job.0.x=1', { names: false }],
  ])('an address holds %s', (_, fragment, holds) => {
    expect(inAddress(fragment)).toEqual(holds);
  });

  test('of the fullest job that there can be, no entry is cut off', () => {
    const fullest = (fields: Fields): Record<string, unknown> =>
      Object.fromEntries(
        Object.entries(fields).map(([name, field]) => [
          name,
          field.kind === 'group'
            ? fullest(field.of)
            : field.kind === 'list'
              ? Array.from({ length: field.most }, () => fullest(field.of))
              : 'x',
        ]),
      );
    const entries = fullest(jobFields);
    expect(inAddress(addressOfUnkept('k3m7p2q9', entries))).toEqual({ id: 'k3m7p2q9', names: true, entries });
    expect(mostEntries(jobFields)).toBe(addressOf(entries).split('&').length);
  });

  test('entries are the same however they are ordered, and with what says nothing or without', () => {
    expect(sameEntries({ a: 1, b: { c: 'x' } }, { b: { c: 'x', d: '' }, a: '1' })).toBe(true);
    expect(sameEntries({ a: 1 }, { a: 2 })).toBe(false);
    expect(sameEntries(exampleEntries, JSON.parse(JSON.stringify(exampleEntries)))).toBe(true);
  });

  test.each<[title: string, name: unknown, called: string]>([
    ['no name', undefined, 'A job without an address'],
    ['nothing but a space', ' ', 'A job without an address'],
    ['a number', 7, 'A job without an address'],
    ['nothing but a mark that turns the writing', '\u202e', 'A job without an address'],
    ['a mark that turns the writing, within a name', 'Lot\u202e4', 'Lot 4'],
    ['a name on two lines', ' Lot\n 4 ', 'Lot 4'],
  ])('what a job is called that has %s', (_, name, called) => {
    expect(nameOf({ name })).toBe(called);
  });

  test('a copy as two tabs part keeps all of the example’s home', () => {
    const copy = copied(exampleEntries, [{ entries: exampleEntries }]);
    expect(copy).toEqual({ ...exampleEntries, name: '14 Larkspur Lane (copy)' });
    expect(ofThisHome(copy, exampleEntries)).toEqual(copy);
  });

  test('a copy’s name is never too long, and a file’s is letters and digits', () => {
    expect(nameOf(copied({ name: 'x'.repeat(200) }, [])).length).toBeLessThanOrEqual(200);
    expect(fileNameOf({ name: '14 Larkspur Lane / "B"' })).toBe('14-larkspur-lane-b.json');
    expect(fileNameOf({ name: '../..' })).toBe('job.json');
    expect(said('never')).toBe('at a time that is not known');
  });
});
