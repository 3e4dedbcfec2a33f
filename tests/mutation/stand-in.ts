import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

/**
 * What test files get in place of vitest while mutants are tried: the same words, and vitest’s own `expect`,
 * but the tests are kept in memory, so that thousands of mutants are tried without loading anything again.
 */
export { describe, test } from './collect.ts';

const tools = createRequire(`${process.env.MUTATION_TOOLS}/package.json`);
const load = (name: string) => import(pathToFileURL(tools.resolve(name)).href);
const chai = await load('chai');
const matchers = await load('@vitest/expect');
for (const plugin of [matchers.JestExtend, matchers.JestChaiExpect, matchers.JestAsymmetricMatchers])
  chai.use(plugin);
// Those of vitest’s own, inside of what is expected too: `toSatisfy`, `toBeOneOf`.
chai.expect.extend(chai.expect, matchers.customMatchers);

export const expect: unknown = Object.assign(
  (value: unknown, message?: string) => chai.expect(value, message),
  chai.expect,
);

const { fn } = await load('@vitest/spy');
export const vi: unknown = { fn };

/** Types are held by the compiler, not here. */
export const expectTypeOf = (): unknown =>
  new Proxy(() => undefined, { get: expectTypeOf, apply: expectTypeOf });
