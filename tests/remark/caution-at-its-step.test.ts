import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

interface Step {
  readonly says: string;
  readonly cautions: readonly string[];
}

/** The numbered steps of a page, each with the cautions that stand before it and after the step above. */
function stepsOf(page: string): readonly Step[] {
  const steps: Step[] = [];
  let standing: string[] = [];
  for (const line of readFileSync(`content/en/${page}.mdx`, 'utf8').split('\n')) {
    const [, caution] = /^<Caution id="caution\.(.+)" \/>$/.exec(line) ?? [];
    if (caution) standing.push(caution);
    if (!/^\d+\. /.test(line)) continue;
    steps.push({ says: line, cautions: standing });
    standing = [];
  }
  return steps;
}

test.each<[harm: string, page: string, step: string, caution: string]>([
  ['a roof edge is freed', 'do/lifting-the-edge', 'Back out the screws', 'edge.holds-roof'],
  [
    'a roof edge is fastened again',
    'do/closing-the-edge-and-the-gable',
    'Fasten from the middle',
    'edge.holds-roof',
  ],
  [
    'a vent of the cavity is put back',
    'do/closing-the-edge-and-the-gable',
    'Put back the vent',
    'ventilation.keep-vents',
  ],
  ['dust is swept up', 'do/cleaning-up', 'Fold the sheets', 'dust.swept'],
  ['dust of old paint is swept up', 'do/cleaning-up', 'Fold the sheets', 'before.old-paint'],
  ['a hose pulls at the gable', 'do/filling-from-the-gable', 'Slide the tube', 'hose.from-ladder'],
  ['a hose pulls at the edge', 'do/filling-under-a-lifted-edge', 'Slide the tube', 'hose.from-ladder'],
  [
    'a first hole lets pebbles be seen',
    'do/cutting-and-guarding-the-hole',
    'Feel round',
    'before.vermiculite',
  ],
  [
    'old texture is worked on',
    'do/sealing-the-ceiling',
    'Close any gap left round a flue',
    'before.asbestos',
  ],
  ['a new fan runs', 'do/putting-in-the-fans', 'Run each fan', 'air.backdraft'],
  ['a drill met a flue', 'trouble/hole-over-a-truss-or-wire', 'If it is a flue', 'flue.parted'],
  [
    'a roof over wet wires is climbed',
    'trouble/leak-after-rain',
    'When it is dry and still',
    'roof.live-metal',
  ],
])('%s: %s, "%s"', (_, page, step, caution) => {
  const found = stepsOf(page).filter(({ says }) => says.includes(step));
  expect(found).toHaveLength(1);
  expect(found[0]?.cautions).toContain(caution);
});
