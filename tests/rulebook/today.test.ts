import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { today } from '../../src/rulebook/project.ts';

const zone = process.env.TZ;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'] });
});

afterEach(() => {
  vi.useRealTimers();
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

/** By hand: Auckland is 13 h ahead of UTC in November and Los Angeles 8 h behind it. */
test.each([
  ['east of Greenwich it is tomorrow already', 'Pacific/Auckland', '2026-11-25T11:00:00Z', '2026-11-26'],
  ['east of Greenwich it is today until midnight', 'Pacific/Auckland', '2026-11-25T10:59:59Z', '2026-11-25'],
  ['west of Greenwich it is today still', 'America/Los_Angeles', '2026-11-26T07:59:59Z', '2026-11-25'],
  [
    'west of Greenwich tomorrow comes at midnight',
    'America/Los_Angeles',
    '2026-11-26T08:00:00Z',
    '2026-11-26',
  ],
  ['at Greenwich it is the day of the moment', 'UTC', '2026-01-05T00:00:00Z', '2026-01-05'],
])('%s', (_, place, moment, day) => {
  process.env.TZ = place;
  vi.setSystemTime(moment);
  expect(today()).toBe(day);
});
