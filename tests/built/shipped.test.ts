import { describe, expect, test } from 'vitest';
import { packageOf, shippedPackage } from '../../src/built/shipped.ts';

describe('the package of a module', () => {
  test.each([
    ['/home/a/node_modules/fflate/esm/browser.js', 'fflate'],
    ['C:\\a\\node_modules\\qr\\index.js', 'qr'],
    ['/a/node_modules/@preact/signals/dist/signals.mjs', '@preact/signals'],
    ['/a/node_modules/astro/node_modules/zod/index.js', 'zod'],
    ['\0vite/preload-helper.js', 'vite'],
    ['/a/src/islands/search/mount.ts', undefined],
    ['src/pages/index.astro?astro&type=script&index=0&lang.ts', undefined],
  ])('%s: %s', (module, name) => {
    expect(packageOf(module)).toBe(name);
  });
});

test('a package comes with its licence and the text of it', () => {
  const { license, text, version } = shippedPackage('fflate');
  expect(license).toBe('MIT');
  expect(text).toContain('Permission is hereby granted');
  expect(version).toMatch(/^\d+\.\d+\.\d+$/);
});
