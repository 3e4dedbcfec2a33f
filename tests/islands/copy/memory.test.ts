import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { memoryOf } from '../../../src/islands/copy/memory.ts';

const ROOT = 'https://notes.example.org/roof/';

/** What the browser's store holds, and what it does when it is asked. */
let kept: Map<string, string>;
let mood: 'willing' | 'full' | 'refused';

beforeEach(() => {
  kept = new Map();
  mood = 'willing';
  const asked = (): void => {
    if (mood === 'refused') throw new DOMException('no', 'SecurityError');
  };
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => {
      asked();
      return kept.get(key) ?? null;
    },
    setItem: (key: string, text: string) => {
      asked();
      if (mood === 'full') throw new DOMException('no room', 'QuotaExceededError');
      kept.set(key, text);
    },
    removeItem: (key: string) => {
      asked();
      kept.delete(key);
    },
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('what a phone remembers of the copy', () => {
  test('is there for the next page of the same site, and for no other site of the host', () => {
    memoryOf(ROOT).recall = 'none';
    expect(memoryOf(ROOT).recall).toBe('none');
    expect(memoryOf('https://notes.example.org/other/').recall).toBeUndefined();
  });

  test('is forgotten when it is taken back', () => {
    const memory = memoryOf(ROOT);
    memory.declined = 'yes';
    memory.declined = undefined;
    expect([memory.declined, memoryOf(ROOT).declined]).toEqual([undefined, undefined]);
  });

  test('of a full store, the newer word stands before the one that was kept: a recall is never hidden', () => {
    const memory = memoryOf(ROOT);
    memory.recall = 'none';
    mood = 'full';
    memory.recall = 'recalled';
    expect(memory.recall).toBe('recalled');
    mood = 'willing';
    memory.recall = 'recalled again';
    expect([memory.recall, memoryOf(ROOT).recall]).toEqual(['recalled again', 'recalled again']);
  });

  test('of a store that is refused, what was said holds while the page is open, and so does what was taken back', () => {
    memoryOf(ROOT).declined = 'yes';
    mood = 'refused';
    const memory = memoryOf(ROOT);
    expect(memory.checked).toBeUndefined();
    memory.checked = '2026-11-26T14:05:00.000Z';
    expect(memory.checked).toBe('2026-11-26T14:05:00.000Z');
    memory.declined = undefined;
    mood = 'willing';
    expect(memory.declined).toBeUndefined();
  });
});
