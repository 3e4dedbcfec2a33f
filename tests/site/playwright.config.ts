import { defineConfig, type Project } from '@playwright/test';
import { findChromium, findFirefox } from './browsers.ts';
import { ONCE } from './once.ts';

// Its own port, so that two runs on one machine can stand side by side.
const PORT = Number(process.env.SITE_TEST_PORT ?? 4399);
const firefox = findFirefox();
// Without Firefox the site is still tested in Chromium; where tests guard a landing, both are asked for.
if (!firefox && process.env.CI)
  throw new Error('found no Firefox, expected firefox-esr, or FIREFOX_PATH set');

const projects: Project[] = [
  {
    name: 'chromium',
    testIgnore: '*.firefox.spec.ts',
    use: {
      browserName: 'chromium',
      // One window for the tests of a worker, emptied between them: to open one anew took a tenth of the time. Firefox hangs in the second.
      reuseContext: true,
      // A page of a test is gone before its script is hot: to make machine code of it, beside it, took a fifth of the time of a visit.
      launchOptions: {
        executablePath: await findChromium(),
        args: ['--no-sandbox', '--js-flags=--no-concurrent-recompilation --no-maglev --no-opt'],
      },
    },
  },
];
if (firefox) {
  // First, and in one worker while another begins with Chromium: to start it once more costs as much as seven of its pages.
  projects.unshift({
    name: 'firefox',
    ...(process.env.EVERY_TEST ? {} : { grepInvert: new RegExp(ONCE.tag), workers: 1 }),
    testIgnore: '*.chromium.spec.ts',
    use: {
      browserName: 'firefox',
      channel: 'moz-firefox',
      // One process for all pages, which are of one site: a process for each window took an eighth of the time.
      launchOptions: {
        executablePath: firefox,
        firefoxUserPrefs: {
          'fission.autostart': false,
          'dom.ipc.processCount': 1,
          'dom.ipc.keepProcessesAlive.web': 1,
        },
      },
    },
  });
}

export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  outputDir: '../../test-results',
  fullyParallel: true,
  workers: 2,
  // A machine that does much else at once is slow, not wrong.
  timeout: 60_000,
  reporter: [['list']],
  // The worker that keeps the site would fetch all of it in every test; those that try it allow it.
  use: { baseURL: `http://localhost:${PORT}`, serviceWorkers: 'block' },
  projects,
  webServer: {
    // The server of "npm start" packs every answer anew, which took the time of ten tests; it has a test of its own.
    command: `node tests/site/serve.ts ${PORT}`,
    cwd: '../..',
    url: `http://localhost:${PORT}/`,
    reuseExistingServer: false,
  },
});
