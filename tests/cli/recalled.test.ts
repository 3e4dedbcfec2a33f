import { describe, expect, test } from 'vitest';
import { recallOf, stopIfRecalled } from '../../src/cli/recalled.ts';

const recalls = [{ entry: { version: '2026.1', reason: 'A load is wrong.' } }];

describe('a command whose rulebook is recalled', () => {
  test.each([
    ['the version', '2026.1', true],
    ['an agency’s edition of it', '2026.1 + Harrow Valley 2026-10-01', true],
    ['another', '2026.2', false],
    ['one whose name begins alike', '2026.10', false],
  ])('%s', (_, version, stops) => {
    expect(recallOf(recalls, version) !== undefined).toBe(stops);
    const worked = () => stopIfRecalled(recalls, version);
    if (stops) expect(worked).toThrow('STOP. Rulebook 2026.1 is recalled: A load is wrong.');
    else expect(worked).not.toThrow();
  });
});
