import { expect, test } from 'vitest';
import { noise } from '../../src/calc/crew/noise/declaration.ts';
import { readFields, sentence } from '../../src/calc/declare/read-fields.ts';
import { blowingRate } from '../../src/calc/machine/rate/declaration.ts';

test('the times of a day in noise, and of a run of the machine, are read so', () => {
  const day = readFields(noise.fields, { periods: [{ level: '95 dBA', time: '1 h 30 min' }] });
  expect(day).toMatchObject({ ok: true, value: { periods: [{ time: { amount: 90, unit: 'min' } }] } });
  const run = readFields(blowingRate.fields, { ...blowingRate.example, time: '2 min 30 s' });
  expect(run).toMatchObject({ ok: true, value: { time: { amount: 150, unit: 's' } } });
  const clock = readFields(noise.fields, { periods: [{ level: '95 dBA', time: '1:30' }] });
  expect(clock.ok ? [] : clock.problems.map(sentence)).toEqual([
    expect.stringContaining('found "1:30", which could mean two things; expected 1 h 30 min or 1 min 30 s.'),
  ]);
});
