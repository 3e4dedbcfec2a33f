import { Session } from 'node:inspector';
import { writeFileSync } from 'node:fs';
import { afterAll, beforeAll } from 'vitest';
const s = new Session(); s.connect();
beforeAll(() => new Promise<void>((ok) => s.post('Profiler.enable', () => s.post('Profiler.setSamplingInterval', { interval: 500 }, () => s.post('Profiler.start', () => ok())))));
afterAll(() => new Promise<void>((ok) => s.post('Profiler.stop', (e, r) => { if (r) writeFileSync(`/tmp/cpu/${process.pid}-${Math.random()}.json`, JSON.stringify(r.profile)); ok(); })));
