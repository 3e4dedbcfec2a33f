import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { isKept, PARCELS } from '../../src/built/copy-list.ts';
import { filesIn } from '../../src/built/files.ts';
import { addressOf } from '../../src/offline/worker/fetch-whole.ts';

// The copy for use without a network is saved whole or not at all, so one file that a server holds back costs all of it.

test('the server of "npm start" tells where the site is, and gives every file that the copy asks for, as it was built', async ({
  page,
  baseURL,
}) => {
  // One above the port of the tests, so that two runs on one machine can stand side by side.
  const port = Number(new URL(baseURL ?? '').port) + 1;
  const server = spawn(process.execPath, ['src/cli/start.ts', '--built', '--port', `${port}`]);
  try {
    const told = await new Promise<string>((told, failed) => {
      let said = '';
      server.stdout.on('data', (text) => {
        said += text;
        if (/ends it/.test(said)) told(said);
      });
      server.once('exit', () => failed(new Error(`found no server, it said: ${said}`)));
    });
    const [at = '', example = ''] = told.match(/http\S+/g) ?? [];
    expect(at).toBe(`http://localhost:${port}/`);
    const files = filesIn('dist').filter((file) => isKept(file) || file.startsWith(PARCELS));
    expect(files.length).toBeGreaterThan(1000);
    const wrong: string[] = [];
    for (const file of files) {
      const answer = await fetch(addressOf(file, at));
      const body = Buffer.from(await answer.arrayBuffer());
      if (!answer.ok) wrong.push(`${file}: ${answer.status}`);
      else if (!body.equals(readFileSync(`dist/${file}`))) wrong.push(`${file}: another`);
    }
    expect(wrong).toEqual([]);
    await page.goto(example);
    await expect(page.locator('.job-line')).toContainText('The example job is open');
    await page.getByLabel('Length of the roof').first().fill('50 ft');
    await expect(page).toHaveURL(/\/plan\/#job=/);
    await page.goto(`${at}no/such/page/`);
    await expect(page.getByRole('heading')).toHaveText('No such page');
  } finally {
    server.kill();
  }
});

test('"npm start" refuses a port that is taken, and serves at no other', async ({ baseURL }) => {
  const port = new URL(baseURL ?? '').port;
  const started = spawn(process.execPath, ['src/cli/start.ts', '--built', '--port', port]);
  try {
    let [out, said] = ['', ''];
    started.stdout.on('data', (text) => {
      out += text;
    });
    started.stderr.on('data', (text) => {
      said += text;
    });
    const code = await new Promise((ended) => started.once('close', ended));
    expect({ code, out, said: said.trim() }).toEqual({
      code: 2,
      out: '',
      said: `found port ${port} taken, expected one that is free; npm start -- --built --port NUMBER serves what is built already`,
    });
  } finally {
    started.kill();
  }
});
