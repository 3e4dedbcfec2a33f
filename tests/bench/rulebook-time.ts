import { lints } from '../../src/rulebook/lints/index.ts';
import { problemsOf, resolve } from '../../src/rulebook/load.ts';
import { readLayer } from '../../src/rulebook/local/read.ts';
import { resolveLocal } from '../../src/rulebook/local/resolve.ts';
import { readRuleFiles } from '../../src/rulebook/rule-files.ts';
import { inFolder, loadFolder, TODAY } from '../rulebook/folder.ts';
import { agency, inLayer } from '../rulebook/local/folder.ts';
import { budgets } from './budgets.ts';
import type { Figure } from './figure.ts';
import { largeRulebook, localValues } from './large-rulebook.ts';
import { medianTime, type Runs } from './median-time.ts';

const RULES = 3000;
const runs: Runs = { warm: 1, timed: 5 };

/** How long do 3,000 rules take: read from their files, asked by every lint, worked out, and an agency's folder laid over them? */
export const timeOfRulebook = (): Figure[] =>
  inFolder(largeRulebook(RULES), (folder) =>
    inLayer({ 'agency.yaml': agency('a-valley', '"2026.1"'), 'values.yaml': localValues(RULES) }, (layer) => {
      const { data, files, releases } = loadFolder(folder);
      const layOver = (over: typeof data) =>
        resolveLocal(over, [readLayer(layer)], { releases, today: TODAY, pages: [] });
      const { local, problems } = layOver(data);
      if (problems.length > 0 || local.changes.length === 0)
        throw new Error(
          `found ${problems.length} problems in the folder, expected none: ${problems[0]?.found}`,
        );
      const used = new Set(files.rules.map(({ id }) => id));
      const each = lints.map(
        (lint) =>
          [
            `lint ${lint.name}`,
            medianTime(() => problemsOf({ ...files, problems: [] }, { today: TODAY, used }, [lint]), runs),
          ] as const,
      );
      return [
        {
          what: `rulebook of ${Object.keys(data.rules).length} rules: read, lint, lay ${local.changes.length} local values over it`,
          unit: 'ms',
          found: medianTime(() => layOver(loadFolder(folder).data), runs),
          budget: budgets.rulebook,
          parts: [
            ['reading the files', medianTime(() => readRuleFiles(folder), runs)] as const,
            ...each,
            ['working out what is derived', medianTime(() => resolve(files), runs)] as const,
            ['laying the local values over it', medianTime(() => layOver(data), runs)] as const,
          ].sort(([, a], [, b]) => b - a),
        },
      ];
    }),
  );
