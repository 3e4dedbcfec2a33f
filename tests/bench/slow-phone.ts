import type { Browser, BrowserContext, CDPSession, Page } from '@playwright/test';

/** How much a line carries, and how long, in milliseconds, before an answer begins. */
export interface Line {
  readonly kilobitsASecond: number;
  readonly latency: number;
}

/** How slow the phone is beside this machine, and its line. */
export interface Slow {
  readonly processor: number;
  /** Undefined: as fast as this machine is with itself. */
  readonly line?: Line;
}

/** A poor line: 400 kbps, 400 ms before each answer. */
export const poorLine = { kilobitsASecond: 400, latency: 400 } as const;

/** Makes a page as slow as a phone, from now on. */
export async function slowDown(page: Page, { processor, line }: Slow): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: processor });
  if (line) {
    const bytesASecond = (line.kilobitsASecond * 1000) / 8;
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: line.latency,
      downloadThroughput: bytesASecond,
      uploadThroughput: bytesASecond,
    });
  }
  return session;
}

/** A phone held upright, with nothing on it yet. */
export const freshPhone = (browser: Browser, worker: 'allow' | 'block' = 'block'): Promise<BrowserContext> =>
  browser.newContext({ viewport: { width: 360, height: 740 }, serviceWorkers: worker });
