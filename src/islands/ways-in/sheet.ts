import { wayParts } from '../../job/parts/ways.ts';
import { partsSheet } from '../parts/parts-sheet.tsx';

export const waysInSheet = partsSheet('ways-in', wayParts);
