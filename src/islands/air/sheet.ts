import { airParts } from '../../job/parts/air.ts';
import { partsSheet } from '../parts/parts-sheet.tsx';

export const airSheet = partsSheet('air', airParts);
