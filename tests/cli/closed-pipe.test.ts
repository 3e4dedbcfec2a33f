import { EventEmitter } from 'node:events';
import { describe, expect, test } from 'vitest';
import { mayCloseEarly } from '../../src/cli/closed-pipe.ts';

const fault = (code: string) => Object.assign(new Error(`write ${code}`), { code });

describe('an outlet that may close early', () => {
  const outlet = new EventEmitter();
  mayCloseEarly(outlet as never);
  mayCloseEarly(outlet as never);

  test('is listened to once', () => expect(outlet.listenerCount('error')).toBe(1));
  test('closes without a word', () => expect(() => outlet.emit('error', fault('EPIPE'))).not.toThrow());
  test('keeps every other fault', () =>
    expect(() => outlet.emit('error', fault('ENOSPC'))).toThrow('write ENOSPC'));
});
