import type { JobSheetPath } from '../islands/job/sheets.ts';
import { airParts } from '../job/parts/air.ts';
import { beforeParts } from '../job/parts/before.ts';
import { crewParts } from '../job/parts/crew.ts';
import { heatParts } from '../job/parts/heat.ts';
import { machineParts } from '../job/parts/machine.ts';
import { marksPart } from '../job/parts/marks.ts';
import type { AnyPart } from '../job/parts/part.ts';
import { patchParts } from '../job/parts/patches.ts';
import { receiptPart } from '../job/parts/receipt.ts';
import { wayParts } from '../job/parts/ways.ts';

const namesOf = (parts: readonly AnyPart[]): string[] => parts.map(({ calculation }) => calculation.name);

/** The calculations that each sheet of a job shows: those of its parts; of the plan and the fill log, which have none, those they are worked with. */
export const calculationsOnSheets: Readonly<Record<JobSheetPath, readonly string[]>> = {
  '': ['cavity-section', 'hole-layout', 'fill', 'ceiling-load'],
  before: namesOf(beforeParts),
  'ways-in': namesOf(wayParts),
  'hose-marks': namesOf([marksPart]),
  machine: namesOf(machineParts),
  'fill-log': ['opening-log'],
  patches: namesOf(patchParts),
  heat: namesOf(heatParts),
  air: namesOf(airParts),
  crew: namesOf(crewParts),
  photographs: [],
  receipt: namesOf([receiptPart]),
};

/**
 * On which sheets of a job does a rule count? Those that show a calculation which asks for it, and the plan, whose own work may ask for more.
 * @example sheetsAsking('a.b', new Map([['opening-log', new Set(['a.b'])]]), new Set()) // => ['fill-log']
 */
export const sheetsAsking = (
  rule: string,
  asked: ReadonlyMap<string, ReadonlySet<string>>,
  askedByPlan: ReadonlySet<string>,
): JobSheetPath[] =>
  (Object.keys(calculationsOnSheets) as JobSheetPath[]).filter(
    (path) =>
      (path === '' && askedByPlan.has(rule)) ||
      calculationsOnSheets[path].some((name) => asked.get(name)?.has(rule)),
  );
