import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { isKept } from '../../src/built/copy-list.ts';
import { filesIn } from '../../src/built/files.ts';
import { addressOf } from '../../src/offline/worker/fetch-whole.ts';

// No browser is asked: the copy for use without a network is saved whole or not at all, so one file that a server holds back costs all of it.

test('the server of "npm start" gives every file that the copy asks for, as it was built', async ({
  request,
  baseURL,
}) => {
  const files = filesIn('dist').filter(isKept);
  expect(files.length).toBeGreaterThan(1000);
  const wrong: string[] = [];
  for (const file of files) {
    const answer = await request.get(addressOf(file, `${baseURL}/`));
    if (!answer.ok()) wrong.push(`${file}: ${answer.status()}`);
    else if (!(await answer.body()).equals(readFileSync(`dist/${file}`))) wrong.push(`${file}: another`);
  }
  expect(wrong).toEqual([]);
});
