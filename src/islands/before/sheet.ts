import { beforeParts } from '../../job/parts/before.ts';
import { partsSheet } from '../parts/parts-sheet.tsx';

export const beforeSheet = partsSheet('before', beforeParts);
