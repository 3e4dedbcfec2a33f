import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { chromium, expect, type Page, test } from '@playwright/test';
import { findWholeChromium } from './browsers.ts';

const whole = findWholeChromium() ?? '';
if (!whole && process.env.CI)
  throw new Error('found no whole Chromium, expected chromium, or CHROMIUM_PATH set');
// One without windows keeps no profile, so there is nothing to find again.
test.skip(!whole, 'found no whole Chromium: one without windows keeps nothing on the disk');

/** Now and then a browser takes up a driver's call and never answers it; then it is started anew, on the same profile. In milliseconds. */
const PATIENCE = 15_000;

/** A browser on a profile of its own, started here so that it can be killed like any process. */
async function start(
  browser: string,
  profile: string,
  tries = 3,
): Promise<{ readonly process: ChildProcess; readonly page: Page }> {
  const child = spawn(
    browser,
    [
      '--headless=new',
      '--no-sandbox',
      '--no-first-run',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
    ],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const at = await new Promise<string>((found) => {
    let said = '';
    child.stderr?.on('data', (text: Buffer) => {
      said += text;
      const [, address] = /listening on (ws:\S+)/.exec(said) ?? [];
      if (address) found(address);
    });
  });
  const connected = await chromium.connectOverCDP(at, { timeout: PATIENCE }).catch(() => undefined);
  if (!connected) {
    await kill(child);
    if (tries <= 1) throw new Error(`found no answer from ${browser} within ${PATIENCE} ms, time after time`);
    return start(browser, profile, tries - 1);
  }
  const [context] = connected.contexts();
  if (!context) throw new Error('found no context, expected the one of the profile');
  return { process: child, page: context.pages()[0] ?? (await context.newPage()) };
}

/** Half a second, a breath: a busy machine takes some of it to hand the last key to the disk. */
const BREATH = 500;

const kill = async (child: ChildProcess): Promise<void> => {
  await setTimeout(BREATH);
  await new Promise<void>((gone) => {
    child.once('exit', () => gone());
    child.kill('SIGKILL');
  });
};

test('what was typed a moment ago is there after the browser was killed', async ({ baseURL }) => {
  test.setTimeout(90_000);
  const profile = mkdtempSync(join(tmpdir(), 'heel-to-ridge-profile-'));
  try {
    const first = await start(whole, profile);
    await first.page.goto(`${baseURL}/plan/`);
    await expect(first.page.locator('.job-line')).toContainText('The example job is open');
    const name = first.page.getByLabel('What you call it').or(first.page.locator('#field-name'));
    await name.fill('');
    await name.pressSequentially('3 Teasel Row, back unit');
    await kill(first.process);

    const second = await start(whole, profile);
    await second.page.goto(`${baseURL}/plan/`);
    await expect(second.page.locator('.job-line')).toContainText(
      'Open: 3 Teasel Row, back unit. Kept on this phone.',
    );
    await expect(second.page.locator('#field-name')).toHaveValue('3 Teasel Row, back unit');

    // One that is open already, changed again.
    await second.page.locator('#field-home-length').fill('50 ft');
    await kill(second.process);
    const third = await start(whole, profile);
    await third.page.goto(`${baseURL}/plan/jobs/`);
    await expect(third.page.locator('.jobs .job')).toHaveText(['3 Teasel Row, back unit']);
    await third.page.locator('.jobs .job').click();
    await expect(third.page.locator('#field-home-length')).toHaveValue('50 ft');
    await kill(third.process);
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
});
