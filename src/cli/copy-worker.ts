import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundled } from '../built/bundled.ts';
import { copyList, PARCELS } from '../built/copy-list.ts';
import { copyWeight, MOST_PACKED } from '../built/copy-weight.ts';
import { filesIn } from '../built/files.ts';
import { firstOf, parcelsOf } from '../built/parcels.ts';
import type { CopyInParcels } from '../offline/worker/scope.ts';
import { A_FOLDER, builtFolder } from './built-folder.ts';
import { run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent copy:worker',
  does: 'Writes into the built site the worker that keeps it on a phone, and the parcels that it fetches.',
  given: A_FOLDER,
};

await run(COMMAND, async (given) => {
  const folder = builtFolder(COMMAND, given);
  rmSync(join(folder, PARCELS), { recursive: true, force: true });
  const site = new Map(filesIn(folder).map((file) => [file, readFileSync(join(folder, file))]));
  const list = copyList(site);
  const parcels = parcelsOf(site, list);
  mkdirSync(join(folder, PARCELS));
  for (const { place, text } of parcels) writeFileSync(join(folder, place), text);
  const copy: CopyInParcels = {
    ...list,
    first: firstOf(list),
    parcels: parcels.map(({ place, files }) => [place, files.length] as const),
  };
  const [worker] = await bundled('src/offline/worker/worker.ts', {
    output: { format: 'iife', codeSplitting: false, banner: `const COPY=${JSON.stringify(copy)};` },
  });
  writeFileSync(join(folder, 'worker.js'), worker.code);
  const { total, requests, parts } = copyWeight(site, list, parcels);
  const shown = (bytes: number): string => `${(bytes / 1e6).toFixed(2)} MB`;
  console.log(
    `the copy for use without a network: version ${list.version}, ${Object.keys(list.files).length} files, ${shown(total)} packed, in ${requests} requests`,
  );
  if (total <= MOST_PACKED) return 0;
  console.error(
    `found ${shown(total)}, expected ${shown(MOST_PACKED)} or less; most of it: ${parts
      .slice(0, 5)
      .map(([part, bytes]) => `${part} ${shown(bytes)}`)
      .join(', ')}`,
  );
  return 1;
});
