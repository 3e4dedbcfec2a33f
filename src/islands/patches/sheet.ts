import { patchParts } from '../../job/parts/patches.ts';
import { partsSheet } from '../parts/parts-sheet.tsx';

export const patchesSheet = partsSheet('patches', patchParts);
