import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Checkout, checkout } from '../rulebook/checkout.ts';

describe('the command that checks the content', { timeout: 120_000 }, () => {
  let copy: Checkout;
  beforeAll(() => {
    copy = checkout();
  });
  afterAll(() => copy.remove());

  const COMMAND = 'src/cli/content-check.ts';
  const PAGE = 'content/en/do/filling-through-roof-holes.mdx';

  test('goes through, and reports every page and its grade', async () => {
    const { code: ended, out, said } = await copy.node(COMMAND);
    expect([ended, said]).toEqual([0, '']);
    expect(out).toMatch(new RegExp(`^${PAGE} +\\d+ +\\d+ +\\d+\\.\\d +-?\\d+\\.\\d +8$`, 'm'));
  });

  test('stops at a slip of the pen and at words too hard, told together', async () => {
    const title = /^title: (.*)$/m.exec(copy.read(PAGE))?.[0] ?? '';
    const summary = /^summary: (.*)$/m.exec(copy.read(PAGE))?.[0] ?? '';
    const undo = copy.change(PAGE, title, 'title: Fil through roof holes');
    const hard = `${'consequently the accumulated insulation demonstrates considerable irregularities, '.repeat(40)}.`;
    const undoHard = copy.change(PAGE, summary, `summary: ${hard}`);
    const { code: ended, said } = await copy.node(COMMAND);
    undoHard();
    undo();
    expect(ended).toBe(1);
    expect(said).toContain(`${PAGE}:2:8  found "Fil"  expected a word`);
    expect(said).toMatch(new RegExp(`^${PAGE}:3:1 {2}found words of grade .*\\(reading-ease\\)$`, 'm'));
  });
});
