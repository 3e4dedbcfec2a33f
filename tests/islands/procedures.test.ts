import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ways } from '../../src/calc/ways/compare.ts';
import { isOfWay, nextSheet, procedures, proceduresOf } from '../../src/islands/job/procedures.ts';
import { jobSheets } from '../../src/islands/job/sheets.ts';
import { isTakenOn, listed } from '../../src/islands/photographs/list.ts';

test.each(Object.entries(procedures))(
  'the procedure %s is called "%s" on its own page too',
  (page, title) => {
    const [, own] = /^title: (.+)$/m.exec(readFileSync(`content/en/do/${page}.mdx`, 'utf8')) ?? [];
    expect(own).toBe(title);
  },
);

test('each sheet of work leads to a procedure of the way that is taken, and each but the last to the next', () => {
  for (const { path } of jobSheets)
    for (const way of [undefined, ...ways]) {
      const work = proceduresOf(path, way);
      // Figures that no act belongs to; and the photographs, each of which leads to its own step.
      expect(work.length > 0, path).toBe(path !== 'heat' && path !== 'photographs');
      if (path !== 'before')
        for (const page of work) expect(isOfWay(page, way ?? 'roof holes'), page).toBe(true);
    }
  expect(jobSheets.map(({ path }) => nextSheet(path)?.path)).toEqual([
    ...jobSheets.slice(1).map(({ path }) => path),
    undefined,
  ]);
});

test.each([
  [
    'gable end',
    ['filling-from-the-gable', 'closing-the-edge-and-the-gable'],
    ['marking-out', 'patching', 'lifting-the-edge'],
    { has: ['gable-closed'], lacks: ['edge-closed'] },
  ],
  [
    'lifted roof edge',
    ['lifting-the-edge', 'filling-under-a-lifted-edge'],
    ['marking-out', 'opening-the-gable'],
    { has: ['edge-closed'], lacks: ['gable-closed'] },
  ],
  [
    'roof holes',
    ['marking-out', 'patching'],
    ['opening-the-gable', 'filling-under-a-lifted-edge'],
    { has: ['patches'], lacks: ['edge-closed', 'gable-closed'] },
  ],
] as const)('the photographs of a job by the %s are those of its own work', (way, has, lacks, closed) => {
  const taken = listed.filter((each) => isTakenOn(each, way));
  const pages: readonly string[] = taken.map(({ page }) => page);
  expect(pages).toEqual(expect.arrayContaining(['first-visit', ...has]));
  for (const page of lacks) expect(pages).not.toContain(page);
  const ids: readonly string[] = taken.map(({ id }) => id);
  expect(ids).toEqual(expect.arrayContaining([...closed.has]));
  for (const id of closed.lacks) expect(ids).not.toContain(id);
});
