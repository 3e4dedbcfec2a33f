import { chromium } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filesIn } from '../../../src/built/files.ts';
import { siteAddresses } from '../../../src/remark/site-addresses.ts';
import { loadProject } from '../../../src/rulebook/project.ts';
import { findChromium } from '../../site/browsers.ts';
import { servePlainly } from '../../site/plain-server.ts';
import { ASTRO, type Checkout, checkout, type Ended, WHILE_IT_BUILDS } from '../checkout.ts';
import { EXAMPLE } from './folder.ts';

const RULEBOOK = '2026.10';
const EDITION = `${RULEBOOK} + Harrow Valley 2026-10-01`;

/** The smallest type of a card that an agency adds to, in points. */
const SMALLEST_WITH_LOCAL = 8.5;

const withExample = loadProject('let pass', [EXAMPLE]);

describe('the site with an agency’s folder, whose notes hold a script', () => {
  let copy: Checkout;
  let built: Ended;
  beforeAll(async () => {
    copy = checkout({ LOCAL: EXAMPLE });
    const script = '<script>alert(1)</script>';
    copy.change(`${EXAMPLE}/notes.yaml`, 'Allow a week for it.', `Allow a week for it. ${script} {x}`);
    copy.change(`${EXAMPLE}/cautions.yaml`, 'Fog from the river', `Fog${script} from the river`);
    expect(await copy.node('src/cli/rules-generate.ts')).toMatchObject({ code: 0, said: '' });
    built = await copy.node(ASTRO, 'build', '--force');
  }, WHILE_IT_BUILDS);
  afterAll(() => copy.remove());

  const html = (page: string): string => copy.read(`dist/${page}/index.html`);
  const words = (text: string): string =>
    text
      .replace(/<[^>]*>/g, ' ')
      .replace(/\s+/g, ' ')
      .replace(/ ([.,;])/g, '$1');
  /** What an agency says on a page, and the page without it. */
  const parts = (page: string) => {
    const text = html(page);
    const local = text.match(/<section class="local".*?<\/section>/gs) ?? [];
    return {
      local: words(local.join(' ')),
      rest: words(local.reduce((all, each) => all.replace(each, ''), text)),
    };
  };

  test('its addresses are those that an agency’s links are held against', () => {
    const { known, open } = siteAddresses(withExample.data, withExample.local);
    const built = filesIn(`${copy.folder}/dist`)
      .filter((file) => !/^(_astro\/|404\.html$)/.test(file))
      .map((file) => `/${file.replace(/(^|\/)index\.html$/, '$1')}`);
    expect(built.filter((address) => !known.has(address) && !open(address))).toEqual([]);
    expect([...known].filter((address) => !built.includes(address))).toEqual([]);
  });

  test('the steps and headings of its pages have the ids that an agency’s links are held against', () => {
    const { known, idsOf } = siteAddresses(withExample.data, withExample.local);
    const wrong = [...known].flatMap((address) => {
      const ids = idsOf(address) ?? [];
      const page = ids.length > 0 ? html(address.slice(1, -1)) : '';
      return ids.filter((id) => !page.includes(` id="${id}"`)).map((id) => `${address}#${id}`);
    });
    expect(wrong).toEqual([]);
    expect(idsOf('/do/patching/')).toEqual(expect.arrayContaining(['step-1', 'membrane']));
  });

  test('it stands', () => expect(built.code, built.out + built.said).toBe(0));

  test.each([
    ['rules/clearance.flue.to-combustibles', 'Harrow Valley Home Repair at least 3 in, stricter.'],
    ['rules/clearance.flue.to-combustibles', `In the rulebook, ${RULEBOOK} at least 2 in.`],
    ['rules/clearance.flue.to-combustibles', 'Look at the collar before you measure.'],
    ['rules/patch.layers.metal-side', `In the rulebook, ${RULEBOOK} 10 in.`],
    ['do/patching', 'Patch after the frost has gone.'],
    ['cards/patching', 'Patch after the frost has gone.'],
    ['plan/before', 'Ask for the permit first.'],
    ['calculators/clear-spaces', 'Look at the collar before you measure.'],
  ])('%s says in the agency’s block, and there only: %s', (page, said) => {
    const { local, rest } = parts(page);
    expect(local).toContain(said);
    expect(rest).not.toContain(said);
    expect(local).toContain('Harrow Valley Home Repair');
  });

  test('its note stands behind the steps of a page, before its numbers and the way on to the next', () => {
    const inOrder = ['id="step-1"', 'class="local-note"', 'Numbers on this page', 'rel="next"'];
    const places = inOrder.map((each) => html('do/patching').indexOf(each));
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  test.each(['do/patching', 'cards/patching', 'safety/falls'])(
    '%s has the agency’s caution under its name, right behind the one it stands beside',
    (page) => {
      const behind = html(page).match(
        /Nobody works on the roof without protection(?:(?!<\/div>).)*<\/div>\s*<div class="caution local-caution warn"(?:(?!<\/div>).)*/s,
      )?.[0];
      expect(words(behind ?? '')).toMatch(/Warning, Harrow Valley\. Fog.* from the river leaves/);
      // On a card what stands beside a caution leads to its source.
      if (!page.startsWith('cards/'))
        expect(words(behind ?? '')).toContain('Source: common practice, no source');
    },
  );

  test(
    'its cards still print on one sheet of Letter and of A4, in type that can be read',
    async () => {
      const withLocal = copy
        .files('dist/cards')
        .filter(
          (name) => !name.includes('.') && /class="(local"|[^"]*local-caution)/.test(html(`cards/${name}`)),
        );
      expect(withLocal).toContain('patching');
      const served = await servePlainly(`${copy.folder}/dist`, '/');
      const browser = await chromium.launch({
        executablePath: await findChromium(),
        args: ['--no-sandbox'],
      });
      try {
        const page = await browser.newPage();
        for (const name of withLocal) {
          await page.goto(`${served.at}cards/${name}/`);
          for (const format of ['Letter', 'A4']) {
            const pdf = (await page.pdf({ format })).toString('latin1');
            expect(pdf.match(/\/Type\s*\/Page\b/g), `${name} on ${format}`).toHaveLength(1);
          }
          const points = await page
            .locator('.card .columns p')
            .evaluateAll((all) =>
              all.map((each) => Number.parseFloat(getComputedStyle(each).fontSize) * 0.75),
            );
          expect(Math.min(...points), name).toBeGreaterThanOrEqual(SMALLEST_WITH_LOCAL - 0.01);
        }
      } finally {
        await browser.close();
        await served.close();
      }
    },
    WHILE_IT_BUILDS,
  );

  test('the browser has it for the results it works out', () => {
    expect(copy.read('src/generated/calculation-rules.ts')).toMatch(
      /"caution\.roof\.falls":(?:(?!"caution\.).)*"beside":\[\{"agency":"Harrow Valley"/,
    );
  });

  test('the spreadsheet has both values where they differ', () => {
    const [head = '', ...rows] = copy.read('dist/data/rulebook.csv').split('\r\n');
    const place = head.split(',').indexOf('in the rulebook');
    expect(place).toBeGreaterThan(0);
    expect(rows.find((row) => row.startsWith('clearance.flue.to-combustibles,'))).toContain(
      ',at least 2 in,',
    );
  });

  test('the card that opens in place holds both values', () => {
    const card = html('rules/clearance.flue.to-combustibles').match(
      /<article class="rule-card".*?<\/article>/s,
    )?.[0];
    expect(words(card ?? '')).toContain('at least 3 in, stricter');
    expect(words(card ?? '')).toContain(`In the rulebook, ${RULEBOOK} at least 2 in`);
  });

  test.each(['plan', 'do/patching', 'rules', 'local', 'cards/patching'])(
    'the head and the foot of %s name the edition',
    (page) => {
      expect(words(html(page).match(/<header>.*?<\/header>/s)?.[0] ?? '')).toContain(EDITION);
      expect(words(html(page).match(/<footer>.*?<\/footer>/s)?.[0] ?? '')).toContain(EDITION);
    },
  );

  test('the table of values can be filtered for what is changed', () => {
    const rows = [...html('rules').matchAll(/data-local="([^"]*)"[^>]*>.*?<code>([^<]*)/gs)];
    const which = (state: string) => rows.filter(([, each]) => each === state).map(([, , id]) => id);
    expect(which('changed locally')).toEqual(['clearance.flue.to-combustibles', 'patch.layers.overlap']);
    expect(which('follows from a local change')).toContain('patch.layers.metal-side');
  });

  // Harrow Valley laps a patch by 3 in: 6 + 2 x 3 = 12 in of metal for the hole of 6 in, where the rulebook has 10 in.
  test.each([
    ['calculators/patch-layers', '3 in (Harrow Valley) common practice, no source. In the rulebook: 2 in'],
    [
      'cards/patching',
      '12 in (follows from Harrow Valley), worked out by us from: Diameter of a hole; Overlap of a patch layer. In the rulebook: 10 in',
    ],
    ['rules', 'at least 3 in (Harrow Valley). In the rulebook: at least 2 in'],
    ['plan/patches', 'Overlap of a patch layer (Harrow Valley)'],
    [
      'train/answers',
      'at least 3 in (Harrow Valley) Clearance of a combustion flue, read Harrow Valley notice 12 (2026), paragraph 2. In the rulebook: at least 2 in',
    ],
    // 8 + 2 x 3 = 14 in.
    ['train/answers', 'Square of metal 14 in by Patch, with Overlap of a patch layer (Harrow Valley)'],
    [
      'train/lessons',
      '3 in (Harrow Valley) Overlap of a patch layer, practice common practice, no source. In the rulebook: 2 in',
    ],
    ['calculators/patch-layers/example', 'square of metal, screwed 12 in 3 in (Harrow Valley)'],
  ])('%s tells whose value it is, and the rulebook’s', (page, told) => {
    expect(words(html(page))).toContain(told);
  });

  test('exports and what goes to the browser carry the edition', () => {
    expect(JSON.parse(copy.read('dist/data/rulebook.json')).version).toBe(EDITION);
    expect(JSON.parse(copy.read('dist/data/local.json'))).toMatchObject({ version: EDITION });
    expect(copy.read('src/generated/calculation-rules.ts')).toContain(`"version":"${EDITION}"`);
  });

  test('a page of the agency’s own shows the value that holds here', () => {
    expect(words(html('local/harrow-valley/who-to-call'))).toContain('Keep 3 in from a flue');
  });

  test('every check still holds, against the rulebook as it was published', () => {
    expect(html('checks/patch-layers')).not.toMatch(/does not hold|fails/);
    for (const page of ['checks', 'checks/patch-layers'])
      expect(words(html(page))).toContain('worked with the rulebook as it was published');
  });

  test('a caution that an agency speaks beside is named with its value', () => {
    expect(words(html('local'))).toContain(
      'beside “Nobody works on the roof without protection from a fall of 6 ft',
    );
  });

  test.each(['plan/before', 'local', 'do/first-visit', 'safety/falls'])(
    'no script came through on %s',
    (page) => {
      expect(html(page)).not.toContain('<script>alert');
      expect(html(page)).toMatch(/&lt;script(?:&gt;|>)alert\(1\)/);
    },
  );
});
