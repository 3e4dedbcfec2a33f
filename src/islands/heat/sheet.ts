import { heatParts } from '../../job/parts/heat.ts';
import { partsSheet } from '../parts/parts-sheet.tsx';

export const heatSheet = partsSheet('heat', heatParts);
