import type { Browser } from '@playwright/test';
import type { Figure } from './figure.ts';
import { inBrowser } from './in-browser.ts';
import { servePacked } from './packed-server.ts';
import type { Site } from './page-load.ts';
import { largestPaint, READ_PAGE } from './paint-time.ts';
import { plainPages } from './plain-pages.ts';
import { type Builder, bareAstro, starlight, withBuilder } from './scratch.ts';
import { freshPhone } from './slow-phone.ts';

const PAGES = 30;

/** What a fresh phone asks for on a page until it is quiet, and when the largest part is painted. */
interface Seen {
  readonly bytes: number;
  readonly requests: number;
  readonly paint: number;
}

async function seen(browser: Browser, folder: string, address: string): Promise<Seen> {
  const server = await servePacked(folder);
  try {
    const phone = await freshPhone(browser);
    const page = await phone.newPage();
    await page.goto(server.at + address, { waitUntil: 'networkidle' });
    const asked = server.asked();
    await phone.close();
    return {
      bytes: asked.reduce((all, [, bytes]) => all + bytes, 0),
      requests: asked.length,
      paint: await largestPaint(browser, server.at + address),
    };
  } finally {
    await server.close();
  }
}

const figuresOf = (name: string, found: Seen, ours?: Seen): Figure[] =>
  (
    [
      ['bytes of', 'B', 'bytes'],
      ['requests of', '', 'requests'],
      ['largest paint of', 'ms', 'paint'],
    ] as const
  ).map(([what, unit, key]) => ({
    what: `${name}: ${what} a page`,
    unit,
    found: found[key],
    ...(ours && { beside: ours[key] }),
  }));

/** The same page by other site builders, from the same words, in the same run. Needs the network, to install them. */
export async function peers(folder: string, site: Site): Promise<Figure[]> {
  const pages = plainPages(site, PAGES);
  const page = pages.find(({ slug }) => READ_PAGE.split('/').includes(slug));
  if (!page) throw new Error(`found no page "${READ_PAGE}" among ${pages.length}, expected it`);
  return inBrowser(async (browser) => {
    const ours = await seen(browser, folder, READ_PAGE);
    const theirs = async (builder: Builder): Promise<Figure[]> =>
      withBuilder(builder, async ({ build, built }) => {
        const time = build(pages);
        return [
          ...figuresOf(builder.name, await seen(browser, built, `${page.slug}/`), ours),
          { what: `${builder.name}: build of ${pages.length} pages`, unit: 'ms', found: time },
        ];
      });
    return [
      ...figuresOf(`this site, /${READ_PAGE}`, ours),
      ...(await theirs(bareAstro)),
      ...(await theirs(starlight)),
    ];
  });
}
