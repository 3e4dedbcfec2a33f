import { crewParts } from '../../job/parts/crew.ts';
import { partsSheet } from '../parts/parts-sheet.tsx';

export const crewSheet = partsSheet('crew', crewParts);
