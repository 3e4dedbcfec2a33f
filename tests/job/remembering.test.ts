import { describe, expect, test, vi } from 'vitest';
import { remembering } from '../../src/job/remembering.ts';

describe('work that remembers', () => {
  const sum = (given: { readonly of: readonly number[] }): number => given.of.reduce((a, b) => a + b, 0);

  test('the same once more is not worked again, and is the same', () => {
    const work = vi.fn(sum);
    const remembered = remembering(work, 2);
    expect([remembered({ of: [1, 2] }), remembered({ of: [1, 2] })]).toEqual([3, 3]);
    expect(work).toHaveBeenCalledTimes(1);
  });

  test('what differs anywhere is worked by itself', () => {
    const remembered = remembering(sum, 2);
    expect(
      [
        [1, 2],
        [1, 3],
        [1, 2, 0.1],
        [1, 2],
      ].map((of) => remembered({ of })),
    ).toEqual([3, 4, 3.1, 3]);
  });

  test('no more are kept than told: the oldest is forgotten', () => {
    const work = vi.fn(sum);
    const remembered = remembering(work, 2);
    for (const last of [1, 2, 3, 2, 3, 1]) remembered({ of: [last] });
    expect(work.mock.calls.map(([{ of }]) => of[0])).toEqual([1, 2, 3, 1]);
  });
});
