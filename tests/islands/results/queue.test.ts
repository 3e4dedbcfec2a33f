import { describe, expect, test } from 'vitest';
import { type Awaited, DrawingQueue, nearestFirst } from '../../../src/islands/results/queue.ts';

describe('what is nearest to the window is drawn first', () => {
  test.each([
    { title: 'in the window, from the top', tops: [500, 0, 250], order: [1, 2, 0] },
    { title: 'begun above it and reaching into it', tops: [-800, -300, 400], order: [1, 2, 0] },
    { title: 'below, then farther below', tops: [1500, 900, 100], order: [2, 1, 0] },
    { title: 'below by less than above', tops: [-2000, -1000, 740], order: [1, 2, 0] },
    { title: 'what shows nothing last', tops: [undefined, 5000, undefined, 10], order: [3, 1, 0, 2] },
    { title: 'alike in their order', tops: [10, 10, 10], order: [0, 1, 2] },
    { title: 'nothing', tops: [], order: [] },
  ])('$title', ({ tops, order }) => {
    expect(nearestFirst(tops, 700)).toEqual(order);
  });

  test('all of them, each once', () => {
    const tops = Array.from({ length: 40 }, (_, place) => (place % 7 === 0 ? undefined : (place * 37) % 11));
    expect([...nearestFirst(tops, 5)].sort((a, b) => a - b)).toEqual(tops.map((_, place) => place));
  });
});

/** A page whose clock moves only as parts are drawn, and whose tasks run when told. */
function page(cost: Readonly<Record<string, number>>) {
  let clock = 0;
  const tasks: [when: string, work: () => void][] = [];
  const drawn: string[] = [];
  const said: boolean[] = [];
  const queue = new DrawingQueue({
    now: () => clock,
    afterPaint: (work) => tasks.push(['painted', work]),
    soon: (work) => tasks.push(['soon', work]),
    waits: (waiting) => said.push(waiting),
    height: () => 700,
  });
  const part = (name: string, top = 0, then = (): void => {}): Awaited => ({
    draw: () => {
      clock += cost[name] ?? 0;
      drawn.push(name);
      then();
    },
    top: () => top,
  });
  /** Runs the next task; gives what it waited for, and what it drew. */
  const step = (): [string, string[]] | undefined => {
    const next = tasks.shift();
    if (!next) return undefined;
    const before = drawn.length;
    next[1]();
    return [next[0], drawn.slice(before)];
  };
  return { queue, part, step, drawn, said };
}

describe('the queue of what is drawn later', () => {
  test('nothing is drawn before the answer is painted; then in slices, with a turn for keys between', () => {
    const { queue, part, step, drawn } = page({ a: 3, b: 3, c: 30, d: 1 });
    for (const name of ['a', 'b', 'c', 'd']) queue.add(part(name));
    expect(drawn).toEqual([]);
    expect(step()).toEqual(['painted', ['a', 'b']]);
    expect(step()).toEqual(['soon', ['c']]);
    expect(step()).toEqual(['soon', ['d']]);
    expect(step()).toBeUndefined();
  });

  test('a part that is added again while it waits is drawn once and keeps its place', () => {
    const { queue, part, step } = page({ a: 20, b: 20 });
    const [a, b] = [part('a'), part('b')];
    queue.add(a);
    queue.add(b);
    queue.add(b);
    expect(step()).toEqual(['painted', ['a']]);
    // The next key: what has not had its turn yet has it before what had it.
    queue.add(a);
    queue.add(b);
    expect(step()).toEqual(['soon', ['b']]);
    expect(step()).toEqual(['painted', ['a']]);
    expect(step()).toBeUndefined();
  });

  test('what is added by drawing waits for its line, and is asked where it stands only once that is painted', () => {
    const { queue, part, step } = page({ a: 1, b: 20, near: 1, far: 1 });
    queue.add(
      part('a', 0, () => {
        queue.add(part('far', 900));
        queue.add(part('near', 100));
      }),
    );
    queue.add(part('b', 10));
    expect(step()).toEqual(['painted', ['a', 'b']]);
    expect(step()).toEqual(['painted', ['near', 'far']]);
    expect(step()).toBeUndefined();
  });

  test('a part that fails does not keep the others from their turn', () => {
    const { queue, part, step, said } = page({ a: 1, b: 1 });
    queue.add(
      part('a', 0, () => {
        throw new Error('not to be drawn');
      }),
    );
    queue.add(part('b', 10));
    expect(step).toThrow('not to be drawn');
    expect(step()).toEqual(['soon', ['b']]);
    expect(said).toEqual([true, false]);
  });

  test('before a print all of it is drawn at once, with what is added by drawing', () => {
    const { queue, part, drawn, said, step } = page({ a: 50, b: 50, inner: 50 });
    const inner = part('inner');
    queue.add(part('a', 0, () => queue.add(inner)));
    queue.add(part('b'));
    queue.drawAll();
    expect(drawn).toEqual(['a', 'b', 'inner']);
    expect(said).toEqual([true, false]);
    // What was asked for finds nothing left.
    expect(step()).toEqual(['painted', []]);
    expect(said).toEqual([true, false]);
  });

  test('it says that something waits from the first key until nothing does', () => {
    const { queue, part, step, said } = page({ a: 20, b: 20 });
    queue.add(part('a'));
    queue.add(part('b'));
    step();
    expect(said).toEqual([true]);
    step();
    expect(said).toEqual([true, false]);
    queue.add(part('a'));
    expect(said).toEqual([true, false, true]);
  });

  test('what is gone from the page is not drawn, and is not waited for', () => {
    const { queue, part, step, said } = page({});
    const gone = part('gone');
    queue.add(gone);
    queue.letGo(gone);
    expect(said).toEqual([true, false]);
    expect(step()).toEqual(['painted', []]);
    queue.letGo(gone);
    expect(said).toEqual([true, false]);
  });
});
