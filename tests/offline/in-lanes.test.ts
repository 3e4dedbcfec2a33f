import { expect, test } from 'vitest';
import { inLanes } from '../../src/offline/worker/in-lanes.ts';

const breath = () => new Promise((over) => setTimeout(over, 1));

test('each is done once, in order, no more at a time than there are lanes', async () => {
  const begun: number[] = [];
  let [now, most] = [0, 0];
  await inLanes(3, [1, 2, 3, 4, 5, 6, 7], async (each) => {
    begun.push(each);
    most = Math.max(most, ++now);
    await breath();
    now -= 1;
  });
  expect([begun, most, now]).toEqual([[1, 2, 3, 4, 5, 6, 7], 3, 0]);
});

test('where one fails the rest is left, and what it said is told', async () => {
  const begun: number[] = [];
  const act = async (each: number) => {
    begun.push(each);
    await breath();
    if (each === 2) throw new Error('found nothing at 2');
  };
  await expect(inLanes(2, [1, 2, 3, 4, 5, 6], act)).rejects.toThrow('found nothing at 2');
  await breath();
  // The first lane may have taken its next before the second failed.
  expect(begun.length).toBeLessThanOrEqual(3);
});

test('of nothing, nothing is done', async () => {
  await inLanes(8, [], () => Promise.reject(new Error('called')));
});
